package bedwright.growth;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Tells what to expect of single plantings, by the same formulas as the {@link ProspectTable}. */
public final class Prospects {
    private final World world;

    private Prospects(World world) {
        this.world = world;
    }

    /** For plantings of a season in these possible seasons. */
    public static Prospects of(Season season, List<PossibleSeason> seasons) {
        return new Prospects(new World(season, seasons));
    }

    /**
     * What to expect of a planting from the pool, whether or not the season offers it this place.
     *
     * @param crop index of the crop in the season
     * @param method index of the method in the crop
     * @param plants plants, at least 1
     * @param bed number of the bed
     * @param sowWeek week of sowing, setting or starting in trays
     */
    public Prospect expect(int crop, int method, int plants, int bed, int sowWeek) {
        return expect(crop, method, plants, bed, sowWeek, null, 0);
    }

    /**
     * What to expect of one lot of a planting that is kept in a plan of this season, or of a planting that stands; if it
     * is or was pulled before its end, up to then. Of one whose stems are written out nothing is worked out.
     *
     * @throws IllegalArgumentException if the season has no such planting; or its stems are written out
     */
    public Prospect expect(KeptPlanting kept) {
        Spot spot = spot(kept);
        Standing standing = standing(kept);
        Past past = standing == null ? null : standing.past();
        LocalDate pulled = past != null && past.pulled() != null ? past.pulled() : kept.until();
        return expect(
                crop(kept),
                spot.method(),
                kept.plants() / kept.lots(),
                spot.bed(),
                spot.sowWeek(),
                standing,
                0,
                pulled == null ? ProspectTable.TO_ITS_END : world.season.weekOf(pulled));
    }

    /**
     * What a gust does to a planting that is kept in a plan of this season, or that stands, as the first of the possible
     * seasons lets it grow.
     *
     * @param gust one of that season's gusts
     * @throws IllegalArgumentException if the season has no such planting; or its stems are written out
     */
    public Blown blown(KeptPlanting kept, Gust gust) {
        Grown grown = grown(kept);
        return new Losses(grown, place(kept)).blown(grown.developments.getFirst(), gust);
    }

    /**
     * What a pest takes in a week of a planting that is kept in a plan of this season, or that stands, as the first of the
     * possible seasons lets it grow and the pest come.
     *
     * @param pest number of the pest in the season
     * @param day the week's last day
     * @throws IllegalArgumentException if the season has no such planting; or its stems are written out
     */
    public Eaten eaten(KeptPlanting kept, int pest, int day) {
        Grown grown = grown(kept);
        return new Losses(grown, place(kept)).eaten(pest, world.seasons.getFirst(), grown.developments.getFirst(), day);
    }

    private Ground.BedClass place(KeptPlanting kept) {
        return world.ground.classes().get(world.ground.classOf(spot(kept).bed()));
    }

    private Grown grown(KeptPlanting kept) {
        Spot spot = spot(kept);
        Method way = world.season.crops().get(crop(kept)).methods().get(spot.method());
        return Grown.of(
                world,
                crop(kept),
                way,
                spot.sowWeek(),
                standing(kept),
                place(kept).warmth());
    }

    private int crop(KeptPlanting kept) {
        return index(world.season.crops().stream().map(Crop::name).toList(), "crop", kept.crop());
    }

    private Spot spot(KeptPlanting kept) {
        Crop crop = world.season.crops().get(crop(kept));
        int method =
                index(crop.methods().stream().map(Method::name).toList(), "method of " + kept.crop(), kept.method());
        int bed = index(world.season.allBeds().stream().map(Bed::name).toList(), "bed", kept.bed());
        Integer entry = kept.standing();
        LocalDate out = kept.out();
        // What is still in trays counts from when it is planted out.
        boolean isInTray =
                entry != null && world.season.standing().get(entry - 1).isInTray();
        int week = isInTray && out != null
                ? world.season.weekOf(out) - crop.methods().get(method).trayWeeks()
                : world.season.weekOf(kept.sown());
        return new Spot(-1, bed, week, method);
    }

    private @Nullable Standing standing(KeptPlanting kept) {
        Integer entry = kept.standing();
        Standing standing = entry == null ? null : world.season.standing().get(entry - 1);
        if (standing != null && standing.isWritten()) {
            throw new IllegalArgumentException("The stems of planting " + kept.number() + " are written out");
        }
        return standing;
    }

    private static int index(List<String> names, String what, String name) {
        int index = names.indexOf(name);
        if (index < 0) {
            throw new IllegalArgumentException("The season has no " + what + " named " + name);
        }
        return index;
    }

    /**
     * What to expect of a standing planting in all weeks of its season, those that are over among them.
     *
     * @param standing what is known of it
     */
    public Prospect expect(Standing standing, int crop, int method, int bed, int sowWeek) {
        return expect(crop, method, standing.plants(), bed, sowWeek, standing, 0);
    }

    /**
     * What noted weather has most likely taken of a standing planting, one entry for each kind of weather at most.
     *
     * @param standing what is known of it
     */
    public List<Weathered> weathered(Standing standing, int crop, int method, int bed, int sowWeek) {
        Method way = world.season.crops().get(crop).methods().get(method);
        Ground.BedClass place = world.ground.classes().get(world.ground.classOf(bed));
        return new WeatherTaken(Grown.of(world, crop, way, sowWeek, standing, place.warmth()), place).all();
    }

    private Prospect expect(
            int crop, int method, int plants, int bed, int sowWeek, @Nullable Standing standing, int from) {
        return expect(crop, method, plants, bed, sowWeek, standing, from, ProspectTable.TO_ITS_END);
    }

    private Prospect expect(
            int crop, int method, int plants, int bed, int sowWeek, @Nullable Standing standing, int from, int until) {
        Crop kind = world.season.crops().get(crop);
        Method way = kind.methods().get(method);
        Ground.BedClass place = world.ground.classes().get(world.ground.classOf(bed));
        Grown whole = Grown.of(world, crop, way, sowWeek, standing, place.warmth());
        Grown grown = until == ProspectTable.TO_ITS_END ? whole : whole.until(until);
        Needs needs = new Needs(world.season, kind, way, grown.calendar, plants, standing != null);
        List<Prospect.Surviving> surviving = new ArrayList<>();
        int[] firstCuts = new int[world.seasons.size()];
        for (int k = 0; k < firstCuts.length; k++) {
            Development development = grown.developments.get(k);
            firstCuts[k] = Development.dayOrNone(development.firstCut);
            surviving.add(surviving(grown, place, world.seasons.get(k), development, k));
        }
        boolean inTheGround = standing != null && standing.clock() != null;
        Row row = new Row(world.season, needs, grown.calendar, inTheGround, Row.Stems.of(grown, place, plants, from));
        List<String> paths = new ArrayList<>();
        int[][][] stems = stems(row, paths);
        return new Prospect(
                plants,
                row.millimetres,
                row.cells,
                grown.start.sowDay(),
                grown.start.groundDay(),
                Development.dayOrNone(grown.normal.emergence),
                way.pinched() ? Development.dayOrNone(grown.normal.pinch) : Prospect.NONE,
                Development.dayOrNone(grown.normal.firstCut),
                Development.dayOrNone(grown.calendar.lastCut()),
                grown.calendar.heldTo(),
                firstCuts,
                List.copyOf(paths),
                stems,
                surviving(grown, place, world.normalSeason, grown.normal, -1),
                List.copyOf(surviving),
                needs.tasks(),
                needs.costs());
    }

    private int[][][] stems(Row row, List<String> paths) {
        List<Integer> nodes = new ArrayList<>();
        for (int node : row.blockNodes) {
            if (!nodes.contains(node)) {
                nodes.add(node);
                paths.add(world.kinds.path(node));
            }
        }
        int seasons = world.seasons.size();
        int[][][] stems = new int[nodes.size()][world.weeks][seasons];
        for (int b = 0; b < row.blockNodes.length; b++) {
            int[] block = Arrays.copyOfRange(row.stems, b * seasons, (b + 1) * seasons);
            stems[nodes.indexOf(row.blockNodes[b])][row.blockWeeks[b]] = block;
        }
        return stems;
    }

    /** Shares surviving; those that differ by week are weighed by what each week would give. */
    private Prospect.Surviving surviving(
            Grown grown, Ground.BedClass place, PossibleSeason season, Development development, int k) {
        Losses losses = new Losses(grown, place);
        Map<String, Double> pests = new LinkedHashMap<>();
        double[] weight = new double[world.weeks];
        double sum = 0;
        if (development.firstCut != Development.NEVER) {
            for (int w = Math.max(0, Math.floorDiv(development.firstCut, 7)); w < world.weeks; w++) {
                weight[w] = k < 0 ? Cutting.shareIn(grown.method, development.firstCut, w) : grown.shareIn(k, w);
                sum += weight[w];
            }
        }
        double[] storms = development.emerges() ? losses.storms(season, development) : new double[world.weeks];
        double autumn = 0;
        double storm = 0;
        for (int w = 0; w < world.weeks; w++) {
            if (weight[w] > 0) {
                autumn += weight[w] / sum * losses.autumn(season, development, w);
                storm += weight[w] / sum * storms[w];
            }
        }
        for (int p = 0; p < world.season.pests().size(); p++) {
            double left = development.emerges() ? losses.pest(p, season, development) : 0;
            double blooms = 0;
            for (int w = 0; w < world.weeks; w++) {
                blooms += weight[w] > 0 ? weight[w] / sum * losses.blooms(p, season, w) : 0;
            }
            pests.put(world.season.pests().get(p).name(), left * (sum > 0 ? blooms : 1));
        }
        return new Prospect.Surviving(
                losses.stand(season),
                pests,
                development.emerges() ? losses.springOrWinter(season, development) : 0,
                sum > 0 ? autumn : 1,
                sum > 0 ? storm : 1);
    }
}
