package bedwright.sheet;

import bedwright.season.Job;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Unit;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What to do, in a grower's words, with plants, rows, distances and metres. */
final class JobWords {
    private static final Pattern TUBERS = Pattern.compile("\\b(corm|tuber|bulb)s?\\b");
    private static final List<String> EIGHTHS = List.of("", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8");

    private final Season season;

    JobWords(Season season) {
        this.season = season;
    }

    /** A job on a planting, whose metres stand beside it. */
    String of(Shown planting, Job job) {
        String plants = Say.whole(planting.kept().plants());
        String net = planting.net();
        return switch (job) {
            case PREPARE -> "prepare the bed";
            case SOW -> sow(planting, plants);
            case FILL_TRAYS ->
                (isOfTubers(planting.method()) ? "fill trays, set " : "fill trays, sow ") + Say.whole(planting.cells())
                        + " cells"
                        + (deep(planting).isEmpty() ? " for " : deep(planting) + ", for ") + plants
                        + " plants, to the bed "
                        + Say.shortDay(season.weekStart(planting.heldFrom()));
            case PLANT_OUT ->
                plantOut(planting.method().start()) + " " + plants + " in " + apart(planting.method())
                        + (planting.method().start() == Method.Start.SET ? set(planting) : "");
            case NET_UP -> "net up (" + (net == null ? "support net" : net) + layers(planting) + ")";
            case NET_DOWN -> "take the net down" + layers(planting);
            case COVER_ON -> "lay row cover, edges weighted down";
            case COVER_OFF -> "take the row cover off";
            case PINCH -> "pinch " + plants + " plants at about six leaf nodes";
            case WEED -> "weed";
            case CLEAR -> "clear the bed";
        };
    }

    /** The same job on several plantings. */
    static String ofAll(Job job) {
        return switch (job) {
            case PINCH -> "pinch at about six leaf nodes";
            case NET_UP -> "net up";
            case NET_DOWN -> "take the net down";
            case COVER_ON -> "lay row cover";
            case COVER_OFF -> "take the row cover off";
            case PREPARE -> "prepare the bed";
            case SOW -> "sow";
            case FILL_TRAYS -> "fill and sow trays";
            case PLANT_OUT -> "plant out";
            case WEED -> "weed";
            case CLEAR -> "clear the bed";
        };
    }

    /** What goes over a planting, or is done to it, as it is called where only that is left. */
    static String alone(Job job) {
        return switch (job) {
            case NET_UP, NET_DOWN -> "net";
            case COVER_ON, COVER_OFF -> "cover";
            case PINCH -> "pinching";
            default -> ofAll(job);
        };
    }

    private String sow(Shown planting, String plants) {
        Method method = planting.method();
        String seeds = method.seedsAPlace() == 1 ? "" : ", " + method.seedsAPlace() + " seeds at each";
        return "sow " + plants + " places" + seeds + ", in " + apart(method) + deep(planting);
    }

    /** How deep seed goes; nothing where nobody says. */
    private String deep(Shown planting) {
        Double depth = depth(planting);
        return depth == null ? "" : depth == 0 ? ", pressed on and not covered" : ", " + deep(depth);
    }

    /** How deep corms, tubers or bulbs go. What is set on the surface is no bulb, so its seed is meant. */
    private String set(Shown planting) {
        Double depth = depth(planting);
        return depth == null || depth == 0 ? "" : ", " + deep(depth);
    }

    private static @Nullable Double depth(Shown planting) {
        Double own = planting.method().depth();
        return own == null ? planting.crop().depth() : own;
    }

    private String deep(double metres) {
        Unit unit = season.units().smallLength();
        boolean inches = !unit.symbol().equals("m");
        return (inches ? inches(unit.of(metres)) + " in" : Say.tenth(100 * metres) + " cm") + " deep";
    }

    /** To the eighth of an inch, as a ruler has it. */
    private static String inches(double inches) {
        long eighths = Math.max(1, Math.round(8 * inches));
        String whole = eighths < 8 ? "" : Long.toString(eighths / 8);
        String part = EIGHTHS.get((int) (eighths % 8));
        return whole + (whole.isEmpty() || part.isEmpty() ? "" : " ") + part;
    }

    private static String plantOut(Method.Start start) {
        return switch (start) {
            case TRAY -> "plant out";
            case PLUGS -> "plant plugs:";
            case SET, SOWN -> "set";
        };
    }

    /** In a season written in feet plants stand so many inches apart. */
    private String apart(Method method) {
        Unit unit = season.units().smallLength();
        boolean inches = !unit.symbol().equals("m");
        double distance = inches ? unit.of(method.spacing()) : 100 * method.spacing();
        return Say.count(method.rows(), "row", "rows") + ", " + Say.tenth(distance) + (inches ? " in" : " cm")
                + " apart";
    }

    private static String layers(Shown planting) {
        Method.NetUse net = planting.method().net();
        return net == null || net.layers() == 1 ? "" : ", " + net.layers() + " layers";
    }

    /** What is put out to harden. */
    String harden(Shown planting) {
        return Say.whole(planting.cells()) + " cells, to the bed "
                + Say.shortDay(season.weekStart(planting.heldFrom()));
    }

    /** Whether it begins with corms, tubers or bulbs, be it in trays: then its name says so. */
    static boolean isOfTubers(Method method) {
        return method.start() == Method.Start.SET
                || TUBERS.matcher(method.name()).find();
    }

    /** Whether it flowers once, so that its whole stems are cut. */
    static boolean isCutWhole(Method method) {
        return method.cutDays() <= ONE_FLUSH;
    }

    /** Cut for longer than this, a plant is cut more than once. */
    private static final int ONE_FLUSH = 14;
}
