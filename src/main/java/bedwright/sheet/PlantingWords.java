package bedwright.sheet;

import bedwright.season.Method;

/** How a planting starts, in words. */
final class PlantingWords {
    private PlantingWords() {}

    /** "sown 3 May", "sown in trays 3 May", … */
    static String started(Say say, Shown planting) {
        String date = say.date(planting.kept().sown());
        return switch (planting.method().start()) {
            case SOWN -> "sown " + date;
            case TRAY -> "sown in trays " + date;
            case PLUGS -> "plugs set " + date;
            case SET -> "set " + date;
        };
    }

    static String start(Method.Start start) {
        return switch (start) {
            case SOWN -> "sown in the bed";
            case TRAY -> "raised in trays";
            case PLUGS -> "bought plugs";
            case SET -> "tubers, corms or bulbs set";
        };
    }
}
