package bedwright.file;

import bedwright.season.Changes;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Strategies;
import bedwright.season.Strategies.Strategy;
import bedwright.season.Strategies.Ways;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What does not hold together in a file of strategies, or does not fit its season. */
final class StrategyCheck {
    private final Season season;
    private final Flaws flaws;

    private StrategyCheck(Season season, Flaws flaws) {
        this.season = season;
        this.flaws = flaws;
    }

    /** All flaws. */
    static List<Flaw> of(Strategies strategies, Season season) {
        Flaws flaws = new Flaws();
        List<Strategy> all = strategies.strategies();
        flaws.unlessDifferent("strategy", all.stream().map(Strategy::name).toList(), i -> "/strategies/" + i + "/name");
        for (int i = 0; i < all.size(); i++) {
            Flaws its = new Flaws();
            String path = "/strategies/" + i;
            StrategyCheck check = new StrategyCheck(season, its);
            check.ways(path, all.get(i));
            check.planning(path, all.get(i));
            new AmountCheck(season, its).run(path, all.get(i));
            if (its.found().isEmpty()) {
                check.changed(path, all.get(i));
            }
            its.found()
                    .forEach(flaw -> flaws.add(
                            flaw.path(), flaw.message(), flaw.restsOn().toArray(String[]::new)));
        }
        return flaws.found();
    }

    private void ways(String path, Strategy strategy) {
        int before = flaws.found().size();
        for (int i = 0; i < strategy.barred().size(); i++) {
            matches(path + "/barred/" + i, strategy.barred().get(i));
        }
        for (int i = 0; i < strategy.only().size(); i++) {
            matches(path + "/only/" + i, strategy.only().get(i));
        }
        if (flaws.found().size() > before) {
            return;
        }
        for (int i = 0; i < strategy.only().size(); i++) {
            contradicted(path, i, strategy);
        }
        standing(path, strategy);
        if (!season.pool().isEmpty() && Changes.of(season, strategy).pool().isEmpty()) {
            flaws.add(
                    path,
                    "With these changes nothing is left to plant: of no crop in the season's \"pool\" a way of growing"
                            + " is left. Bar less.",
                    path + "/barred",
                    path + "/only");
        }
    }

    /** Names must be known, and something must be meant. */
    private void matches(String path, Ways ways) {
        int before = flaws.found().size();
        List<String> crops = season.crops().stream().map(Crop::name).toList();
        for (int c = 0; c < ways.crops().size(); c++) {
            flaws.unlessKnown(
                    path + "/crops/" + c, "crop %s in this season", ways.crops().get(c), crops);
        }
        List<String> methods = season.crops().stream()
                .filter(ways::speaksOf)
                .flatMap(crop -> crop.methods().stream().map(Method::name))
                .distinct()
                .toList();
        for (int m = 0; m < ways.methods().size() && flaws.found().size() == before; m++) {
            flaws.unlessKnown(
                    path + "/methods/" + m,
                    "method %s of these crops",
                    ways.methods().get(m),
                    methods,
                    path + "/crops");
        }
        if (flaws.found().size() == before && none(ways::holds)) {
            flaws.add(
                    path,
                    "No way of growing in this season is like this, so it changes nothing. Mend what is said, or take"
                            + " the entry away.");
        }
    }

    private interface Way {
        boolean test(Crop crop, Method method);
    }

    private boolean none(Way way) {
        return season.crops().stream()
                .noneMatch(crop -> crop.methods().stream().anyMatch(method -> way.test(crop, method)));
    }

    /** What alone may be grown must not all be barred, crop by crop where crops are named. */
    private void contradicted(String path, int entry, Strategy strategy) {
        Ways only = strategy.only().get(entry);
        for (Crop crop : season.crops()) {
            if (!only.crops().contains(crop.name())) {
                continue;
            }
            Predicate<Method> meant = way -> only.holds(crop, way);
            if (crop.methods().stream().anyMatch(meant)
                    && crop.methods().stream().filter(meant).noneMatch(way -> Changes.leaves(strategy, crop, way))) {
                flaws.add(
                        path + "/only/" + entry,
                        "This leaves some ways of growing " + Words.quoted(crop.name())
                                + ", but \"barred\" bars all of them: the two contradict each other. Take one away.",
                        path + "/barred");
            }
        }
    }

    /** What stands in the ground can't be barred any more. */
    private void standing(String path, Strategy strategy) {
        for (Standing standing : season.standing()) {
            for (Crop crop : season.crops()) {
                if (!crop.name().equals(standing.crop()) || standing.method() == null) {
                    continue;
                }
                boolean anyLeft = crop.methods().stream().anyMatch(way -> Changes.leaves(strategy, crop, way));
                boolean itsWayLeft = crop.methods().stream()
                        .anyMatch(way -> way.name().equals(standing.method()) && Changes.leaves(strategy, crop, way));
                if (anyLeft && !itsWayLeft) {
                    flaws.add(
                            path,
                            Words.quoted(crop.name()) + " stands already, grown as "
                                    + Words.quoted(standing.method())
                                    + ", which this strategy does not leave. Leave that way of growing it.",
                            path + "/barred",
                            path + "/only");
                }
            }
        }
    }

    private void planning(String path, Strategy strategy) {
        boolean given = !season.possible().given().isEmpty();
        Integer planned = strategy.planned();
        if (given && planned != null && planned > 1) {
            flaws.add(
                    path + "/planned",
                    "This season gives its possible seasons outright, so no " + planned
                            + " of them can be drawn. Write 1, the normal season alone, or leave it out.");
        }
        if (given && strategy.doubt() != null) {
            flaws.add(
                    path + "/doubt",
                    "This season gives its possible seasons outright, with what they doubt. Leave \"doubt\" out.");
        }
        if (strategy.ruleOfThumb()) {
            unplanned(path, "caution", strategy.caution() != null);
            unplanned(path, "planned", planned != null);
            unplanned(path, "doubt", strategy.doubt() != null);
        }
        if (!given && planned != null && planned == 1 && strategy.doubt() != null && strategy.doubt()) {
            flaws.add(
                    path + "/doubt",
                    "Doubt shows only between possible seasons, and here \"planned\" is the normal season alone: the"
                            + " two contradict each other. Take one away.",
                    path + "/planned");
        }
    }

    private void unplanned(String path, String key, boolean isSaid) {
        if (isSaid) {
            flaws.add(
                    path + "/" + key,
                    "A season by rule of thumb is not planned, so " + Words.quoted(key)
                            + " contradicts \"ruleOfThumb\". Take one away.",
                    path + "/ruleOfThumb");
        }
    }

    /** The changed season has to hold together like any other. */
    private void changed(String path, Strategy strategy) {
        List<Flaw> found = new ArrayList<>(SeasonCheck.of(Changes.of(season, strategy)));
        for (Flaw flaw : found) {
            flaws.add(
                    path,
                    "With these changes the season does not hold together at " + flaw.path() + ": " + flaw.message());
        }
    }
}
