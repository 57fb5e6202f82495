package bedwright.command;

import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.plan.Alternative;
import bedwright.plan.DemandLine;
import bedwright.plan.Grains;
import bedwright.plan.NotThere;
import bedwright.plan.Outcome;
import bedwright.plan.PlantingReasons;
import bedwright.plan.Pressed;
import bedwright.plan.Rule;
import bedwright.plan.Step;
import bedwright.plan.Tried;
import bedwright.plan.WeekReasons;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reasons for programs: stems, hours, metres and money in whole units of a person, means of the possible seasons. */
record WhyJson(Season season) {
    private static final int VERSION = 1;

    Map<String, Object> planting(PlantingReasons reasons) {
        Tried without = reasons.without();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", VERSION);
        json.put("number", reasons.planting().number());
        json.put("crop", reasons.planting().crop());
        json.put("method", reasons.planting().method());
        json.put("bed", reasons.planting().bed());
        json.put("sown", reasons.planting().sown().toString());
        json.put("plants", reasons.planting().plants());
        json.put("stems", stems(without));
        json.put("missedWithoutIt", lines(without));
        json.put("withoutIt", tried(without));
        json.put("presses", reasons.presses().stream().map(this::pressed).toList());
        json.put(
                "instead",
                reasons.alternatives().stream().map(this::alternative).toList());
        return json;
    }

    Map<String, Object> week(WeekReasons reasons) {
        KindTree kinds = KindTree.of(season.roles());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", VERSION);
        json.put("week", season.weekStart(reasons.week()).toString());
        json.put("kind", kinds.path(reasons.node()));
        json.put("state", name(reasons.state()));
        json.put(
                "stems",
                Arrays.stream(reasons.outcome().stems()[reasons.node()][reasons.week()])
                        .mapToObj(stems -> stems / 100.0)
                        .toList());
        json.put("tried", reasons.tried());
        List<Map<String, Object>> mends = new ArrayList<>();
        for (WeekReasons.Mend mend : reasons.mends()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("stemsMended", mend.mended() / 100);
            one.put("steps", steps(mend.tried()));
            one.put("change", tried(mend.tried()));
            mends.add(one);
        }
        json.put("mends", mends);
        return json;
    }

    Map<String, Object> notThere(List<NotThere> ways) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", VERSION);
        List<Map<String, Object>> all = new ArrayList<>();
        for (NotThere way : ways) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("place", spot(way.spot()));
            if (way.barred() != null) {
                one.put("notOffered", name(way.barred()));
            }
            Tried tried = way.tried();
            if (tried != null) {
                one.put("steps", steps(tried));
                one.put("change", tried(tried));
            }
            Tried instead = way.inPlaceOfOthers();
            if (instead != null) {
                Map<String, Object> roomMade = new LinkedHashMap<>();
                roomMade.put("steps", steps(instead));
                roomMade.put("change", tried(instead));
                one.put("withRoomMade", roomMade);
            }
            all.add(one);
        }
        json.put("methods", all);
        return json;
    }

    private List<Map<String, Object>> steps(Tried tried) {
        List<Map<String, Object>> steps = new ArrayList<>();
        for (Step step : tried.steps()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("crop", crop(step.stock()));
            one.put("lots", step.lots());
            Spot from = step.from();
            Spot to = step.to();
            if (from != null) {
                one.put("from", spot(from));
            }
            if (to != null) {
                one.put("to", spot(to));
            }
            steps.add(one);
        }
        return steps;
    }

    private Map<String, Object> spot(Spot spot) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bed", season.allBeds().get(spot.bed()).name());
        json.put("sown", season.weekStart(spot.sowWeek()).toString());
        json.put("method", method(spot));
        return json;
    }

    /** Stems of the planting by week, one figure a possible season. */
    private Map<String, Object> stems(Tried without) {
        KindTree kinds = KindTree.of(season.roles());
        Map<String, Object> weeks = new LinkedHashMap<>();
        for (int w = 0; w < season.weeks(); w++) {
            List<Double> each = new ArrayList<>();
            boolean any = false;
            for (int k = 0; k < without.before().seasons(); k++) {
                long own = 0;
                for (int n = 0; n < kinds.size(); n++) {
                    own += kinds.parent(n) < 0
                            ? without.before().stems()[n][w][k]
                                    - without.after().stems()[n][w][k]
                            : 0;
                }
                any |= own != 0;
                each.add(own / 100.0);
            }
            if (any) {
                weeks.put(season.weekStart(w).toString(), each);
            }
        }
        return weeks;
    }

    private List<Map<String, Object>> lines(Tried without) {
        KindTree kinds = KindTree.of(season.roles());
        List<Map<String, Object>> lines = new ArrayList<>();
        int seasons = without.before().seasons();
        for (DemandLine line : without.before().demand()) {
            Map<String, Object> weeks = new LinkedHashMap<>();
            for (int w = 0; w < season.weeks(); w++) {
                long lost = 0;
                for (int k = 0; k < seasons; k++) {
                    lost += without.before().served()[line.index()][w][k]
                            - without.after().served()[line.index()][w][k];
                }
                if (lost != 0) {
                    weeks.put(season.weekStart(w).toString(), lost / 100.0 / seasons);
                }
            }
            if (!weeks.isEmpty()) {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("who", line.name());
                one.put("kind", kinds.path(line.node()));
                one.put("stemsByWeek", weeks);
                lines.add(one);
            }
        }
        return lines;
    }

    /** What a change brings more (above 0) or less than the plan has. */
    Map<String, Object> tried(Tried tried) {
        int seasons = tried.before().seasons();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("stems", tried.delivered() / 100);
        json.put("promisedMissing", tried.missing() / 100);
        json.put("hours", tried.work() / Grains.TICKS_AN_HOUR);
        json.put("money", money(tried.money()));
        json.put("asJudged", money(tried.weighed()));
        Map<String, Object> rules = new LinkedHashMap<>();
        for (Rule rule : Rule.values()) {
            long cost = tried.rules().cost(rule);
            if (rule.level() == Rule.Level.SOFT && cost != 0) {
                rules.put(name(rule), money((double) cost / seasons));
            }
        }
        json.put("costs", rules);
        json.put("mustBeOursMissing", tried.rules().cost(Rule.MUST_BE_OURS) / 100.0 / seasons);
        json.put("canBeDone", !tried.isStopped());
        json.put(
                "stoppedBy",
                tried.isStopped() ? tried.stops().stream().map(this::stop).toList() : List.of());
        return json;
    }

    private double money(double grains) {
        return Grains.toMoney(season, grains);
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Map<String, Object> stop(Outcome.Broken broken) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("rule", broken.rule());
        json.put("where", broken.where());
        if (broken.week() >= 0) {
            json.put("week", season.weekStart(broken.week()).toString());
        }
        json.put("by", broken.by());
        json.put("unit", broken.unit());
        return json;
    }

    private Map<String, Object> pressed(Pressed pressed) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("rule", pressed.rule().sentence());
        json.put("where", pressed.where());
        json.put(
                "weeks",
                pressed.weeks().stream()
                        .map(w -> season.weekStart(w).toString())
                        .toList());
        return json;
    }

    private Map<String, Object> alternative(Alternative alternative) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("what", name(alternative.sort()));
        Spot spot = alternative.spot();
        if (spot != null) {
            json.put("bed", season.allBeds().get(spot.bed()).name());
            json.put("sown", season.weekStart(spot.sowWeek()).toString());
            json.put("method", method(spot));
        }
        json.put("tried", alternative.offered());
        json.put("keepingEveryRule", alternative.fitting());
        if (alternative.barred() != null) {
            json.put("notOffered", name(alternative.barred()));
        }
        Tried tried = alternative.tried();
        if (tried != null) {
            json.put("change", tried(tried));
        }
        return json;
    }

    String crop(int stock) {
        int pool = season.pool().size();
        return stock < pool
                ? season.pool().get(stock).crop()
                : season.standing().get(stock - pool).crop();
    }

    private String method(Spot spot) {
        return season.crops().stream()
                .filter(crop -> crop.name().equals(crop(spot.stock())))
                .findFirst()
                .orElseThrow()
                .methods()
                .get(ProspectTable.methodOf(spot.method()))
                .name();
    }
}
