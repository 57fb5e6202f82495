package bedwright.plan;

import bedwright.growth.ProspectTable;

/**
 * How far prices of each kind move at a time, roughly what a thing is worth over how much of it there is, and where the
 * search for good ones begins. A scale of 0 keeps a price at 0.
 */
final class PriceScales {
    /** One part in so many of what all stems bring is what a season brings more or less than another. */
    private static final double SWINGS = 10;

    final double[] scale;
    final double[] start;
    /** What a mm of bed is worth with a usual lot on it, grains: the size of what is smoothed. */
    final double lotValue;

    private final Relaxation relaxed;
    private final PlanFacts facts;
    private final PriceLayout layout;
    private final int weeks;
    private final int seasons;
    /** The most that a stem of a kind told apart gains in a week, less serving it: cell × weeks + week. */
    private final double[] gain;

    PriceScales(Relaxation relaxed, PriceLayout layout) {
        this.relaxed = relaxed;
        this.facts = relaxed.facts;
        this.layout = layout;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.scale = new double[layout.size()];
        this.start = new double[layout.size()];
        this.gain = new double[facts.cells.size() * weeks];
        for (Filling filling : facts.fillings) {
            for (int w = 0; w < weeks; w++) {
                stems(filling, w);
            }
        }
        this.lotValue = plantings();
        hours();
        for (int k = 0; k < seasons; k++) {
            start[layout.seasons() + k] = 1;
        }
    }

    private void stems(Filling filling, int week) {
        double[] most = new double[filling.nodes];
        double[] asked = new double[filling.nodes];
        double[] within = new double[filling.nodes];
        double serving = facts.ownRate * (double) (filling.cutRate - filling.clearRate);
        for (Filling.Line line : filling.lines) {
            double amount = line.asked()[week];
            if (amount > 0 && relaxed.comes[(filling.firstNode + line.node()) * weeks + week]) {
                most[line.node()] = Math.max(most[line.node()], Math.max(0, line.gain() - serving));
                asked[line.node()] += amount;
                for (int n = line.node(); n >= 0; n = filling.parent[n]) {
                    within[n] += amount;
                }
            }
        }
        double[] wanted = new double[filling.nodes];
        for (int n = 0; n < filling.nodes; n++) {
            int parent = filling.parent[n];
            most[n] = Math.max(most[n], parent < 0 ? 0 : most[parent]);
            wanted[n] = asked[n] + (parent < 0 ? 0 : wanted[parent]);
            int cell = (filling.firstNode + n) * weeks + week;
            gain[cell] = most[n];
            if (most[n] == 0 || !relaxed.comes[cell]) {
                continue;
            }
            boolean isLimited = filling.most[n] != Integer.MAX_VALUE;
            boolean isSoldFrom = asked[n] > 0 || (isLimited && within[n] > 0);
            for (int k = 0; k < seasons; k++) {
                int at = cell * seasons + k;
                if (isSoldFrom) {
                    scale[layout.asked() + at] = most[n] / within[n];
                    start[layout.asked() + at] = parent < 0 ? most[n] / 3 : 0;
                }
                if (isLimited) {
                    scale[layout.most() + at] = most[n] / Math.min(filling.most[n], wanted[n] + within[n]);
                }
            }
        }
    }

    private double plantings() {
        ProspectTable table = facts.table;
        double sumOfAll = 0;
        int count = 0;
        double[] worthOfUse = new double[facts.shelves.size()];
        int[] users = new int[facts.shelves.size()];
        double[] worthOfLots = new double[table.stocks()];
        for (int place = 0; place < table.places(); place++) {
            int row = table.row(place);
            double worth = worth(row);
            worthOfLots[table.stock(place)] += worth;
            if (relaxed.holdsBed(place)) {
                sumOfAll += worth / table.millimetres(row);
                count++;
            }
            use(worthOfUse, users, facts.bench, worth, table.cells(row), table.benchTo(row) - table.benchFrom(row));
            use(worthOfUse, users, facts.trays, worth, table.cells(row), table.trayTo(row) - table.trayFrom(row));
            use(
                    worthOfUse,
                    users,
                    facts.cover,
                    worth,
                    table.millimetres(row),
                    table.coverTo(row) - table.coverFrom(row));
            if (table.net(row) >= 0) {
                use(
                        worthOfUse,
                        users,
                        facts.firstNet + table.net(row),
                        worth,
                        table.netMillimetres(row),
                        table.netTo(row) - table.netFrom(row));
            }
        }
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            double holds = facts.shelves.get(s).holds();
            for (int w = 0; w < weeks && users[s] > 0 && holds < WorkWeeks.UNLIMITED; w++) {
                double worth = worthOfUse[s] / users[s];
                scale[layout.shelves() + (s - facts.bench) * weeks + w] = worth / Math.max(holds, 1000);
            }
        }
        int[] lots = relaxed.lots;
        for (int s = 0; s < lots.length; s++) {
            int places = table.firstPlace(s + 1) - table.firstPlace(s);
            scale[layout.lots() + s] = lots[s] == 0 || places == 0 ? 0 : worthOfLots[s] / places / lots[s];
        }
        double aMm = count == 0 ? 1 : Math.max(sumOfAll / count, 1);
        for (int p : relaxed.fixed) {
            int row = table.row(facts.fixedPlace[p]);
            scale[layout.standing() + p] = relaxed.holdsBed(facts.fixedPlace[p]) ? aMm / table.millimetres(row) : 0;
        }
        return aMm;
    }

    private static void use(double[] worthOfUse, int[] users, int shelf, double worth, int amount, int weeks) {
        if (amount > 0 && weeks > 0) {
            worthOfUse[shelf] += worth / amount / weeks;
            users[shelf]++;
        }
    }

    /** What a lot's stems would gain if all were sold as dearly as any, less seed and work, grains over all seasons. */
    private double worth(int row) {
        ProspectTable table = facts.table;
        double worth = -seasons * (double) table.material(row) * Grains.A_SMALLEST_UNIT;
        for (int b = 0; b < table.blocks(row); b++) {
            double each = gain[facts.cells.of(table.blockNode(row, b)) * weeks + table.blockWeek(row, b)];
            for (int k = 0; k < seasons; k++) {
                worth += each * table.stems(row)[b * seasons + k];
            }
        }
        for (int minutes : table.work(row)) {
            worth -= seasons * (double) facts.ownRate * minutes * Grains.TICKS_A_MINUTE;
        }
        return Math.max(0, worth);
    }

    private void hours() {
        double money = 0;
        for (Filling filling : facts.fillings) {
            for (Filling.Line line : filling.lines) {
                for (int amount : line.asked()) {
                    money += (double) line.gain() * amount * seasons;
                }
            }
        }
        double all = 0;
        for (int w = 0; w < weeks; w++) {
            long limit = relaxed.hours(w) < WorkWeeks.UNLIMITED
                    ? relaxed.hours(w)
                    : facts.hours.cutting()[w];
            all += limit < WorkWeeks.UNLIMITED ? limit : 0;
        }
        double anHour = Math.max(facts.hiredRate, all == 0 ? 0 : money / seasons / all);
        for (int w = 0; w < weeks; w++) {
            long own = facts.hours.own()[w];
            long limit = relaxed.hours(w);
            for (int k = 0; k < seasons; k++) {
                scale[layout.hired() + w * seasons + k] =
                        relaxed.extraPay(w) / (double) Math.max(own, Grains.TICKS_AN_HOUR);
            }
            scale[layout.hours() + w] =
                    limit < WorkWeeks.UNLIMITED ? anHour / seasons / Math.max(limit, Grains.TICKS_AN_HOUR) : 0;
            long cutting = facts.hours.cutting()[w];
            scale[layout.cutting() + w] =
                    cutting < WorkWeeks.UNLIMITED ? anHour / seasons / Math.max(cutting, Grains.TICKS_AN_HOUR) : 0;
        }
        double spread = relaxed.facts.greatestWeight() - relaxed.facts.leastWeight();
        for (int k = 0; k < seasons; k++) {
            scale[layout.seasons() + k] = money == 0 ? 0 : spread / (money / seasons / SWINGS);
        }
        mustScale(money);
    }

    private void mustScale(double money) {
        double weighed = 0;
        for (Filling filling : facts.fillings) {
            for (Filling.Line line : filling.lines) {
                for (int amount : line.asked()) {
                    weighed += (double) line.weight() * amount * seasons;
                }
            }
        }
        scale[layout.must()] = weighed == 0 ? 0 : money / weighed / weighed;
        // Where all can be met any price that is high enough will do, and the way up from 0 is long.
        start[layout.must()] = weighed == 0 ? 0 : money / weighed;
    }
}
