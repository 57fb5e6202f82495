package bedwright.command;

import bedwright.plan.Grains;
import bedwright.plan.Replan;
import bedwright.plan.Tried;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a plan made anew changes and what each change buys, for programs; means of the possible seasons. */
record NewPlanJson(Season season) {
    private static final int VERSION = 1;

    Map<String, Object> of(LocalDate on, List<String> impossible, List<Replan.Bought> bought, @Nullable Tried all) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", VERSION);
        json.put("on", on.toString());
        json.put("noLongerPossible", impossible);
        json.put("changes", bought.stream().map(this::one).toList());
        if (all != null) {
            json.put("allTogether", buys(all));
        }
        return json;
    }

    private Map<String, Object> one(Replan.Bought bought) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("needed", bought.isNeeded());
        json.put("parts", bought.parts().stream().map(NewPlanJson::part).toList());
        json.put("buys", buys(bought.made()));
        return json;
    }

    private static Map<String, Object> part(Replan.Changed part) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("lots", part.lots());
        json.put("plants", part.plants());
        put(json, "before", part.before());
        put(json, "after", part.after());
        return json;
    }

    private static void put(Map<String, Object> json, String key, @Nullable KeptPlanting planting) {
        if (planting == null) {
            return;
        }
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("number", planting.number());
        one.put("crop", planting.crop());
        one.put("method", planting.method());
        one.put("bed", planting.bed());
        one.put("sown", planting.sown().toString());
        day(one, "out", planting.out());
        day(one, "until", planting.until());
        json.put(key, one);
    }

    private static void day(Map<String, Object> json, String key, @Nullable LocalDate day) {
        if (day != null) {
            json.put(key, day.toString());
        }
    }

    private Map<String, Object> buys(Tried made) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("stems", made.delivered() / 100);
        json.put("promisedMissing", made.missing() / 100);
        json.put("mustBeOurs", made.gain().medium() / 100.0 / made.before().seasons());
        json.put("hours", made.work() / Grains.TICKS_AN_HOUR);
        json.put("money", Grains.toMoney(season, made.money()));
        json.put("asJudged", Grains.toMoney(season, made.weighed()));
        return json;
    }
}
