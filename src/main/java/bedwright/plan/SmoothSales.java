package bedwright.plan;

import java.util.Arrays;

/** The part of a {@link SmoothBound} that hours and stems have: what is paid for them, sold and limited, by week. */
final class SmoothSales {
    private final Relaxation relaxed;
    private final PlanFacts facts;
    private final PriceLayout layout;
    private final int weeks;
    private final int seasons;
    private final double[] pay;
    private final double[] payOfWeek;
    private final double[] above;
    private final float[] worth;
    /** Stems taken by the lines of a kind itself. */
    private final double[] taken;
    /** Work of cutting and clearing, ticks, by week and season; cutting alone by week. */
    private final double[] moving;

    private final double[] cut;
    private final double[] missing;
    /** What a season of weight 1 more brings in a week. */
    private final double[] weighed;

    /** Whether any line of a filling asks in a week: filling × weeks + week. */
    private final boolean[] asks;

    private final double[] parts = new double[StemLists.PARTS];

    SmoothSales(Relaxation relaxed, PriceLayout layout) {
        this.relaxed = relaxed;
        this.facts = relaxed.facts;
        this.layout = layout;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        int stems = facts.cells.size() * weeks * seasons;
        this.pay = new double[weeks * seasons];
        this.payOfWeek = new double[weeks];
        this.above = new double[stems];
        this.worth = new float[stems];
        this.taken = new double[stems];
        this.moving = new double[weeks * seasons];
        this.cut = new double[weeks];
        this.missing = new double[weeks];
        this.weighed = new double[weeks * seasons];
        this.asks = new boolean[facts.fillings.length * weeks];
        for (Filling filling : facts.fillings) {
            for (Filling.Line line : filling.lines) {
                for (int w = 0; w < weeks; w++) {
                    asks[filling.role * weeks + w] |= line.asked()[w] > 0;
                }
            }
        }
    }

    float[] worth() {
        return worth;
    }

    double[] payOfWeek() {
        return payOfWeek;
    }

    double value() {
        double sum = 0;
        for (double part : parts) {
            sum += part;
        }
        return sum;
    }

    private int end(int part) {
        return weeks * part / StemLists.PARTS;
    }

    /** Sets what a tick of work costs. */
    void begin(double[] prices) {
        Arrays.fill(payOfWeek, 0);
        for (int w = 0; w < weeks; w++) {
            for (int k = 0; k < seasons; k++) {
                int at = w * seasons + k;
                double own = relaxed.pay(w) + prices[layout.hired() + at];
                pay[at] = prices[layout.seasons() + k] * own + prices[layout.hours() + w];
                payOfWeek[w] += pay[at];
            }
        }
    }

    /** Sells in the weeks of one part. Prices of limits beyond what there is to take away are brought down to it. */
    void sell(int part, double[] prices, double bend) {
        double sum = 0;
        for (int w = end(part); w < end(part + 1); w++) {
            cut[w] = 0;
            missing[w] = 0;
            double hours = prices[layout.hours() + w];
            sum += hours > 0 ? hours * seasons * relaxed.hours(w) : 0;
            double cutting = prices[layout.cutting() + w];
            sum += cutting > 0 ? cutting * seasons * facts.hours.cutting()[w] : 0;
            sum -= payOfWeek[w] * facts.fixedWork[w];
            for (int k = 0; k < seasons; k++) {
                int at = w * seasons + k;
                double more = prices[layout.hired() + at];
                moving[at] = 0;
                weighed[at] = more > 0 ? more * facts.hours.own()[w] : 0;
                sum += prices[layout.seasons() + k] * weighed[at];
                for (Filling filling : facts.fillings) {
                    if (isSold(filling, w)) {
                        sum += sell(filling, w, at, prices, bend);
                    }
                }
            }
        }
        parts[part] = sum;
    }

    /** Whether stems of a role matter in a week: that somebody asks for them, or that clearing them is work. */
    private boolean isSold(Filling filling, int week) {
        return asks[filling.role * weeks + week] || filling.clearRate != 0;
    }

    private double sell(Filling filling, int week, int at, double[] prices, double bend) {
        double weight = prices[layout.seasons() + at % seasons];
        double must = prices[layout.must()];
        int step = weeks * seasons;
        int first = filling.firstNode * step + at;
        double own = filling.none[at];
        for (int n = 0, cell = first; n < filling.nodes; n++, cell += step) {
            int parent = filling.parent[n];
            double before = prices[layout.asked() + cell] + (parent < 0 ? 0 : above[first + parent * step]);
            above[cell] = before;
            taken[cell] = 0;
            if (filling.most[n] != Integer.MAX_VALUE) {
                // A limit takes away no more than there is.
                double limit = Math.min(before, prices[layout.most() + cell]);
                prices[layout.most() + cell] = limit;
                above[cell] = before - limit;
                own += limit * filling.most[n];
            }
            worth[cell] = (float) (weight * above[cell] - pay[at] * filling.clearRate);
        }
        double sum = 0;
        double serving =
                pay[at] * (filling.cutRate - filling.clearRate) + prices[layout.cutting() + week] * filling.cutRate;
        for (Filling.Line line : filling.lines) {
            double amount = line.asked()[week];
            missing[week] += line.weight() * amount;
            sum -= must * line.weight() * amount;
            if (amount == 0 || !relaxed.comes[(filling.firstNode + line.node()) * weeks + week]) {
                continue;
            }
            double gain = line.gain();
            for (int n = line.node(); n >= 0; n = filling.parent[n]) {
                gain -= prices[layout.asked() + first + n * step];
            }
            double surplus = weight * gain + must * line.weight() - serving;
            double half = bend * (weight * line.gain() + must * line.weight()) / 2;
            if (surplus <= -half) {
                continue;
            }
            double part = surplus >= half ? 1 : (surplus + half) / (2 * half);
            // Less what the season's own money shows of it, which is added with its weight below.
            double all = surplus >= half ? surplus : (surplus + half) * part / 2;
            double takes = part * amount;
            sum += amount * all - weight * gain * takes;
            own += gain * takes;
            taken[first + line.node() * step] += takes;
            moving[at] += takes * (filling.cutRate - filling.clearRate);
            cut[week] += takes * filling.cutRate;
            missing[week] -= line.weight() * takes;
        }
        weighed[at] += own;
        return sum + weight * own;
    }

    /** Sets how the bound changes with the prices of one part's weeks. */
    void changes(int part, double[] prices, double[] came, double[] work, double[] change) {
        double[] through = new double[facts.cells.size()];
        double[] within = new double[facts.cells.size()];
        for (int w = end(part); w < end(part + 1); w++) {
            double all = 0;
            for (int k = 0; k < seasons; k++) {
                int at = w * seasons + k;
                double weight = prices[layout.seasons() + k];
                for (Filling filling : facts.fillings) {
                    if (isSold(filling, w)) {
                        through(filling, at, weight, came, change, through, within);
                    }
                }
                double ticks = moving[at] + work[w] + facts.fixedWork[w];
                all += ticks;
                double more = prices[layout.hired() + at];
                weighed[at] -= (relaxed.pay(w) + more) * ticks;
                change[layout.hired() + at] =
                        relaxed.extraPay(w) > 0 ? weight * (facts.hours.own()[w] - ticks) : 0;
            }
            long limit = relaxed.hours(w);
            change[layout.hours() + w] = limit < WorkWeeks.UNLIMITED ? (double) seasons * limit - all : 0;
            long cutting = facts.hours.cutting()[w];
            change[layout.cutting() + w] = cutting < WorkWeeks.UNLIMITED ? (double) seasons * cutting - cut[w] : 0;
        }
    }

    private void through(
            Filling filling, int at, double weight, double[] came, double[] change, double[] through, double[] within) {
        int step = weeks * seasons;
        int first = filling.firstNode * step + at;
        double stems = 0;
        for (int n = 0; n < filling.nodes; n++) {
            double here = came[first + n * step];
            through[n] = here;
            within[n] = taken[first + n * step];
            stems += here;
            weighed[at] += here * above[first + n * step];
        }
        moving[at] += filling.clearRate * stems;
        for (int n = filling.nodes - 1; n >= 0; n--) {
            int cell = first + n * step;
            if (filling.most[n] != Integer.MAX_VALUE) {
                change[layout.most() + cell] = weight * (filling.most[n] - through[n]);
            }
            change[layout.asked() + cell] = weight * (through[n] - within[n]);
            if (filling.parent[n] >= 0) {
                through[filling.parent[n]] += through[n];
                within[filling.parent[n]] += within[n];
            }
        }
    }

    /** Sets how the bound changes with the weights of the seasons and the price of what must be ours. */
    void sumChanges(long mayBeMissing, double[] change) {
        double left = mayBeMissing;
        for (int w = 0; w < weeks; w++) {
            left -= missing[w];
            for (int k = 0; k < seasons; k++) {
                change[layout.seasons() + k] += weighed[w * seasons + k];
            }
        }
        change[layout.must()] = left;
    }
}
