package bedwright.sheet;

import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/**
 * What becomes of one role's stems, week by week, in hundredths of stems.
 *
 * @param name name of the role
 * @param ready stems that can be cut
 * @param asked what all together ask for
 * @param promised what of it is promised
 * @param missing promised stems that are missing
 * @param left stems that go nowhere
 */
record RoleWeeks(String name, Spread[] ready, long[] asked, long[] promised, Spread[] missing, Spread[] left) {
    /** Stems below which nobody would speak of too few or too many, hundredths. */
    static final long NOTICED = 50;

    static List<RoleWeeks> of(Season season, Outcome outcome) {
        KindTree kinds = KindTree.of(season.roles());
        List<RoleWeeks> roles = new ArrayList<>();
        for (int r = 0; r < season.roles().size(); r++) {
            String name = season.roles().get(r).name();
            roles.add(of(outcome, r, name, kinds.node(name), season.weeks()));
        }
        return List.copyOf(roles);
    }

    private static RoleWeeks of(Outcome outcome, int role, String name, int node, int weeks) {
        Spread[] ready = new Spread[weeks];
        Spread[] left = new Spread[weeks];
        Spread[] missing = new Spread[weeks];
        long[] asked = new long[weeks];
        long[] promised = new long[weeks];
        List<DemandLine> lines =
                outcome.demand().stream().filter(line -> line.role() == role).toList();
        for (int w = 0; w < weeks; w++) {
            ready[w] = Spread.of(outcome.stems()[node][w]);
            left[w] = Spread.of(outcome.leftOver()[role][w]);
            long[] lack = new long[outcome.seasons()];
            for (DemandLine line : lines) {
                asked[w] += line.asked()[w];
                if (line.promise() != DemandLine.Promised.NOTHING) {
                    promised[w] += line.asked()[w];
                    for (int k = 0; k < lack.length; k++) {
                        lack[k] += line.asked()[w] - outcome.served()[line.index()][w][k];
                    }
                }
            }
            missing[w] = Spread.of(lack);
        }
        return new RoleWeeks(name, ready, asked, promised, missing, left);
    }

    boolean isQuiet(int week) {
        return asked[week] == 0 && ready[week].mean() == 0;
    }

    /** The greatest figure of any week, for the scale. */
    long most() {
        long most = 0;
        for (int w = 0; w < asked.length; w++) {
            most = Math.max(most, Math.max(asked[w], ready[w].high()));
        }
        return most;
    }
}
