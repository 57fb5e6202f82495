package bedwright.plan;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Lots;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Windbreak;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * A farm of several fields, each like the one of a given farm: as many beds in each, with windbreaks, rough grass and what
 * stands there; so many times the pool, the customers, the hours and the stock. The season is no longer.
 *
 * <p>No two fields are quite alike, or all their beds would share their figures and the problem would be a small one told
 * several times: the windbreaks of each stand nearer or farther and higher or lower, and in each other beds had other
 * families before.
 */
final class Fields {
    /** From one field to the next, m: far enough that no windbreak reaches the neighbours. */
    private static final double EAST = 240;

    private static final double NORTH = 260;
    private static final int FIELDS_IN_A_ROW = 4;

    private final Season season;
    private final RandomGenerator random;
    private final SeasonDraft draft;

    private Fields(Season season, RandomGenerator random) {
        this.season = season;
        this.random = random;
        this.draft = new SeasonDraft(season);
    }

    /** @param fields number of fields, 2 or more */
    static SeasonDraft of(Season season, int fields, RandomGenerator random) {
        return new Fields(season, random).times(fields);
    }

    private SeasonDraft times(int fields) {
        draft.name = season.name() + ", " + fields + " fields";
        List<BedBlock> beds = new ArrayList<>();
        List<Windbreak> windbreaks = new ArrayList<>();
        List<RoughGrass> grass = new ArrayList<>();
        List<Standing> standing = new ArrayList<>();
        for (int field = 0; field < fields; field++) {
            double east = EAST * (field % FIELDS_IN_A_ROW);
            int rowOfFields = field / FIELDS_IN_A_ROW;
            double north = NORTH * rowOfFields;
            String name = "Field " + (field + 1) + " ";
            List<BedBlock> here = blocks(name, field, east, north);
            beds.addAll(here);
            for (Windbreak windbreak : season.windbreaks()) {
                windbreaks.add(moved(windbreak, name, field, east, north));
            }
            for (RoughGrass edge : season.roughGrass()) {
                grass.add(new RoughGrass(moved(edge.from(), east, north), moved(edge.to(), east, north)));
            }
            Map<String, String> names = namesHere(here);
            season.standing().forEach(one -> standing.add(named(one, name, names)));
        }
        draft.beds = beds;
        draft.windbreaks = windbreaks;
        draft.roughGrass = grass;
        draft.standing = standing;
        draft.pool = season.pool().stream()
                .map(lots -> new Lots(lots.crop(), lots.plants(), lots.lots() * fields))
                .toList();
        draft.roles = season.roles().stream()
                .map(role -> Amounts.selling(role, fields))
                .toList();
        draft.eachOutlet(outlet -> Amounts.asking(outlet, fields, 1, fields));
        draft.eachOrder(order -> Amounts.asking(order, fields, fields));
        draft.labour = Amounts.times(season.labour(), fields);
        draft.stock = Amounts.times(season.stock(), fields);
        return draft;
    }

    private List<BedBlock> blocks(String name, int field, double east, double north) {
        List<BedBlock> here = new ArrayList<>();
        for (BedBlock block : season.beds()) {
            here.add(new BedBlock(
                    name + block.name(),
                    block.count(),
                    moved(block.at(), east, north),
                    block.heading(),
                    block.length(),
                    block.width(),
                    block.path(),
                    block.tunnel(),
                    block.workableFrom(),
                    block.taken(),
                    block.history().stream()
                            .map(grown -> nextBed(grown, field, block.count()))
                            .toList()));
        }
        return here;
    }

    /** What grew in one bed of the block grew in another one here. */
    private static BedBlock.Grown nextBed(BedBlock.Grown grown, int field, int count) {
        Integer bed = grown.bed();
        return bed == null ? grown : new BedBlock.Grown(grown.family(), grown.year(), (bed - 1 + field) % count + 1);
    }

    private Windbreak moved(Windbreak windbreak, String name, int field, double east, double north) {
        double aside = field == 0 ? 0 : 6 * random.nextDouble() - 6;
        double higher = field == 0 ? 1 : 0.8 + 0.4 * random.nextDouble();
        return new Windbreak(
                name + windbreak.name(),
                moved(windbreak.from(), east + aside, north),
                moved(windbreak.to(), east + aside, north),
                windbreak.height() * higher,
                windbreak.density());
    }

    private static Point moved(Point point, double east, double north) {
        return new Point(point.x() + east, point.y() + north);
    }

    private Map<String, String> namesHere(List<BedBlock> here) {
        SeasonDraft field = new SeasonDraft(season);
        field.beds = here;
        List<Bed> beds = field.season().allBeds();
        Map<String, String> names = new HashMap<>();
        for (Bed bed : season.allBeds()) {
            names.put(bed.name(), beds.get(bed.index()).name());
        }
        return names;
    }

    private static Standing named(Standing one, String field, Map<String, String> beds) {
        String name = one.name();
        return new Standing(
                field + (name == null ? one.crop() : name),
                one.crop(),
                one.plants(),
                one.method(),
                bedHere(one.bed(), beds),
                one.sown(),
                one.clock(),
                one.stems(),
                one.until());
    }

    private static @Nullable String bedHere(@Nullable String bed, Map<String, String> beds) {
        return bed == null ? null : beds.get(bed);
    }
}
