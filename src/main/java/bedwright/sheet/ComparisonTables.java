package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.compare.Difference;
import bedwright.compare.Judged;
import bedwright.compare.Way;
import bedwright.plan.Outcome;
import bedwright.sheet.Table.Column;
import java.util.ArrayList;
import java.util.List;

/** The tables of a comparison. */
final class ComparisonTables {
    private final Comparison comparison;
    private final Say say;

    ComparisonTables(Comparison comparison) {
        this.comparison = comparison;
        this.say = new Say(comparison.season());
    }

    Table money() {
        List<Column> columns = List.of(
                Column.text("Way of growing"),
                Column.number("Mean"),
                Column.number("Bad year (1 in 10)"),
                Column.number("Usual year"),
                Column.number("Good year (1 in 10)"),
                Column.number("Promised stems missing"),
                Column.number("Left over"),
                Column.number("Hours"));
        List<List<String>> rows = new ArrayList<>();
        for (Way way : comparison.ways()) {
            Spread years = ComparisonWords.money(way);
            rows.add(List.of(
                    way.name(),
                    say.money(years.mean()),
                    say.money(years.low()),
                    say.money(years.middle()),
                    say.money(years.high()),
                    Say.stems(ComparisonWords.of(way, Judged::missing)),
                    Say.stems(ComparisonWords.of(way, Judged::leftOver)),
                    Say.hours(ComparisonWords.of(way, Judged::work))));
        }
        return new Table("money-table", "Money of a year, and what goes short and over", columns, rows);
    }

    Table differences() {
        List<Column> columns = List.of(
                Column.text("Way of growing"),
                Column.number("More than the first, mean"),
                Column.number("from"),
                Column.number("to"),
                Column.number("luck of the searches, ±"),
                Column.text("better in"),
                Column.text("beyond chance"));
        List<List<String>> rows = new ArrayList<>();
        for (Way way : comparison.ways().subList(1, comparison.ways().size())) {
            Difference found = Difference.of(way, comparison.first());
            rows.add(List.of(
                    way.name(),
                    say.money(found.mean()),
                    say.money(found.low()),
                    say.money(found.high()),
                    say.money(found.luck()),
                    ComparisonWords.years(found.won()),
                    found.isTold() ? "yes" : "no telling"));
        }
        return new Table("differences-table", "Against the first, season by season", columns, rows);
    }

    /** Row against column. */
    Table pairs() {
        List<Column> columns = new ArrayList<>(List.of(Column.text("Earns more than … by")));
        comparison.ways().forEach(way -> columns.add(Column.number(way.name())));
        List<List<String>> rows = new ArrayList<>();
        for (Way one : comparison.ways()) {
            List<String> row = new ArrayList<>(List.of(one.name()));
            for (Way other : comparison.ways()) {
                Difference found = Difference.of(one, other);
                row.add(
                        one == other
                                ? ""
                                : found.isTold()
                                        ? say.money(found.low()) + " to " + say.money(found.high())
                                        : "no telling");
            }
            rows.add(row);
        }
        return new Table("pairs-table", "What the row earns more than the column, 95 % of the time", columns, rows);
    }

    Table takes() {
        List<Column> columns = new ArrayList<>(List.of(Column.text("Way of growing")));
        List<Judged.Peak> stocks = comparison.first().plans().getFirst().stocks();
        stocks.forEach(stock -> columns.add(Column.number(stock.name() + " at most, " + unit(stock))));
        comparison.season().roles().forEach(role -> columns.add(Column.number("stems of " + role.name())));
        for (Judged.Cause cause : Judged.Cause.values()) {
            columns.add(Column.number("lost to " + ComparisonWords.name(cause)));
        }
        columns.add(Column.number("hours beyond all hands"));
        List<List<String>> rows = new ArrayList<>();
        for (Way way : comparison.ways()) {
            List<String> row = new ArrayList<>(List.of(way.name()));
            for (int s = 0; s < stocks.size(); s++) {
                row.add(peak(way, s));
            }
            for (int r = 0; r < comparison.season().roles().size(); r++) {
                row.add(Say.stems(ComparisonWords.stems(way, r)));
            }
            for (Judged.Cause cause : Judged.Cause.values()) {
                row.add(Say.stems(ComparisonWords.lost(way, cause)));
            }
            row.add(Say.hours(ComparisonWords.of(way, Judged::beyond)));
            rows.add(row);
        }
        return new Table("takes-table", "In the mean of plans and seasons", columns, rows);
    }

    private static boolean isLength(Judged.Peak peak) {
        return peak.kind() == Outcome.StockKind.NET || peak.kind() == Outcome.StockKind.COVER;
    }

    private String unit(Judged.Peak peak) {
        return isLength(peak) ? comparison.season().units().length().symbol() : "cells";
    }

    private String peak(Way way, int stock) {
        double mean = way.plans().stream()
                .mapToDouble(plan -> plan.stocks().get(stock).most())
                .average()
                .orElse(0);
        return isLength(way.plans().getFirst().stocks().get(stock))
                ? Say.tenth(comparison.season().units().length().of(mean / 1000))
                : Say.whole(mean);
    }

    Table hopes() {
        List<Column> columns = List.of(
                Column.text("Way of growing"),
                Column.number("search"),
                Column.number("says of itself"),
                Column.number("brings here"),
                Column.number("too hopeful by"));
        List<List<String>> rows = new ArrayList<>();
        for (Way way : comparison.ways()) {
            for (int r = 0; r < way.plans().size(); r++) {
                Judged plan = way.plans().get(r);
                rows.add(List.of(
                        way.name(),
                        Integer.toString(r + 1),
                        say.money(plan.hoped()),
                        say.money(plan.meanMoney()),
                        say.money(plan.tooHopeful())));
            }
        }
        return new Table("hopeful-table", "In its own seasons, and in those it was not made for", columns, rows);
    }
}
