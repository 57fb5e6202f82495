package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.compare.Difference;
import bedwright.compare.Judged;
import bedwright.compare.Way;
import bedwright.file.PlainJson;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.season.Role;
import bedwright.season.Season;
import bedwright.table.Csv;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The figures of a comparison for programs and spreadsheets: money in main units, stems whole and decimal, hours. The same
 * comparison gives the same text.
 */
public final class ComparisonData {
    private static final int VERSION = 1;

    private final Comparison comparison;
    private final Season season;

    private ComparisonData(Comparison comparison) {
        this.comparison = comparison;
        this.season = comparison.season();
    }

    /** Everything, as JSON. */
    public static String json(Comparison comparison) {
        return PlainJson.text(new ComparisonData(comparison).all());
    }

    /** A line a way of growing. */
    public static String strategiesCsv(Comparison comparison) {
        return new ComparisonData(comparison).strategies();
    }

    /** A line a season, with the money that each plan leaves in it. */
    public static String seasonsCsv(Comparison comparison) {
        return new ComparisonData(comparison).seasons();
    }

    private Map<String, Object> all() {
        Map<String, Object> all = new LinkedHashMap<>();
        Comparison.Effort effort = comparison.effort();
        all.put("version", VERSION);
        all.put("season", season.name());
        all.put("strategies", comparison.strategies().name());
        all.put("currency", season.currency().sign());
        Double seconds = effort.seconds();
        Long moves = effort.moves();
        if (seconds != null) {
            all.put("seconds", seconds);
        }
        if (moves != null) {
            all.put("moves", moves);
        }
        all.put("seed", effort.seed());
        all.put("searches", effort.searches());
        all.put("judgedOn", comparison.seasons());
        all.put("ways", comparison.ways().stream().map(this::way).toList());
        List<Map<String, Object>> differences = new ArrayList<>();
        for (int i = 0; i < comparison.ways().size(); i++) {
            for (int j = 0; j < i; j++) {
                differences.add(
                        difference(comparison.ways().get(i), comparison.ways().get(j)));
            }
        }
        all.put("differences", differences);
        return all;
    }

    private Map<String, Object> way(Way way) {
        Map<String, Object> all = new LinkedHashMap<>();
        Spread money = ComparisonWords.money(way);
        all.put("name", way.name());
        all.put("plans", way.plans().stream().map(this::plan).toList());
        all.put("money", money(mean(way)));
        all.put("badYear", money(money.low()));
        all.put("usualYear", money(money.middle()));
        all.put("goodYear", money(money.high()));
        all.put("missing", stems(ComparisonWords.of(way, Judged::missing)));
        all.put("leftOver", stems(ComparisonWords.of(way, Judged::leftOver)));
        all.put("hours", hours(ComparisonWords.of(way, Judged::work)));
        all.put("hoursBeyondHands", hours(ComparisonWords.of(way, Judged::beyond)));
        all.put("hoursByWeek", byWeek(way));
        Map<String, Object> roles = new LinkedHashMap<>();
        for (int r = 0; r < season.roles().size(); r++) {
            roles.put(season.roles().get(r).name(), stemsByWeek(way, r));
        }
        all.put("stemsByWeek", roles);
        Map<String, Object> lost = new LinkedHashMap<>();
        for (Judged.Cause cause : Judged.Cause.values()) {
            lost.put(cause.name().toLowerCase(Locale.ROOT), stems(ComparisonWords.lost(way, cause)));
        }
        all.put("lostTo", lost);
        return all;
    }

    private Map<String, Object> plan(Judged plan) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("money", money(plan.meanMoney()));
        all.put("ownFigure", money(plan.hoped()));
        all.put("tooHopeful", money(plan.tooHopeful()));
        all.put("rulesBroken", plan.broken());
        Map<String, Object> peaks = new LinkedHashMap<>();
        for (Judged.Peak peak : plan.stocks()) {
            boolean metres = peak.kind() == Outcome.StockKind.NET || peak.kind() == Outcome.StockKind.COVER;
            peaks.put(peak.name(), metres ? rounded(peak.most() / 1000.0, 3) : peak.most());
        }
        all.put("mostUsed", peaks);
        return all;
    }

    private Map<String, Object> difference(Way one, Way other) {
        Difference found = Difference.of(one, other);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("of", one.name());
        all.put("against", other.name());
        all.put("money", money(found.mean()));
        all.put("from", money(found.low()));
        all.put("to", money(found.high()));
        all.put("luckOfSearches", money(found.luck()));
        all.put("foundNineTimesInTenFrom", money(found.findable()));
        all.put("shareOfSeasonsBetter", rounded(found.won(), 4));
        all.put("told", found.isTold());
        return all;
    }

    private static double mean(Way way) {
        double sum = 0;
        for (double one : way.moneyOfPlans()) {
            sum += one / way.plans().size();
        }
        return sum;
    }

    private List<Double> byWeek(Way way) {
        return IntStream.range(0, season.weeks())
                .mapToObj(w -> hours(way.plans().stream()
                        .mapToDouble(plan -> plan.hours()[w] / way.plans().size())
                        .sum()))
                .toList();
    }

    private List<Double> stemsByWeek(Way way, int role) {
        return IntStream.range(0, season.weeks())
                .mapToObj(w -> stems(way.plans().stream()
                        .mapToDouble(plan -> plan.stems()[role][w] / way.plans().size())
                        .sum()))
                .toList();
    }

    private double money(double grains) {
        return rounded(Grains.toMoney(season, grains), season.currency().digits());
    }

    private static double stems(double hundredths) {
        return rounded(hundredths / 100, 2);
    }

    private static double hours(double ticks) {
        return rounded(ticks / Grains.TICKS_AN_HOUR, 2);
    }

    private static double rounded(double value, int digits) {
        double scale = Math.pow(10, digits);
        double rounded = Math.round(value * scale) / scale;
        return rounded == 0 ? 0 : rounded;
    }

    private String strategies() {
        List<String> head = new ArrayList<>(List.of(
                "strategy",
                "money",
                "bad year",
                "usual year",
                "good year",
                "more than first",
                "from",
                "to",
                "luck of searches",
                "share of seasons better",
                "promised stems missing",
                "left over",
                "hours",
                "hours beyond hands",
                "own figure",
                "too hopeful"));
        season.roles().stream().map(Role::name).forEach(name -> head.add("stems " + name));
        for (Judged.Cause cause : Judged.Cause.values()) {
            head.add("lost to " + ComparisonWords.name(cause));
        }
        return csv(head, comparison.ways().stream().map(this::row).toList());
    }

    private List<String> row(Way way) {
        Spread money = ComparisonWords.money(way);
        Difference found = Difference.of(way, comparison.first());
        boolean first = way == comparison.first();
        double hoped = way.plans().stream().mapToDouble(Judged::hoped).average().orElseThrow();
        List<String> row = new ArrayList<>(List.of(
                Csv.safe(way.name()),
                text(money(mean(way))),
                text(money(money.low())),
                text(money(money.middle())),
                text(money(money.high())),
                first ? "" : text(money(found.mean())),
                first ? "" : text(money(found.low())),
                first ? "" : text(money(found.high())),
                first ? "" : text(money(found.luck())),
                first ? "" : text(rounded(found.won(), 4)),
                text(stems(ComparisonWords.of(way, Judged::missing))),
                text(stems(ComparisonWords.of(way, Judged::leftOver))),
                text(hours(ComparisonWords.of(way, Judged::work))),
                text(hours(ComparisonWords.of(way, Judged::beyond))),
                text(money(hoped)),
                text(money(hoped - mean(way)))));
        for (int r = 0; r < season.roles().size(); r++) {
            row.add(text(stems(ComparisonWords.stems(way, r))));
        }
        for (Judged.Cause cause : Judged.Cause.values()) {
            row.add(text(stems(ComparisonWords.lost(way, cause))));
        }
        return row;
    }

    private static String text(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private String seasons() {
        List<String> head = new ArrayList<>(List.of("season"));
        for (Way way : comparison.ways()) {
            for (int r = 1; r <= way.plans().size(); r++) {
                head.add(Csv.safe(way.name() + ", search " + r));
            }
        }
        List<List<String>> rows = new ArrayList<>();
        for (int k = 0; k < comparison.seasons(); k++) {
            List<String> row = new ArrayList<>(List.of(Integer.toString(k + 1)));
            for (Way way : comparison.ways()) {
                for (Judged plan : way.plans()) {
                    row.add(text(money(plan.money()[k])));
                }
            }
            rows.add(row);
        }
        return csv(head, rows);
    }

    private static String csv(List<String> head, List<List<String>> rows) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(head);
            rows.forEach(csv::writeRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
