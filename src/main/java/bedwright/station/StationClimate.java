package bedwright.station;

import bedwright.season.Site;
import bedwright.season.Unit;
import bedwright.season.Units;
import bedwright.station.FrostSeasons.Turn;
import bedwright.weather.StationRecord;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The climate of a place made from a station's record: what a season's site says of it.
 *
 * @param meanMin mean daily minimum of each month, January first, °C
 * @param meanMax mean daily maximum of each month, °C
 * @param spread how far temperatures stray
 * @param frost last spring and first autumn frost, or null where most years have none
 * @param storms damaging gusts by side
 * @param basis what it rests on
 * @param notes what was assumed or is weak, a sentence each
 */
public record StationClimate(
        List<Double> meanMin,
        List<Double> meanMax,
        Site.TemperatureSpread spread,
        Site.@Nullable Frost frost,
        List<Site.StormSide> storms,
        Basis basis,
        List<String> notes) {
    /** Years at least, of each month and each frost season. */
    public static final int LEAST_YEARS = 3;
    /** Below this a climate is weak. */
    private static final int GOOD_YEARS = 20;

    /** Never bad. */
    public static final Site.BadSeedBed USUAL_SEED_BED = new Site.BadSeedBed(0, 1);
    /** Never hard. */
    public static final Site.HardWinter USUAL_WINTER = new Site.HardWinter(0, 1);

    static final double SPRING_DAYS = 5.7;
    static final double AUTUMN_DAYS = 4.4;

    public StationClimate {
        meanMin = List.copyOf(meanMin);
        meanMax = List.copyOf(meanMax);
        storms = List.copyOf(storms);
        notes = List.copyOf(notes);
    }

    /**
     * What a climate rests on.
     *
     * @param years calendar years that the record touches
     * @param days days with both temperatures
     * @param missing days without, between its first and its last
     * @param windDays days with a speed of the wind
     * @param springs spring frost seasons with enough days
     * @param autumns autumn frost seasons with enough days
     */
    public record Basis(int years, int days, int missing, int windDays, int springs, int autumns) {}

    /**
     * The climate of a record, with notes in metric units.
     *
     * @param gustsFrom side from which gusts without direction come, degrees
     * @throws TooLittleWeather if the record has too few years
     */
    public static StationClimate of(StationRecord record, double gustsFrom) {
        return of(record, gustsFrom, Units.METRES);
    }

    /**
     * Likewise.
     *
     * @param units in which the notes speak
     */
    public static StationClimate of(StationRecord record, double gustsFrom, Units units) {
        Months months = new Months(record);
        List<String> notes = new ArrayList<>();
        FrostFit spring = new FrostFit(record, months.isNorthern(), Turn.SPRING);
        FrostFit autumn = new FrostFit(record, months.isNorthern(), Turn.AUTUMN);
        Site.Frost frost = frost(spring, autumn, notes);
        List<Site.StormSide> storms = storms(new StormFit(record, gustsFrom), record, gustsFrom, units.speed(), notes);
        int days = record.daysWithTemperatures();
        Basis basis = new Basis(
                months.years(), days, record.days() - days, record.daysWithWind(), spring.counted(), autumn.counted());
        if (months.counting() < GOOD_YEARS) {
            notes.add("The climate rests on " + months.counting()
                    + " years. Normals may be off by a degree, and frost dates"
                    + " are set wide apart because so few tell little; 30 years are usual.");
        }
        Trend.of(months, units.degrees()).ifPresent(notes::add);
        return new StationClimate(
                rounded(months.meanMin()),
                rounded(months.meanMax()),
                new SpreadFit(record, months).fit(),
                frost,
                storms,
                basis,
                notes);
    }

    /**
     * A site with this climate.
     *
     * @param latitude degrees, south negative
     * @param badSeedBed what a record does not tell, as at the site before or {@link #USUAL_SEED_BED}
     * @param hardWinter likewise, or {@link #USUAL_WINTER}
     */
    public Site site(double latitude, Site.BadSeedBed badSeedBed, Site.HardWinter hardWinter) {
        return new Site(latitude, meanMin, meanMax, spread, frost, badSeedBed, hardWinter, storms);
    }

    private static List<Double> rounded(List<Double> values) {
        return values.stream().map(value -> Math.round(value * 10) / 10.0).toList();
    }

    private static Site.@Nullable Frost frost(FrostFit spring, FrostFit autumn, List<String> notes) {
        int least = Math.min(spring.counted(), autumn.counted());
        if (least < LEAST_YEARS) {
            throw new TooLittleWeather("The record has " + spring.counted() + " springs and " + autumn.counted()
                    + " autumns without a gap of more than " + FrostSeasons.MISSING
                    + " days about their frosts; frost dates take at least " + LEAST_YEARS
                    + " of each. Take a station with a longer record, or fill its gaps.");
        }
        boolean isRare = 2 * spring.withFrost() <= spring.counted() || 2 * autumn.withFrost() <= autumn.counted();
        if (isRare || Math.min(spring.withFrost(), autumn.withFrost()) < LEAST_YEARS) {
            if (spring.withFrost() + autumn.withFrost() > 0) {
                notes.add("Frost comes in " + spring.withFrost() + " of " + spring.counted() + " springs and "
                        + autumn.withFrost() + " of " + autumn.counted()
                        + " autumns: in most years, or in too many to tell dates, there is none, and the climate has no"
                        + " frost. What a rare frost would kill is not reckoned with.");
            }
            return null;
        }
        Double springDays = spring.daysPerDegree();
        Double autumnDays = autumn.daysPerDegree();
        if (springDays == null || autumnDays == null) {
            List<String> assumed = new ArrayList<>();
            if (springDays == null) {
                assumed.add(SPRING_DAYS + " days earlier in spring");
            }
            if (autumnDays == null) {
                assumed.add(AUTUMN_DAYS + " days later in autumn");
            }
            notes.add("Too few seasons are cold enough to tell how a frost that is a degree harder moves: assumed are "
                    + String.join(" and ", assumed) + ", as at another place.");
        }
        return new Site.Frost(
                spring.date(),
                autumn.date(),
                springDays == null ? SPRING_DAYS : springDays,
                autumnDays == null ? AUTUMN_DAYS : autumnDays);
    }

    private static String said(double metresASecond, Unit speed) {
        double figure = speed.of(metresASecond);
        return (speed.isPlain() && figure != Math.rint(figure)
                        ? String.valueOf(figure)
                        : String.valueOf(Math.round(figure)))
                + " " + speed.symbol();
    }

    private static List<Site.StormSide> storms(
            StormFit fit, StationRecord record, double gustsFrom, Unit speed, List<String> notes) {
        String west = "from the side of " + Math.round(gustsFrom) + " degrees";
        if (record.kind() == StationRecord.Wind.NONE || record.daysWithWind() < 365) {
            notes.add("The record has no wind" + (record.daysWithWind() > 0 ? " to speak of" : "")
                    + ". Assumed are ten damaging gusts a year in any month, " + west
                    + ", most often of " + said(17.5, speed) + ": a guess. Ask the neighbours, and change \"storms\".");
            return List.of(StormFit.assumed(gustsFrom));
        }
        if (record.kind() == StationRecord.Wind.MEAN) {
            notes.add("The record has mean winds, not gusts. Assumed is that a day's strongest gust is "
                    + StormFit.GUST_BY_MEAN + " times its mean wind: a rough figure.");
        }
        if (!fit.isMeasured()) {
            notes.add("The record has " + fit.storms() + " times of gusts over " + said(StormFit.DAMAGING, speed)
                    + ", too few to tell how strong they get, and the climate has no storms.");
            return List.of();
        }
        if (!fit.hasDirections()) {
            notes.add("The record does not say where gusts come from. All are taken to come " + west
                    + "; say otherwise with --gusts-from.");
        }
        return fit.sides();
    }
}
