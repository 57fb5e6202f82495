package bedwright.growth;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Pest;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Stock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Seasons with something of everything, drawn from a seed: the same seed gives the same season. */
final class RandomSeasons {
    static final int SEEDS = 12;
    private static final int SAMPLES = 5;

    private RandomSeasons() {}

    static SmallSeason of(long seed) {
        Random random = new Random(seed);
        SmallSeason season = new SmallSeason();
        season.starts = LocalDate.of(2027, 1 + random.nextInt(12), 1);
        season.weeks = 20 + random.nextInt(25);
        season.latitude = 30 + random.nextInt(25);
        season.min = 9 + random.nextInt(6);
        season.max = season.min + 4 + random.nextInt(10);
        season.frost = SmallSeason.frost(
                season.starts.plusDays(random.nextInt(40)), season.starts.plusDays(120 + random.nextInt(80)), 5);
        season.badSeedBed = new Site.BadSeedBed(0.2, 0.5);
        season.hardWinter = new Site.HardWinter(0.3, 0.5);
        season.storms.add(new Site.StormSide(270, Collections.nCopies(12, 0.1 + random.nextDouble()), 20, 3));
        season.pests.add(SmallSeason.pest(0.02 * random.nextDouble(), 40.0, Pest.Takes.SEED, Pest.Takes.SEEDLINGS));
        season.roughGrass.add(new RoughGrass(new Point(-20, 0), new Point(-20, 100)));
        season.nets.add(new Stock.Net("mesh", 100, null, 0.5, 1.35));
        season.cover = new Stock.Cover(100, null, 0.1, 2, 0.1);
        season.beds.add(SmallSeason.bed("Far", 60));
        season.beds.add(SmallSeason.bed("House", 80, new BedBlock.Tunnel(2, 2, 0.2), null, List.of(), List.of()));
        season.beds.add(SmallSeason.bed("Far again", 60));
        season.plants = 50 + random.nextInt(100);
        season.crop = crop(random, "zinnia");
        season.more.add(crop(random, "snapdragon").inTrays());
        season.more.add(crop(random, "statice").asPlugs());
        return season;
    }

    private static SmallCrop crop(Random random, String name) {
        SmallCrop crop = new SmallCrop();
        crop.name = name;
        crop.emergence = 20 + random.nextInt(100);
        crop.firstCut = 300 + random.nextInt(400);
        crop.pinch = random.nextBoolean() ? 200.0 : null;
        crop.pinched = crop.pinch != null && random.nextBoolean();
        crop.pinchDelay = 80;
        crop.tender = random.nextInt(150);
        crop.appeal.put("slugs", random.nextDouble());
        crop.killing = new Crop.Killing(-random.nextInt(3), -random.nextInt(3));
        crop.emergenceShare = 0.5 + 0.5 * random.nextDouble();
        crop.cutDays = 7 + random.nextInt(40);
        crop.cutShares = List.of(0.5, 0.25, 0.25);
        crop.stems = 1 + random.nextInt(8);
        crop.saleable = 0.9;
        crop.winterShare = 0.8;
        crop.weedings = random.nextInt(4);
        crop.net = random.nextBoolean() ? new Method.NetUse("mesh", 2) : null;
        crop.cover = random.nextBoolean() ? new Method.CoverUse(random.nextBoolean() ? 3 : null) : null;
        return crop;
    }

    /** The season's sampled seasons. */
    static List<PossibleSeason> sampled(Season season) {
        return PossibleSeasons.sample(season, SAMPLES, 7);
    }

    static ProspectTable table(SmallSeason season) {
        Season built = season.build();
        return ProspectTable.of(built, sampled(built));
    }

    /** All that the table says of a place, as one value. */
    static List<Object> place(ProspectTable table, int place) {
        List<Object> said = new ArrayList<>(
                List.of(table.stock(place), table.bed(place), table.sowWeek(place), table.method(place)));
        said.addAll(row(table, table.row(place)));
        return said;
    }

    /** All that the table says of a row. */
    static List<Object> row(ProspectTable table, int row) {
        List<Object> said = new ArrayList<>();
        Collections.addAll(
                said,
                table.heldFrom(row),
                table.heldTo(row),
                table.millimetres(row),
                table.benchFrom(row),
                table.benchTo(row),
                table.trayFrom(row),
                table.trayTo(row),
                table.cells(row),
                table.net(row),
                table.netFrom(row),
                table.netTo(row),
                table.netMillimetres(row),
                table.coverFrom(row),
                table.coverTo(row),
                table.workFrom(row),
                list(table.work(row)),
                list(table.setUp(row)),
                table.material(row),
                list(table.stems(row)));
        for (int b = 0; b < table.blocks(row); b++) {
            said.add(table.blockWeek(row, b));
            said.add(table.blockNode(row, b));
        }
        return said;
    }

    private static List<Integer> list(int[] numbers) {
        List<Integer> list = new ArrayList<>();
        for (int number : numbers) {
            list.add(number);
        }
        return list;
    }
}
