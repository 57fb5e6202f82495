package bedwright.climate;

import bedwright.season.BedBlock;
import bedwright.season.Caution;
import bedwright.season.Crop;
import bedwright.season.Currency;
import bedwright.season.Figure;
import bedwright.season.Labour;
import bedwright.season.Pest;
import bedwright.season.Point;
import bedwright.season.Rotation;
import bedwright.season.RoughGrass;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Stock;
import bedwright.season.Sureness;
import bedwright.season.Windbreak;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** An invented farm, of which a test says only what matters to it. */
final class Farm {
    LocalDate starts = LocalDate.of(2027, 3, 1);
    int weeks = 40;
    double latitude = 42;
    List<Double> meanMin = List.of(-8.0, -7.0, -2.0, 3.0, 9.0, 14.0, 17.0, 16.0, 12.0, 6.0, 0.0, -5.0);
    List<Double> meanMax = List.of(1.0, 3.0, 9.0, 15.0, 21.0, 26.0, 29.0, 28.0, 24.0, 17.0, 10.0, 4.0);
    Site.TemperatureSpread spread = new Site.TemperatureSpread(0.8, 3.2, 0.8);
    Site.@Nullable Frost frost = frost("--04-24", "--05-05", "--05-17", "--09-20", "--10-02", "--10-15");
    Site.BadSeedBed badSeedBed = new Site.BadSeedBed(0.2, 0.5);
    Site.HardWinter hardWinter = new Site.HardWinter(0.3, 0.5);
    List<Site.StormSide> storms = List.of(side(270, 0.2), side(0, 0.1));
    List<Pest> pests = List.of(pest("slugs", 0.5), pest("grasshoppers", 0.8));
    List<Crop> crops =
            List.of(crop("zinnia", Sureness.SURE, Sureness.FAIR), crop("celosia", Sureness.WEAK, Sureness.WEAK));
    List<BedBlock> beds = List.of(bed(0, 0, 0, 10, null));
    List<Windbreak> windbreaks = List.of();
    List<RoughGrass> roughGrass = List.of();
    int count = 16;
    long seed = 1;
    Sampling.Doubt doubt =
            new Sampling.Doubt(new Sampling.BySureness(0.03, 0.06, 0.1), new Sampling.BySureness(0.1, 0.2, 0.35));
    List<Sampling.GivenSeason> given = List.of();

    Season season() {
        Site site = new Site(latitude, meanMin, meanMax, spread, frost, badSeedBed, hardWinter, storms);
        return new Season(
                "An invented farm",
                null,
                starts,
                weeks,
                new Currency("€", 2),
                site,
                beds,
                windbreaks,
                roughGrass,
                pests,
                new Stock(0, null, List.of(), null),
                new Labour(0, 0, List.of(), List.of(), List.of(), List.of(), Map.of()),
                List.of(),
                List.of(),
                new Rotation(0, 0),
                crops,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Caution.STEADY,
                new Sampling(count, seed, doubt, given));
    }

    /** Frosts with the default days per degree. */
    static Site.Frost frost(
            String springEarly,
            String springUsual,
            String springLate,
            String autumnEarly,
            String autumnUsual,
            String autumnLate) {
        return new Site.Frost(
                new Site.FrostDate(
                        MonthDay.parse(springEarly), MonthDay.parse(springUsual), MonthDay.parse(springLate)),
                new Site.FrostDate(
                        MonthDay.parse(autumnEarly), MonthDay.parse(autumnUsual), MonthDay.parse(autumnLate)),
                5.7,
                4.4);
    }

    /** A side with the same rate in every month. */
    static Site.StormSide side(double from, double gustsAWeek) {
        return new Site.StormSide(from, Collections.nCopies(12, gustsAWeek), 21, 2);
    }

    static Pest pest(String name, double yearSpread) {
        return new Pest(name, List.of(Pest.Takes.SEEDLINGS), List.of(), null, yearSpread);
    }

    static Crop crop(String name, Sureness firstCut, Sureness stems) {
        return new Crop(
                name,
                null,
                List.of(),
                new Crop.Clock(6.7, null, Crop.Convention.CLAMPED, 97, null, 800, 0, null),
                null,
                new Crop.Killing(0, 0),
                150,
                Map.of(),
                1,
                null,
                new Crop.Stand(24, null, 3, 0.3),
                0,
                Map.of(),
                List.of(),
                null,
                Map.of("firstCut", new Figure(firstCut, null), "stems", new Figure(stems, null)),
                List.of());
    }

    static BedBlock bed(double x, double y, double heading, double length, BedBlock.@Nullable Tunnel tunnel) {
        return new BedBlock("bed", 1, new Point(x, y), heading, length, 1.2, 0.5, tunnel, null, List.of(), List.of());
    }
}
