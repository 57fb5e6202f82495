package bedwright.plan;

import bedwright.season.KindTree;
import bedwright.season.Role;
import java.util.Arrays;
import java.util.List;

/** Filling of one role's weeks for {@link StreamRules}, all seasons at once: arrays by kind, seasons innermost. */
final class StreamFilling {
    final int firstKind;
    private final int kinds;
    private final int seasons;
    private final int[] parent;
    private final int[] most;
    private final List<DemandLine> lines;
    private final int[] kindOfLine;
    private final long[] gain;
    private final long[] whatever;
    private final long cutRate;
    private final long clearRate;

    StreamFilling(PlanFacts facts, int role) {
        Role of = facts.season.roles().get(role);
        KindCells cells = facts.cells;
        int first = 0;
        while (facts.kinds.role(cells.node(first)) != role) {
            first++;
        }
        this.firstKind = first;
        this.kinds = cells.endWithin(first) - first;
        this.seasons = facts.seasonCount;
        this.parent = new int[kinds];
        this.most = new int[kinds];
        for (int n = 0; n < kinds; n++) {
            parent[n] = cells.parent(first + n) < 0 ? -1 : cells.parent(first + n) - first;
            most[n] = (int) Math.min(facts.kinds.mostAWeek(cells.node(first + n)), Integer.MAX_VALUE);
        }
        this.cutRate = Grains.cuttingRate(of.cutting());
        this.clearRate = Grains.cuttingRate(of.clearing());
        this.lines = Demand.of(facts.season, KindTree.of(facts.season.roles()))
                .fillingOrder(role, (cutRate - clearRate) * facts.ownRate);
        this.kindOfLine = new int[lines.size()];
        this.gain = new long[lines.size()];
        this.whatever = new long[lines.size()];
        for (int i = 0; i < kindOfLine.length; i++) {
            DemandLine line = lines.get(i);
            boolean paidInFull = line.promise() == DemandLine.Promised.BOUGHT_IN;
            kindOfLine[i] = cells.of(line.node()) - first;
            gain[i] = paidInFull ? line.lack() : line.price() + line.lack();
            whatever[i] = (paidInFull ? line.price() : 0) - line.lack();
        }
    }

    /** A role's week: the stems that come, and what filling them in gives; filled when asked for after a change. */
    final class Filled {
        private final int week;
        private final int[][] own = new int[kinds][];
        /** Plantings that give each kind. */
        private final int[] givers = new int[kinds];

        private boolean isStale = true;
        final long[] money = new long[seasons];
        final long[] cutting = new long[seasons];
        final long[] clearing = new long[seasons];
        long missing;

        Filled(int week) {
            this.week = week;
        }

        void add(StreamFacts.RoleStems stems, int sign) {
            isStale = true;
            for (int i = 0; i < stems.kinds().length; i++) {
                int kind = stems.kinds()[i];
                givers[kind] += sign;
                int[] sum = own[kind];
                if (sum == null) {
                    sum = new int[seasons];
                    own[kind] = sum;
                }
                int[] more = stems.stems()[i];
                for (int k = 0; k < sum.length; k++) {
                    sum[k] += sign * more[k];
                }
            }
        }

        void refresh() {
            if (isStale) {
                fill();
                isStale = false;
            }
        }

        private void fill() {
            long[] came = new long[seasons];
            int[][] room = room(came);
            int[] taken = new int[seasons];
            int[] served = new int[seasons];
            Arrays.fill(money, 0);
            missing = 0;
            for (int i = 0; i < kindOfLine.length; i++) {
                DemandLine line = lines.get(i);
                long asked = line.asked()[week];
                if (asked == 0) {
                    continue;
                }
                long without = whatever[i] * asked;
                for (int k = 0; k < money.length; k++) {
                    money[k] += without;
                }
                missing += line.weight() * asked * seasons;
                int[] here = room[kindOfLine[i]];
                if (here == null) {
                    continue;
                }
                take(room, kindOfLine[i], (int) asked, taken);
                long each = gain[i];
                for (int k = 0; k < money.length; k++) {
                    money[k] += each * taken[k];
                }
                for (int k = 0; k < served.length; k++) {
                    served[k] += taken[k];
                }
                for (int k = 0; line.weight() > 0 && k < taken.length; k++) {
                    missing -= (long) line.weight() * taken[k];
                }
            }
            for (int k = 0; k < served.length; k++) {
                cutting[k] = cutRate * served[k];
                clearing[k] = clearRate * (came[k] - served[k]);
            }
        }

        /** What can be sold of each kind; none where nothing comes. */
        private int[][] room(long[] came) {
            int[][] room = new int[kinds][];
            for (int n = kinds - 1; n >= 0; n--) {
                int[] stems = own[n];
                int[] here = room[n];
                if (stems != null && givers[n] > 0) {
                    for (int k = 0; clearRate > 0 && k < stems.length; k++) {
                        came[k] += stems[k];
                    }
                    if (here == null) {
                        here = stems.clone();
                    } else {
                        for (int k = 0; k < here.length; k++) {
                            here[k] += stems[k];
                        }
                    }
                    room[n] = here;
                }
                if (here == null) {
                    continue;
                }
                int limit = most[n];
                for (int k = 0; k < here.length; k++) {
                    here[k] = Math.min(here[k], limit);
                }
                if (parent[n] >= 0) {
                    int[] above = room[parent[n]];
                    if (above == null) {
                        room[parent[n]] = here.clone();
                    } else {
                        for (int k = 0; k < above.length; k++) {
                            above[k] += here[k];
                        }
                    }
                }
            }
            return room;
        }

        private void take(int[][] room, int kind, int asked, int[] taken) {
            Arrays.fill(taken, asked);
            for (int n = kind; n >= 0; n = parent[n]) {
                int[] here = room[n];
                for (int k = 0; k < taken.length; k++) {
                    taken[k] = Math.min(taken[k], here[k]);
                }
            }
            for (int n = kind; n >= 0; n = parent[n]) {
                int[] here = room[n];
                for (int k = 0; k < taken.length; k++) {
                    here[k] -= taken[k];
                }
            }
        }
    }
}
