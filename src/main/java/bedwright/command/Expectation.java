package bedwright.command;

import bedwright.growth.Prospect;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** What to expect of a planting, in words. */
record Expectation(Season season, String crop, String method, String bed, Prospect prospect) {

    void print(PrintWriter out) {
        out.printf(
                Locale.ROOT,
                "%s (%s) in bed %s: %s on %s%n",
                crop,
                method,
                bed,
                Words.count(prospect.plants(), "plant"),
                length());
        room(out);
        out.println("  sown, set or started    " + Words.day(season, prospect.sowDay()));
        if (prospect.groundDay() != prospect.sowDay()) {
            out.println("  planted out             " + Words.day(season, prospect.groundDay()));
        }
        line(out, "  above ground           ", prospect.emergence());
        if (prospect.pinch() != Prospect.NONE) {
            line(out, "  pinched                ", prospect.pinch());
        }
        line(out, "  first cut, usual season", prospect.firstCut());
        range(out);
        out.println("  bed free again          " + Words.day(season, 7 * prospect.heldTo()));
        out.println();
        stems(out);
        out.println();
        losses(out);
        out.println();
        takes(out);
    }

    /** What is asked about may be more than the bed has room for, since plants that are alike are judged alike. */
    private void room(PrintWriter out) {
        double metres = season.allBeds().stream()
                .filter(one -> one.name().equals(bed))
                .mapToDouble(one -> one.block().length())
                .findFirst()
                .orElseThrow();
        double needed = prospect.millimetres() / 1000.0;
        if (needed > metres) {
            out.printf(
                    Locale.ROOT,
                    "  More than there is room for: the bed is %s long and holds %s like these.%n",
                    Words.length(season, metres),
                    Words.count((int) (prospect.plants() * metres / needed), "plant"));
        }
    }

    private String length() {
        return Words.length(season, prospect.millimetres() / 1000.0);
    }

    private void line(PrintWriter out, String label, int day) {
        out.println(label + (day == Prospect.NONE ? " not before the season's end" : " " + Words.day(season, day)));
    }

    private void range(PrintWriter out) {
        int[] days = Arrays.stream(prospect.firstCuts())
                .filter(day -> day != Prospect.NONE)
                .sorted()
                .toArray();
        if (days.length == 0) {
            out.println("  first cut               in none of the possible seasons");
            return;
        }
        out.printf(
                Locale.ROOT,
                "  first cut, possible     %s to %s%s%n",
                Words.day(season, days[0]),
                Words.day(season, days[days.length - 1]),
                days.length == prospect.firstCuts().length
                        ? ""
                        : ", in " + days.length + " of " + prospect.firstCuts().length + " seasons");
    }

    private void stems(PrintWriter out) {
        out.println("Stems a week: mean of the possible seasons, and one season in ten below / above");
        for (int n = 0; n < prospect.kinds().size(); n++) {
            out.println("  " + prospect.kinds().get(n));
            for (int w = 0; w < season.weeks(); w++) {
                int[] each = prospect.stems()[n][w].clone();
                Arrays.sort(each);
                if (each[each.length - 1] == 0) {
                    continue;
                }
                out.printf(
                        Locale.ROOT,
                        "    %-12s %7.0f   %5.0f / %.0f%n",
                        Words.date(season.weekStart(w)),
                        Arrays.stream(each).average().orElse(0) / 100,
                        each[each.length / 10] / 100.0,
                        each[each.length - 1 - each.length / 10] / 100.0);
            }
        }
        if (prospect.kinds().isEmpty()) {
            out.println("  none");
        }
    }

    private void losses(PrintWriter out) {
        out.println("What is left after          usual    mean    worst possible season");
        loss(out, "coming up or taking", Prospect.Surviving::stand);
        for (String pest : prospect.usual().pests().keySet()) {
            loss(out, pest, left -> left.pests().getOrDefault(pest, 1.0));
        }
        loss(out, "spring frost or winter", Prospect.Surviving::springOrWinter);
        loss(out, "autumn frost", Prospect.Surviving::autumn);
        loss(out, "storms", Prospect.Surviving::storms);
        loss(out, "all together", Prospect.Surviving::all);
    }

    private void loss(PrintWriter out, String cause, ToDoubleFunction<Prospect.Surviving> share) {
        double mean = prospect.seasons().stream().mapToDouble(share).average().orElse(1);
        double worst = prospect.seasons().stream().mapToDouble(share).min().orElse(1);
        out.printf(
                Locale.ROOT,
                "  %-24s %6s  %6s   %6s%n",
                cause,
                Words.percent(share.applyAsDouble(prospect.usual())),
                Words.percent(mean),
                Words.percent(worst));
    }

    private void takes(PrintWriter out) {
        double minutes = prospect.tasks().stream()
                .mapToDouble(task -> task.minutes() + task.setUp())
                .sum();
        out.printf(Locale.ROOT, "It takes %s hours of work before cutting", Words.number(minutes / 60));
        if (prospect.cells() > 0) {
            out.printf(Locale.ROOT, ", %s", Words.count(prospect.cells(), "tray cell"));
        }
        List<String> costs = new ArrayList<>();
        prospect.costs().forEach(cost -> costs.add(Words.exactMoney(season, cost.money()) + " for " + cost.item()));
        out.println(costs.isEmpty() ? "." : ", and " + String.join(", ", costs) + ".");
    }
}
