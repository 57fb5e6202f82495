package bedwright.sheet;

import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.season.Figure;
import bedwright.season.Season;
import bedwright.season.Sureness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Which crops of a plan rest on weak figures, by what hangs on them. A crop's money is what its stems would bring at the
 * mean worth of a stem of its role in each week, so it is about right at best.
 */
final class WeakFigures {
    private static final int NAMED = 6;
    private static final int MOST_NAMES = 6;
    private static final Set<String> WEIGHTY = Set.of("stems", "firstCut");

    private final Say say;
    private final Map<String, Weak> byCrop = new LinkedHashMap<>();
    private double stems;
    private double money;

    private static final class Weak {
        final Set<String> figures = new TreeSet<>();
        double stems;
        double money;
    }

    WeakFigures(Season season, Outcome outcome, List<Shown> plantings) {
        this.say = new Say(season);
        double[][] worth = worth(season, outcome);
        for (Shown planting : plantings) {
            Weak weak = byCrop.computeIfAbsent(planting.crop().name(), name -> new Weak());
            add(weak.figures, planting.crop().figures());
            add(weak.figures, planting.method().figures());
            for (int w = 0; w < season.weeks(); w++) {
                double given = planting.meanByWeek()[w];
                weak.stems += given;
                weak.money += given * worth[planting.role()][w];
            }
        }
        byCrop.values().forEach(weak -> {
            stems += weak.stems;
            money += weak.money;
        });
        byCrop.values().removeIf(weak -> weak.figures.isEmpty());
    }

    private static void add(Set<String> weak, Map<String, Figure> figures) {
        figures.forEach((key, figure) -> {
            if (figure.sure() == Sureness.WEAK) {
                weak.add(key);
            }
        });
    }

    /** Mean grains that a hundredth of a stem of each role brings in each week. */
    private static double[][] worth(Season season, Outcome outcome) {
        double[][] worth = new double[season.roles().size()][season.weeks()];
        for (DemandLine line : outcome.demand()) {
            for (int w = 0; w < season.weeks(); w++) {
                worth[line.role()][w] += line.price()
                        * Spread.of(outcome.served()[line.index()][w]).mean();
            }
        }
        List<RoleWeeks> roles = RoleWeeks.of(season, outcome);
        for (int r = 0; r < worth.length; r++) {
            for (int w = 0; w < season.weeks(); w++) {
                double ready = roles.get(r).ready()[w].mean();
                worth[r][w] = ready > 0 ? worth[r][w] / ready : 0;
            }
        }
        return worth;
    }

    /** Sentences, the crops with most money first. */
    List<String> sentences() {
        // Every date and stem rests on these two; the others bear on losses.
        List<Map.Entry<String, Weak>> leaning = byCrop.entrySet().stream()
                .filter(e -> e.getValue().figures.contains("stems")
                        || e.getValue().figures.contains("firstCut"))
                .sorted(Comparator.comparingDouble((Map.Entry<String, Weak> e) -> -e.getValue().money)
                        .thenComparing(Map.Entry::getKey))
                .toList();
        List<String> sentences = new ArrayList<>();
        double weakStems = leaning.stream().mapToDouble(e -> e.getValue().stems).sum();
        double weakMoney = leaning.stream().mapToDouble(e -> e.getValue().money).sum();
        sentences.add(
                leaning.isEmpty()
                        ? "No crop of this plan rests on a weak figure for its stems or its first cut."
                        : "Crops whose stems or first cut are a guess bear "
                                + Say.percent(stems > 0 ? weakStems / stems : 0)
                                + " of the stems and about " + Say.percent(money > 0 ? weakMoney / money : 0)
                                + " of what the stems bring:");
        for (Map.Entry<String, Weak> entry : leaning.subList(0, Math.min(NAMED, leaning.size()))) {
            sentences.add(sentence(entry.getKey(), entry.getValue()));
        }
        if (leaning.size() > NAMED) {
            sentences.add("Likewise, with less hanging on them: "
                    + String.join(
                            ", ",
                            leaning.subList(NAMED, leaning.size()).stream()
                                    .map(Map.Entry::getKey)
                                    .toList())
                    + ".");
        }
        List<String> others = byCrop.entrySet().stream()
                .filter(e -> e.getValue().figures.contains("stand"))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        if (!others.isEmpty()) {
            sentences.add("What gust lays a crop flat is a guess for " + Say.count(others.size(), "crop", "crops")
                    + " of this plan.");
        }
        return sentences;
    }

    private String sentence(String crop, Weak weak) {
        List<String> names = weak.figures.stream()
                .sorted(Comparator.comparing((String key) -> !WEIGHTY.contains(key)))
                .map(WeakFigures::name)
                .toList();
        // A crop of the book says of every figure how sure it is: what bears most is named, the rest is counted.
        List<String> told = names.size() <= MOST_NAMES
                ? names
                : Stream.concat(
                                names.stream()
                                        .limit(weak.figures.stream()
                                                .filter(WEIGHTY::contains)
                                                .count()),
                                Stream.of("and others"))
                        .toList();
        return crop + ": " + Say.stems(weak.stems) + " stems, about " + say.money(weak.money) + "; weak: "
                + String.join(", ", told) + ".";
    }

    private static String name(String key) {
        return switch (key) {
            case "stems" -> "stems a plant";
            case "firstCut" -> "time to the first cut";
            case "stand" -> "how it stands in gusts";
            default -> key;
        };
    }
}
