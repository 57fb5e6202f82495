package bedwright.command;

import bedwright.season.Units;
import bedwright.station.Judge;
import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** How well sampled seasons foretold years that they were not made from, in words. */
record Judgement(Judge.Judgement found, long seed, Units units) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final double SHARE = 0.8;
    /** A count rarer than this, on either side, is told as too few or too many. */
    private static final double RARE = 0.025;

    void print(PrintWriter out) {
        int years = found.to() - found.from() + 1;
        out.println(
                found.isSplit()
                        ? "A climate made from the years before " + found.from() + ", judged by " + found.from()
                                + " to " + found.to() + ", " + Words.count(years, "year") + " that it does not know."
                        : "Each of the " + Words.count(years, "year") + " " + found.from() + " to " + found.to()
                                + " held back in turn, and a climate made from the others.");
        out.println("The band holds 8 of 10 of 500 sampled seasons; so should it of the years held back.");
        out.println();
        out.printf(Locale.ROOT, "%-46s %21s  %s%n", "", "band, and its middle", "years below, within, above");
        for (Judge.Judged judged : found.figures()) {
            out.printf(
                    Locale.ROOT,
                    "%-46s %6s – %-6s %6s  %3d %3d %3d  %s%n",
                    judged.name(),
                    figure(judged, judged.low()),
                    figure(judged, judged.high()),
                    figure(judged, judged.usual()),
                    judged.below(),
                    judged.within(),
                    judged.above(),
                    verdict(judged));
        }
        if (!found.isSplit()) {
            out.println();
            out.println("With fewer than " + Judge.ENOUGH
                    + " years this tells little: only a climate that is far off shows."
                    + " A real judgement takes decades.");
        }
    }

    private String figure(Judge.Judged judged, double value) {
        return judged.isDay()
                ? DAY.format(found.begins().plusDays(Math.round(value)))
                : String.format(Locale.ROOT, "%.0f", units.degreeDays().of(value));
    }

    /** Of independent years the count would be binomial; that they share one climate makes it stray a little more. */
    private static String verdict(Judge.Judged judged) {
        BinomialDistribution counts = BinomialDistribution.of(judged.years(), SHARE);
        String share = judged.within() + " of " + judged.years();
        if (counts.cumulativeProbability(judged.within()) < RARE) {
            return share + ": the band is too narrow or in the wrong place";
        }
        if (counts.survivalProbability(judged.within() - 1) < RARE) {
            return share + ": the band is too wide";
        }
        return share + ": as it should";
    }

    Map<String, Object> json() {
        List<Map<String, Object>> figures =
                found.figures().stream().map(this::json).toList();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", 1);
        json.put("seed", seed);
        json.put("heldBackInTurn", !found.isSplit());
        json.put("from", found.from());
        json.put("to", found.to());
        json.put("figures", figures);
        return json;
    }

    private Map<String, Object> json(Judge.Judged judged) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", judged.name());
        json.put("low", figure(judged, judged.low()));
        json.put("usual", figure(judged, judged.usual()));
        json.put("high", figure(judged, judged.high()));
        json.put("below", judged.below());
        json.put("within", judged.within());
        json.put("above", judged.above());
        return json;
    }
}
