package bedwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Only the arithmetic of a move, on flat arrays: in the weeks that it touches, stems go to the lines in their order, and
 * money, cutting and clearing are summed up. No ledgers, no rules that other weeks could break, nothing kept. What a move
 * takes beside it is what keeping the books costs.
 */
final class ArrayKernel {
    private final PlanFacts facts;
    private final int weeks;
    private final int seasons;
    /** Stems of each kind told apart with all within it: kind, then week × K + season. */
    private final int[][] stems;
    /** Of each role, what each line asks for: role, line, then week × K + season. */
    private final int[][][] asked;

    private final int[][] room;
    private final int[] taken;
    private final int[] served;
    private final double[] money;

    /**
     * Weeks of a role that a move touches.
     *
     * @param role which
     * @param from first week × K
     * @param wide weeks × K
     * @param change stems that come besides, of each of the role's kinds with all within it
     */
    record Run(int role, int from, int wide, int[][] change) {}

    /** Beside a plan. */
    ArrayKernel(PlanFacts facts, int[] places) {
        this.facts = facts;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        int wide = weeks * seasons;
        this.stems = new int[facts.cells.size()][wide];
        this.room = new int
                [Arrays.stream(facts.fillings).mapToInt(f -> f.nodes).max().orElse(0)][wide];
        this.taken = new int[wide];
        this.served = new int[wide];
        this.money = new double[wide];
        for (int place : places) {
            if (place >= 0) {
                add(stems, place, 1);
            }
        }
        this.asked = new int[facts.fillings.length][][];
        for (int r = 0; r < asked.length; r++) {
            Filling.Line[] lines = facts.fillings[r].lines;
            asked[r] = new int[lines.length][wide];
            for (int l = 0; l < lines.length; l++) {
                for (int i = 0; i < wide; i++) {
                    asked[r][l][i] = lines[l].asked()[i / seasons];
                }
            }
        }
    }

    private void add(int[][] sums, int place, int sign) {
        int[] of = facts.figures.of(place);
        int start = facts.figures.start(place);
        int at = Figures.runs(of, start);
        int from = at + of[start + Figures.RUNS] * Figures.A_RUN;
        for (int run = 0; run < of[start + Figures.RUNS]; run++, at += Figures.A_RUN) {
            int kind = of[at] / weeks;
            int first = of[at] % weeks * seasons;
            int wide = of[at + 2] * seasons;
            for (int above = kind; above >= 0; above = facts.cells.parent(above)) {
                for (int i = 0; i < wide; i++) {
                    sums[above][first + i] += sign * of[from + i];
                }
            }
            from += wide;
        }
    }

    /** What a move touches. */
    List<Run> touched(int[] from, int[] to) {
        int[][] change = new int[facts.cells.size()][weeks * seasons];
        boolean[][] isTouched = new boolean[facts.fillings.length][weeks + 1];
        for (int i = 0; i < from.length; i++) {
            note(change, isTouched, from[i], -1);
            note(change, isTouched, to[i], 1);
        }
        List<Run> runs = new ArrayList<>();
        for (Filling filling : facts.fillings) {
            int first = 0;
            for (int w = 0; w <= weeks; w++) {
                if (!isTouched[filling.role][w]) {
                    if (first < w) {
                        runs.add(run(filling, change, first, w));
                    }
                    first = w + 1;
                }
            }
        }
        return List.copyOf(runs);
    }

    private void note(int[][] change, boolean[][] isTouched, int place, int sign) {
        if (place < 0) {
            return;
        }
        add(change, place, sign);
        int[] of = facts.figures.of(place);
        int start = facts.figures.start(place);
        int at = Figures.runs(of, start);
        for (int run = 0; run < of[start + Figures.RUNS]; run++, at += Figures.A_RUN) {
            int cell = of[at + 1];
            Arrays.fill(isTouched[cell / weeks], cell % weeks, cell % weeks + of[at + 2], true);
        }
    }

    private Run run(Filling filling, int[][] change, int first, int end) {
        int[][] its = new int[filling.nodes][];
        for (int n = 0; n < its.length; n++) {
            its[n] = Arrays.copyOfRange(change[filling.firstNode + n], first * seasons, end * seasons);
        }
        return new Run(filling.role, first * seasons, (end - first) * seasons, its);
    }

    /** Money and work of the touched weeks, summed up: only so that nothing is left out by the compiler. */
    double ask(List<Run> runs) {
        double sum = 0;
        for (Run run : runs) {
            sum += ask(run);
        }
        return sum;
    }

    private double ask(Run run) {
        Filling filling = facts.fillings[run.role];
        int wide = run.wide;
        for (int n = 0; n < filling.nodes; n++) {
            comes(room[n], stems[filling.firstNode + n], run.from, run.change[n], filling.most[n], wide);
        }
        Arrays.fill(served, 0, wide, 0);
        Arrays.fill(money, 0, wide, 0);
        Filling.Line[] lines = filling.lines;
        for (int l = 0; l < lines.length; l++) {
            if (!lines[l].asksIn(run.from / seasons, (run.from + wide) / seasons)) {
                continue;
            }
            System.arraycopy(asked[run.role][l], run.from, taken, 0, wide);
            for (int n = lines[l].node(); n >= 0; n = filling.parent[n]) {
                least(taken, room[n], wide);
            }
            for (int n = lines[l].node(); n >= 0; n = filling.parent[n]) {
                leaves(room[n], taken, wide);
            }
            goes(served, money, taken, lines[l].gain(), wide);
        }
        return all(money, served, (double) filling.cutRate - filling.clearRate, wide);
    }

    private static void comes(int[] room, int[] stems, int from, int[] change, int most, int wide) {
        for (int i = 0; i < wide; i++) {
            room[i] = Math.min(most, stems[from + i] + change[i]);
        }
    }

    private static void least(int[] taken, int[] room, int wide) {
        for (int i = 0; i < wide; i++) {
            taken[i] = Math.min(taken[i], room[i]);
        }
    }

    private static void leaves(int[] room, int[] taken, int wide) {
        for (int i = 0; i < wide; i++) {
            room[i] -= taken[i];
        }
    }

    private static void goes(int[] served, double[] money, int[] taken, double gain, int wide) {
        for (int i = 0; i < wide; i++) {
            served[i] += taken[i];
            money[i] += gain * taken[i];
        }
    }

    private static double all(double[] money, int[] served, double rate, int wide) {
        double sum = 0;
        for (int i = 0; i < wide; i++) {
            sum += money[i] - rate * served[i];
        }
        return sum;
    }
}
