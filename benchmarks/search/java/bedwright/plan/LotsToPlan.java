package bedwright.plan;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Makes a plan of lots by place, as a model gives them: no hard rule is broken, what would break one is left out. */
final class LotsToPlan {
    /** What a solver calls a whole lot may lack so much of one. */
    private static final double NEARLY = 1e-3;
    /** Parts of a lot smaller than this are the solver's rounding. */
    private static final double NOTHING = 1e-9;

    private final PlanFacts facts;
    private final ProspectTable table;
    private final SeasonScore score;
    private int leftOut;

    private LotsToPlan(PlanFacts facts) {
        this.facts = facts;
        this.table = facts.table;
        this.score = new SeasonScore(facts);
        score.settleAll(Search.nothingPlaced(facts));
    }

    /**
     * A plan.
     *
     * @param leftOut lots that would have broken a hard rule
     */
    record Made(int[] places, int leftOut) {}

    /** Of whole lots: those of which most stand together first. */
    static Made whole(PlanFacts facts, double[] lots) {
        LotsToPlan made = new LotsToPlan(facts);
        IntStream.range(0, lots.length)
                .filter(place -> lots[place] > 1 - NEARLY)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer place) -> -lots[place])
                        .thenComparing(Comparator.naturalOrder()))
                .forEach(place -> {
                    for (int i = 0; i < Math.round(lots[place]); i++) {
                        made.put(place);
                    }
                });
        return made.made();
    }

    /**
     * Of parts of lots: in the order in which they are put into the ground, each stock's parts are added up, and one lot is
     * put where the sum passes a half, one and a half, and so on; so they are spread over the weeks as the parts are.
     */
    static Made parts(PlanFacts facts, double[] lots) {
        LotsToPlan made = new LotsToPlan(facts);
        for (int stock = 0; stock < facts.table.stocks(); stock++) {
            int[] places = IntStream.range(facts.table.firstPlace(stock), facts.table.firstPlace(stock + 1))
                    .filter(place -> lots[place] > NOTHING)
                    .boxed()
                    .sorted(Comparator.comparingInt((Integer place) -> facts.holds.from(place))
                            .thenComparing(Comparator.naturalOrder()))
                    .mapToInt(Integer::intValue)
                    .toArray();
            double sum = 0;
            double next = 0.5;
            for (int place : places) {
                sum += lots[place];
                for (; sum >= next; next++) {
                    made.put(place);
                }
            }
        }
        return made.made();
    }

    private void put(int place) {
        int planting = unplaced(table.stock(place));
        if (planting < 0 || facts.isRefused(planting, place)) {
            leftOut++;
            return;
        }
        score.put(planting, place);
        score.ask();
        boolean isBroken = score.hardAfter() < score.hard();
        score.forget();
        if (isBroken) {
            leftOut++;
        } else {
            score.settle(planting, place);
        }
    }

    private int unplaced(int stock) {
        return IntStream.range(facts.firstPlanting(stock), facts.firstPlanting(stock + 1))
                .filter(p -> score.place(p) < 0)
                .findFirst()
                .orElse(-1);
    }

    private Made made() {
        int[] places = new int[facts.plantings()];
        Arrays.setAll(places, score::place);
        return new Made(places, leftOut);
    }
}
