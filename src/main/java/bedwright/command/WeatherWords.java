package bedwright.command;

import bedwright.growth.Weathered;
import bedwright.season.Season;
import bedwright.season.Unit;

/** What noted weather has most likely taken, in words. */
final class WeatherWords {
    private WeatherWords() {}

    static String said(Season season, Weathered taken) {
        Unit warmth = season.units().temperature();
        Unit wind = season.units().speed();
        return switch (taken.cause()) {
            case NIGHT -> {
                boolean isSure = taken.share() == 1;
                yield (isSure ? "all" : "all in " + Words.percent(taken.share()) + " of the possible seasons")
                        + ", frost: " + on(season, taken, warmth);
            }
            case WINTER ->
                "of " + on(season, taken, warmth)
                        + " nothing tells how much it took, since it stands through winter: the usual winter share counts";
            case GUST ->
                Words.percent(taken.share()) + ", wind: "
                        + (taken.times() > 1 ? taken.times() + " gusts, most by " : "") + on(season, taken, wind);
        };
    }

    private static String on(Season season, Weathered taken, Unit unit) {
        return Words.number(unit.of(taken.worst())) + " " + unit.symbol() + " on " + Words.day(season, taken.day());
    }
}
