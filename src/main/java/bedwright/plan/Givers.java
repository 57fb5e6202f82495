package bedwright.plan;

import bedwright.growth.ProspectTable;
import bedwright.season.KindTree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/** Which places give stems of which kind in which week: for looking up what could fill a week that is short. */
final class Givers {
    private final PlanFacts facts;
    /** Places by kind × weeks + week, those of the kinds within it included. */
    private final int[][] places;
    /** Lines that are promised, and a week in which they ask. */
    private final List<int[]> promised = new ArrayList<>();

    Givers(PlanFacts facts) {
        this.facts = facts;
        ProspectTable table = facts.table;
        KindTree kinds = facts.kinds;
        int cells = kinds.size() * facts.weeks;
        int[] counts = new int[cells];
        boolean[] wanted = new boolean[cells];
        for (DemandLine line : facts.demand) {
            for (int w = 0; w < facts.weeks; w++) {
                if (line.asked()[w] > 0) {
                    wanted[line.node() * facts.weeks + w] = true;
                    if (line.promise() != DemandLine.Promised.NOTHING) {
                        promised.add(new int[] {line.index(), w});
                    }
                }
            }
        }
        places = new int[cells][0];
        for (int pass = 0; pass < 2; pass++) {
            if (pass == 1) {
                for (int c = 0; c < cells; c++) {
                    places[c] = new int[counts[c]];
                }
                Arrays.fill(counts, 0);
            }
            for (int place = 0; place < table.places(); place++) {
                int row = table.row(place);
                for (int b = 0; b < table.blocks(row); b++) {
                    for (int n = table.blockNode(row, b); n >= 0; n = kinds.parent(n)) {
                        int cell = n * facts.weeks + table.blockWeek(row, b);
                        if (wanted[cell]) {
                            if (pass == 1) {
                                places[cell][counts[cell]] = place;
                            }
                            counts[cell]++;
                        }
                    }
                }
            }
        }
    }

    /**
     * Draws a promised line and a week of it; if the stems of its kind fall short of what it asks in the mean of the
     * seasons, a place that gives such stems then; else −1.
     */
    int draw(RandomGenerator random, SeasonScore score) {
        if (promised.isEmpty()) {
            return -1;
        }
        int[] lineAndWeek = promised.get(random.nextInt(promised.size()));
        DemandLine line = facts.demand.get(lineAndWeek[0]);
        int week = lineAndWeek[1];
        int[] choice = places[line.node() * facts.weeks + week];
        if (choice.length == 0 || !isShort(line, week, score)) {
            return -1;
        }
        return choice[random.nextInt(choice.length)];
    }

    private boolean isShort(DemandLine line, int week, SeasonScore score) {
        long came = score.stems().stems(facts.cells.of(line.node()), week);
        return came < line.asked()[week] * facts.seasonCount * 3 / 2;
    }
}
