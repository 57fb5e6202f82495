package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.season.Method;
import bedwright.season.Rounding;
import bedwright.season.Stock;

/** What one lot takes of beds and stock by week, and in material (season model, section 5). */
final class Use {
    private final Facts facts;
    private final Placed placed;
    private final Calendar calendar;

    Use(Facts facts, Placed placed, Calendar calendar) {
        this.facts = facts;
        this.placed = placed;
        this.calendar = calendar;
    }

    /** Millimetres of bed in a week. */
    long bed(int week) {
        return week >= facts.now() && calendar.holds(week) ? placed.millimetres() : 0;
    }

    /** Cells sown: ⌈plants / emergence share⌉ for what is raised in trays, else none. */
    static long cells(Placed placed) {
        Method method = placed.method();
        return method.start() == Method.Start.TRAY ? Rounding.up(placed.plants() / method.emergence()) : 0;
    }

    /** Cells on the bench: from the sow week until they go outside to harden. */
    long bench(int week) {
        Method method = placed.method();
        return cellsUntil(week, calendar.groundWeek - method.hardeningWeeks());
    }

    /** Cells in use: from the sow week until planting out. */
    long trays(int week) {
        return cellsUntil(week, calendar.groundWeek);
    }

    private boolean isPulled() {
        return placed.standing() != null && placed.standing().isPulled();
    }

    private long cellsUntil(int week, int end) {
        if (placed.isWritten() || !placed.knowsSowWeek() || week < facts.now() || isPulled()) {
            return 0;
        }
        return Math.floorDiv(placed.sowDay(facts.season), 7) <= week && week < end ? cells(placed) : 0;
    }

    /** Millimetres of a net, all layers, in use in a week. */
    long net(String name, int week) {
        Method.NetUse net = placed.method().net();
        if (net == null || !net.net().equals(name) || calendar.netFrom == NEVER || week < facts.now()) {
            return 0;
        }
        return calendar.netFrom <= week && week <= calendar.netTo ? placed.millimetres() * net.layers() : 0;
    }

    /** Millimetres of row cover in use in a week. */
    long cover(int week) {
        return week >= facts.now() && calendar.covered(7 * week) ? placed.millimetres() : 0;
    }

    /** Seed, plugs and wear of net and cover, in grains; what already stands costs none. */
    long material() {
        return placed.isStanding() ? 0 : facts.units.material(seed() + netWear() + coverWear());
    }

    private double seed() {
        Method method = placed.method();
        double price = method.price() == null ? placed.crop().price() : method.price();
        return switch (method.start()) {
            case SOWN -> (double) placed.plants() * method.seedsAPlace() * price;
            case TRAY -> cells(placed) * price;
            case PLUGS, SET -> placed.plants() * price;
        };
    }

    private double netWear() {
        Method.NetUse use = placed.method().net();
        if (use == null || calendar.netFrom == NEVER) {
            return 0;
        }
        return placed.metres()
                * use.layers()
                * facts.net(use.net()).orElseThrow().wear();
    }

    private double coverWear() {
        Stock.Cover cover = facts.season.stock().cover();
        return placed.method().cover() == null || cover == null ? 0 : placed.metres() * cover.wear();
    }
}
