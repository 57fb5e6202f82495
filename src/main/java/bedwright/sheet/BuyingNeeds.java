package bedwright.sheet;

import bedwright.growth.Course;
import bedwright.growth.Prospect;
import bedwright.growth.ProspectTable;
import bedwright.plan.Outcomes;
import bedwright.season.Hazard;
import bedwright.season.Method;
import bedwright.season.Rounding;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What plantings need of what is bought for them. What they cost adds up to the plan's material: a planting's money, which
 * the plan rounds by the lot, is shared out over what is bought for it.
 *
 * @param bought by crop and what it is
 * @param trays what is sown in trays, planting by planting
 * @param wear wear of nets and cover, in the smallest unit of the currency: nothing to buy
 */
record BuyingNeeds(List<Need> bought, List<Tray> trays, long wear) {

    /** What is bought. */
    enum What {
        SEED("seed"),
        PLUGS("plugs"),
        TUBERS("tubers, corms, bulbs");

        private final String words;

        What(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** Cells that are filled and sown in a week. */
    record Tray(int week, long cells) {}

    /**
     * One thing for one crop.
     *
     * @param amount seeds, plugs or tubers; a tray cell takes one seed
     * @param firstWeek week in which the first of it is used
     * @param cost by the plan, in the smallest unit of the currency
     */
    record Need(String crop, What what, long amount, int firstWeek, long cost, Set<Hazard> hazards) {
        Need with(Need more) {
            EnumSet<Hazard> both = EnumSet.noneOf(Hazard.class);
            both.addAll(hazards);
            both.addAll(more.hazards);
            return new Need(
                    crop, what, amount + more.amount, Math.min(firstWeek, more.firstWeek), cost + more.cost, both);
        }
    }

    static BuyingNeeds of(WeekFacts facts) {
        Map<String, Need> bought = new TreeMap<>();
        List<Tray> trays = new ArrayList<>();
        long wear = 0;
        for (Shown planting : facts.plantings()) {
            Course course = facts.course(planting);
            List<Long> money = shared(course.costs(), material(facts.facts(), planting));
            for (int i = 0; i < course.costs().size(); i++) {
                Prospect.Cost cost = course.costs().get(i);
                if (i > 0) {
                    wear += money.get(i);
                    continue;
                }
                What what = what(course.method());
                long amount = planting.kept().lots() * Math.round(cost.amount());
                int week = facts.season().weekOf(planting.kept().sown());
                EnumSet<Hazard> hazards = EnumSet.noneOf(Hazard.class);
                hazards.addAll(planting.crop().hazards());
                Need need = new Need(planting.crop().name(), what, amount, week, money.get(i), hazards);
                if (course.method().start() == Method.Start.TRAY) {
                    trays.add(new Tray(week, amount));
                }
                bought.merge(planting.crop().name() + "\n" + what.ordinal(), need, Need::with);
            }
        }
        return new BuyingNeeds(List.copyOf(bought.values()), List.copyOf(trays), wear);
    }

    private static What what(Method method) {
        return switch (method.start()) {
            case SOWN -> What.SEED;
            case TRAY -> JobWords.isOfTubers(method) ? What.TUBERS : What.SEED;
            case PLUGS -> What.PLUGS;
            case SET -> What.TUBERS;
        };
    }

    private static long material(SheetFacts facts, Shown planting) {
        ProspectTable table = facts.prospects();
        var spot = Outcomes.spot(facts.season(), planting.kept());
        int place = table.find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
        return planting.kept().lots() * table.material(table.row(place));
    }

    private static List<Long> shared(List<Prospect.Cost> costs, long all) {
        double sum = costs.stream().mapToDouble(Prospect.Cost::money).sum();
        List<Long> money = new ArrayList<>();
        double behind = 0;
        long given = 0;
        for (int i = 0; i < costs.size(); i++) {
            behind += costs.get(i).money();
            long by = i == costs.size() - 1 || sum <= 0 ? all : Rounding.halfUp(all * (behind / sum));
            money.add(by - given);
            given = by;
        }
        return money;
    }
}
