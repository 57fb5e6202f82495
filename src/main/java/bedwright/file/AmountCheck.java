package bedwright.file;

import bedwright.season.BedBlock;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Season;
import bedwright.season.Stock;
import bedwright.season.Strategies.Amount;
import bedwright.season.Strategies.MoreBeds;
import bedwright.season.Strategies.MoreNet;
import bedwright.season.Strategies.Strategy;
import bedwright.season.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Checks of how much more or less of something a strategy has. */
final class AmountCheck {
    private static final double SHORTEST = 0.5;
    private static final double LONGEST = 2000;
    private static final int MOST_BEDS = 500;

    private final Season season;
    private final Flaws flaws;

    AmountCheck(Season season, Flaws flaws) {
        this.season = season;
        this.flaws = flaws;
    }

    void run(String path, Strategy strategy) {
        beds(path, strategy.beds());
        nets(path, strategy.nets());
        stock(path, strategy);
        hours(path, strategy);
        outlets(path, strategy.outlets());
        List<String> breaks = Stream.concat(season.windbreaks().stream(), strategy.windbreaks().stream())
                .map(windbreak -> windbreak.name())
                .toList();
        int known = season.windbreaks().size();
        for (int i = 0; i < strategy.windbreaks().size(); i++) {
            if (breaks.subList(0, known + i).contains(breaks.get(known + i))) {
                flaws.add(
                        path + "/windbreaks/" + i + "/name",
                        "There is a windbreak " + Words.quoted(breaks.get(known + i))
                                + " already. Give this one another name.");
            }
        }
    }

    private void once(String path, List<String> names, String key) {
        for (int i = 0; i < names.size(); i++) {
            if (names.indexOf(names.get(i)) < i) {
                flaws.add(
                        path + "/" + i + "/" + key,
                        Words.quoted(names.get(i)) + " is changed twice here, which leaves open what is meant. Keep one"
                                + " of the two.",
                        path + "/" + names.indexOf(names.get(i)));
            }
        }
    }

    private void beds(String path, List<MoreBeds> beds) {
        List<String> names = season.beds().stream().map(BedBlock::name).toList();
        Unit unit = season.units().length();
        once(path + "/beds", beds.stream().map(MoreBeds::beds).toList(), "beds");
        for (int i = 0; i < beds.size(); i++) {
            String at = path + "/beds/" + i;
            MoreBeds more = beds.get(i);
            flaws.unlessKnown(at + "/beds", "block of beds %s in this season", more.beds(), names);
            if (more.count() == 0 && more.metres() == 0) {
                flaws.add(at, "This changes nothing: give \"count\" or \"metres\", or take the entry away.");
            }
            Optional<BedBlock> block = season.beds().stream()
                    .filter(b -> b.name().equals(more.beds()))
                    .findFirst();
            block.ifPresent(b -> {
                int count = b.count() + more.count();
                double length = b.length() + more.metres();
                if (count < 1 || count > MOST_BEDS) {
                    flaws.add(
                            at + "/count",
                            "Then there would be " + count + " beds " + Words.quoted(b.name()) + ", of which there are "
                                    + b.count() + "; at least 1 has to be left, and there are at most 500.");
                }
                if (length < SHORTEST || length > LONGEST) {
                    flaws.add(
                            at + "/metres",
                            "Then a bed " + Words.quoted(b.name()) + ", now " + Words.measured(b.length(), unit)
                                    + " long, would have " + Words.measured(length, unit)
                                    + "; it has to have between " + Words.number(unit.least(SHORTEST)) + " and "
                                    + Words.number(unit.most(LONGEST)) + " " + unit.symbol() + ".");
                }
            });
        }
    }

    private void nets(String path, List<MoreNet> nets) {
        List<String> names = season.stock().nets().stream().map(Stock.Net::name).toList();
        once(path + "/nets", nets.stream().map(MoreNet::net).toList(), "net");
        for (int i = 0; i < nets.size(); i++) {
            String at = path + "/nets/" + i;
            MoreNet more = nets.get(i);
            flaws.unlessKnown(at + "/net", "net %s in this season", more.net(), names);
            for (Stock.Net net : season.stock().nets()) {
                if (net.name().equals(more.net())) {
                    lessLength(at + "/metres", net.metres(), more.metres(), "of this net");
                }
            }
        }
    }

    /** In the units of the season, like all that is told of it. */
    private void lessLength(String path, double there, double more, String of) {
        Unit unit = season.units().length();
        if (there + more < 0) {
            less(path, Words.measured(there, unit), of, Words.measured(-more, unit) + " less");
        }
    }

    private void fewerCells(String path, int there, int more, String of) {
        if (there + more < 0) {
            less(path, Words.count(there, "cell", "cells"), of, -more + " fewer");
        }
    }

    private void less(String path, String there, String of, String less) {
        flaws.add(
                path,
                "The season has " + there + " " + of + ", so " + less
                        + " can't be had. Take away no more than there is.");
    }

    private void stock(String path, Strategy strategy) {
        Stock stock = season.stock();
        if (strategy.bench() != null) {
            fewerCells(path + "/bench", stock.bench(), strategy.bench(), "on the bench");
        }
        if (strategy.trays() != null) {
            if (stock.trays() == null) {
                flaws.add(
                        path + "/trays",
                        "This season is never short of trays, so more or fewer change nothing."
                                + " Take \"trays\" away.");
            } else {
                fewerCells(path + "/trays", stock.trays().cells(), strategy.trays(), "in trays");
            }
        }
        if (strategy.cover() != null) {
            if (stock.cover() == null) {
                flaws.add(
                        path + "/cover",
                        "This season has no row cover. Describe it there first, with 0 \"metres\" if"
                                + " none is owned.");
            } else {
                lessLength(path + "/cover", stock.cover().metres(), strategy.cover(), "of row cover");
            }
        }
    }

    private void hours(String path, Strategy strategy) {
        if (!strategy.ownHours().isEmpty() && season.labour().own().isEmpty()) {
            flaws.add(
                    path + "/ownHours",
                    "Own hours have no limit in this season, so more or fewer change nothing. Give"
                            + " \"own\" hours there, or take this away.");
        }
        if (!strategy.cuttingHands().isEmpty() && season.labour().cutting().isEmpty()) {
            flaws.add(
                    path + "/cuttingHands",
                    "Cutting hours have no limit in this season, so more or fewer hands change"
                            + " nothing. Give \"cutting\" hours there, or take this away.");
        }
        for (int i = 0; i < strategy.ownHours().size(); i++) {
            var more = strategy.ownHours().get(i);
            span(path + "/ownHours/" + i, more.from(), more.to());
        }
        for (int i = 0; i < strategy.hiredHours().size(); i++) {
            var more = strategy.hiredHours().get(i);
            span(path + "/hiredHours/" + i, more.from(), more.to());
        }
        for (int i = 0; i < strategy.cuttingHands().size(); i++) {
            var more = strategy.cuttingHands().get(i);
            span(path + "/cuttingHands/" + i, more.from(), more.to());
        }
    }

    /** A span in which no week of the season begins changes nothing. */
    private void span(String path, @Nullable LocalDate from, @Nullable LocalDate to) {
        for (int w = 0; w < season.weeks(); w++) {
            var first = season.weekStart(w);
            if ((from == null || !first.isBefore(from)) && (to == null || !first.isAfter(to))) {
                return;
            }
        }
        flaws.add(
                path,
                "No week of the season, which goes from " + season.starts() + " to "
                        + season.dateOf(season.days() - 1)
                        + ", begins in this time, so it changes nothing. Mend \"from\" or \"to\".");
    }

    private void outlets(String path, List<Amount> outlets) {
        List<String> names = Stream.concat(
                        season.outlets().stream().map(Outlet::name),
                        season.orders().stream().map(Order::name))
                .toList();
        once(path + "/outlets", outlets.stream().map(Amount::outlet).toList(), "outlet");
        for (int i = 0; i < outlets.size(); i++) {
            String at = path + "/outlets/" + i;
            Amount change = outlets.get(i);
            flaws.unlessKnown(at + "/outlet", "outlet or order %s in this season", change.outlet(), names);
            if ((change.times() == null) == (change.amount() == null)) {
                flaws.add(
                        at,
                        "An outlet takes so many \"times\" as much as in the season, or an \"amount\"; here "
                                + (change.times() == null ? "neither is" : "both are") + " said. Say one of the two.");
            }
            Double amount = change.amount();
            if (amount != null
                    && amount != Math.rint(amount)
                    && season.orders().stream().anyMatch(o -> o.name().equals(change.outlet()))) {
                flaws.add(
                        at + "/amount",
                        "Of an order only whole bouquets can be asked for, not " + Words.number(amount)
                                + ". Write a whole number.");
            }
        }
    }
}
