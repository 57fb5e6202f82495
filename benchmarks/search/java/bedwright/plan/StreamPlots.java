package bedwright.plan;

import bedwright.growth.ProspectTable;
import bedwright.plan.StreamFacts.FamilyInBed;
import bedwright.plan.StreamFacts.JobHere;
import bedwright.plan.StreamFacts.Part;
import bedwright.plan.StreamFacts.Plot;
import bedwright.plan.StreamFacts.RoleStems;
import bedwright.plan.StreamFacts.Store;
import bedwright.plan.StreamFacts.Use;
import bedwright.plan.StreamFacts.Week;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Makes the facts of {@link StreamRules}, those of a place when they are first asked for.
 *
 * <p>The streams' functions are constants and can hold no season: {@link #use} says which season is meant, for the whole
 * process.
 */
final class StreamPlots {
    private static final RoleStems[] NO_STEMS = new RoleStems[0];
    private static volatile @Nullable StreamPlots current;

    private final PlanFacts facts;
    private final ProspectTable table;
    private final int seasons;
    private final Store[] stores;
    private final Week[] weeks;
    private final @Nullable FamilyInBed[] families;
    private final @Nullable JobHere[] jobs;
    private final @Nullable Plot[] plots;
    private final @Nullable List<Part>[] weeksOfRow;
    private final List<Part> constants = new ArrayList<>();

    @SuppressWarnings({"unchecked", "rawtypes"})
    private StreamPlots(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.seasons = facts.seasonCount;
        this.stores =
                facts.shelves.stream().map(shelf -> new Store(shelf, seasons)).toArray(Store[]::new);
        StreamFilling[] roles = new StreamFilling[facts.season.roles().size()];
        for (int r = 0; r < roles.length; r++) {
            roles[r] = new StreamFilling(facts, r);
        }
        this.weeks = new Week[facts.weeks];
        for (int w = 0; w < facts.weeks; w++) {
            weeks[w] = new Week(facts, w, roles);
            constants.add(new Part(weeks[w], facts.fixedWork[w], NO_STEMS));
        }
        this.families = new FamilyInBed[facts.bench * facts.families];
        this.jobs = new JobHere[facts.placeOfJob.length];
        this.plots = new Plot[table.places()];
        this.weeksOfRow = new List[table.rows()];
    }

    /** Makes this season the one that streams are about. */
    static void use(PlanFacts facts) {
        StreamPlots known = current;
        if (known == null || known.facts != facts) {
            current = new StreamPlots(facts);
        }
    }

    private static StreamPlots current() {
        StreamPlots known = current;
        if (known == null) {
            throw new IllegalStateException("No season has been named for the streams");
        }
        return known;
    }

    static Plot plotOf(Planting planting) {
        StreamPlots known = current();
        if (planting.getTable() != known.table) {
            throw new IllegalStateException("The streams are about another season");
        }
        return known.plot(planting.place());
    }

    /** What each week comes to with nothing planted; so there is a group of streams for every week. */
    static List<Part> constants(PlanFacts facts) {
        StreamPlots known = current();
        if (facts != known.facts) {
            throw new IllegalStateException("The streams are about another season");
        }
        return known.constants;
    }

    private Plot plot(int place) {
        Plot plot = plots[place];
        if (plot == null) {
            plot = makePlot(place);
            plots[place] = plot;
        }
        return plot;
    }

    private Plot makePlot(int place) {
        int row = table.row(place);
        long costs = table.material(row) * Grains.A_SMALLEST_UNIT + (facts.restBroken[place] ? facts.restPrice : 0);
        return new Plot(
                uses(place, row),
                weeks(row),
                job(facts.jobOf[place]),
                costs * seasons,
                family(place, row),
                table.heldFrom(row),
                table.heldTo(row));
    }

    private List<Use> uses(int place, int row) {
        List<Use> uses = new ArrayList<>();
        int length = table.millimetres(row);
        add(uses, table.bed(place), table.heldFrom(row), table.heldTo(row), length);
        add(uses, facts.bench, table.benchFrom(row), table.benchTo(row), table.cells(row));
        add(uses, facts.trays, table.trayFrom(row), table.trayTo(row), table.cells(row));
        if (table.net(row) >= 0) {
            int net = facts.firstNet + table.net(row);
            add(uses, net, table.netFrom(row), table.netTo(row), table.netMillimetres(row));
        }
        add(uses, facts.cover, table.coverFrom(row), table.coverTo(row), length);
        return uses;
    }

    private void add(List<Use> uses, int store, int from, int to, int amount) {
        if (from < to && amount > 0) {
            uses.add(new Use(stores[store], from, to, amount));
        }
    }

    private List<Part> weeks(int row) {
        List<Part> known = weeksOfRow[row];
        if (known == null) {
            known = parts(row, table.work(row), true);
            weeksOfRow[row] = known;
        }
        return known;
    }

    private List<Part> parts(int row, int[] minutes, boolean withStems) {
        List<Part> parts = new ArrayList<>();
        for (Week week : weeks) {
            int i = week.number - table.workFrom(row);
            long work = i < 0 || i >= minutes.length ? 0 : (long) minutes[i] * Grains.TICKS_A_MINUTE;
            RoleStems[] stems = withStems ? stems(row, week.number) : NO_STEMS;
            if (work != 0 || stems.length > 0) {
                parts.add(new Part(week, work, stems));
            }
        }
        return List.copyOf(parts);
    }

    private RoleStems[] stems(int row, int week) {
        List<RoleStems> all = new ArrayList<>();
        for (int role = 0; role < facts.season.roles().size(); role++) {
            List<Integer> kinds = new ArrayList<>();
            List<int[]> stems = new ArrayList<>();
            for (int b = 0; b < table.blocks(row); b++) {
                int node = table.blockNode(row, b);
                if (table.blockWeek(row, b) == week && facts.kinds.role(node) == role) {
                    kinds.add(facts.cells.of(node) - weeks[week].roles[role].firstKind);
                    int[] bySeason = new int[seasons];
                    System.arraycopy(table.stems(row), b * seasons, bySeason, 0, seasons);
                    stems.add(bySeason);
                }
            }
            if (!kinds.isEmpty()) {
                all.add(new RoleStems(
                        role, kinds.stream().mapToInt(Integer::intValue).toArray(), stems.toArray(int[][]::new)));
            }
        }
        return all.toArray(RoleStems[]::new);
    }

    private JobHere job(int number) {
        JobHere known = jobs[number];
        if (known == null) {
            int row = facts.table.row(facts.placeOfJob[number]);
            known = new JobHere(parts(row, table.setUp(row), false));
            jobs[number] = known;
        }
        return known;
    }

    private @Nullable FamilyInBed family(int place, int row) {
        int family = facts.familyOf[table.stock(place)];
        if (family < 0 || facts.followOnPrice == 0 || table.heldFrom(row) >= table.heldTo(row)) {
            return null;
        }
        int at = table.bed(place) * facts.families + family;
        FamilyInBed known = families[at];
        if (known == null) {
            known = new FamilyInBed(facts.followOnPrice * seasons);
            families[at] = known;
        }
        return known;
    }
}
