package bedwright.file;

import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What does not hold together in a plan file. */
final class PlanCheck {
    private final Season season;
    private final Known known;
    private final Days days;
    private final Flaws flaws = new Flaws();
    /** Lots used so far of each entry of the pool, and how often each standing planting is named. */
    private final Map<Integer, Long> lotsUsed = new HashMap<>();

    private final Map<Integer, Integer> standingUsed = new HashMap<>();

    private PlanCheck(Season season) {
        this.season = season;
        known = new Known(season);
        days = new Days(season, flaws);
    }

    /** All flaws, those of its season included. */
    static List<Flaw> of(Plan plan) {
        List<Flaw> all = new ArrayList<>();
        SeasonCheck.of(plan.season()).forEach(flaw -> all.add(under("", flaw, "/season" + flaw.path())));
        PlanCheck check = new PlanCheck(plan.season());
        check.flaws.unlessDifferent(
                "planting with the number",
                plan.plantings().stream().map(p -> Integer.toString(p.number())).toList(),
                i -> "/plantings/" + i + "/number");
        for (int i = 0; i < plan.plantings().size(); i++) {
            check.planting("/plantings/" + i, plan.plantings().get(i));
        }
        check.flaws.found().forEach(flaw -> all.add(under("", flaw, flaw.path())));
        if (plan.throughout() != null) {
            all.addAll(throughout(plan.throughout()));
        }
        return all;
    }

    /** Flaws of the season as it began, and of what its plantings name. */
    private static List<Flaw> throughout(Plan.Throughout whole) {
        String key = "/throughout";
        PlanCheck check = new PlanCheck(whole.season());
        check.flaws.unlessDifferent(
                "planting with the number",
                whole.plantings().stream()
                        .map(p -> Integer.toString(p.number()))
                        .toList(),
                i -> "/plantings/" + i + "/number");
        for (int i = 0; i < whole.plantings().size(); i++) {
            KeptPlanting planting = whole.plantings().get(i);
            String path = "/plantings/" + i;
            check.known.checkCrop(check.flaws, path + "/crop", planting.crop());
            check.known.checkBed(check.flaws, path + "/bed", planting.bed());
            check.method(path, planting);
            Integer standing = planting.standing();
            if (standing != null && standing > whole.season().standing().size()) {
                check.noEntry(
                        path + "/standing",
                        "standing",
                        standing,
                        whole.season().standing().size());
            }
            Integer pool = planting.pool();
            if (pool != null && pool > whole.season().pool().size()) {
                check.noEntry(
                        path + "/pool", "pool", pool, whole.season().pool().size());
            }
        }
        List<Flaw> all = new ArrayList<>();
        SeasonCheck.of(whole.season()).forEach(flaw -> all.add(under(key, flaw, key + "/season" + flaw.path())));
        check.flaws.found().forEach(flaw -> all.add(under(key, flaw, key + flaw.path())));
        return all;
    }

    /** The paths that a flaw rests on are a season's, or of plantings; here both stand under a key. */
    private static Flaw under(String key, Flaw flaw, String path) {
        List<String> restsOn = flaw.restsOn().stream()
                .map(p -> key + (p.startsWith("/plantings/") ? p : "/season" + p))
                .toList();
        return new Flaw(path, flaw.message(), flaw.ofKey(), restsOn);
    }

    private void planting(String path, KeptPlanting planting) {
        known.checkCrop(flaws, path + "/crop", planting.crop());
        known.checkBed(flaws, path + "/bed", planting.bed());
        days.firstOfAWeek(path + "/sown", "sown", planting.sown());
        Integer pool = planting.pool();
        Integer standing = planting.standing();
        if (standing != null && pool != null && isUnderWay(standing)) {
            standing(path, planting, standing);
        } else if ((pool == null) == (standing == null)) {
            flaws.add(
                    path,
                    "A planting comes either from the season's \"pool\" or from its \"standing\" ones, and here "
                            + (pool == null ? "neither is" : "both are") + " given. Keep one of the two keys.");
        } else if (pool != null) {
            fromPool(path, planting, pool);
        } else if (standing != null) {
            standing(path, planting, standing);
        }
    }

    /** Whether it stands only since the season began: then its lots came from the pool. */
    private boolean isUnderWay(int standing) {
        return standing <= season.standing().size()
                && season.standing().get(standing - 1).past() != null;
    }

    private void fromPool(String path, KeptPlanting planting, int pool) {
        method(path, planting);
        days.inside(path + "/sown", "sown", planting.sown());
        if (pool > season.pool().size()) {
            noEntry(path + "/pool", "pool", pool, season.pool().size());
            return;
        }
        Lots lots = season.pool().get(pool - 1);
        String rests = "/pool/" + (pool - 1);
        sameCrop(path, planting, lots.crop(), "Entry " + pool + " of the pool", rests);
        long plants = (long) planting.lots() * lots.plants();
        if (plants != planting.plants()) {
            flaws.add(
                    path + "/plants",
                    Words.count(planting.lots(), "lot", "lots") + " of " + lots.plants() + " plants are " + plants
                            + " plants, but here stand " + planting.plants() + ". Change \"plants\" or \"lots\".",
                    path + "/lots",
                    path + "/pool",
                    rests + "/plants");
        }
        long before = lotsUsed.getOrDefault(pool, 0L);
        lotsUsed.put(pool, before + planting.lots());
        if (before <= lots.lots() && before + planting.lots() > lots.lots()) {
            flaws.add(
                    path + "/lots",
                    "With these, " + (before + planting.lots()) + " lots are taken from entry " + pool
                            + " of the pool, which has " + lots.lots() + ". Take fewer.",
                    "/plantings/*/lots",
                    "/plantings/*/pool",
                    rests + "/lots");
        }
    }

    private void standing(String path, KeptPlanting planting, int entry) {
        if (entry > season.standing().size()) {
            noEntry(path + "/standing", "standing", entry, season.standing().size());
            return;
        }
        Standing standing = season.standing().get(entry - 1);
        String rests = "/standing/" + (entry - 1);
        // Of written-out stems nobody asks how and when they were sown.
        if (!standing.isWritten()) {
            method(path, planting);
        }
        sameCrop(path, planting, standing.crop(), "Entry " + entry + " of the standing plantings", rests);
        if (planting.plants() != standing.plants()) {
            flaws.add(
                    path + "/plants",
                    "Entry " + entry + " of the standing plantings has " + standing.plants()
                            + " plants, but here stand " + planting.plants() + ". They must agree.",
                    path + "/standing",
                    rests + "/plants");
        }
        if (standingUsed.merge(entry, 1, Integer::sum) == 2) {
            flaws.add(
                    path + "/standing",
                    "Entry " + entry + " of the standing plantings is planted twice in this plan. Keep one of the two.",
                    "/plantings/*/standing");
        }
    }

    private void method(String path, KeptPlanting planting) {
        Optional<Crop> crop = known.crop(planting.crop());
        crop.ifPresent(c -> known.checkMethod(flaws, path + "/method", c, planting.method()));
    }

    private void sameCrop(String path, KeptPlanting planting, String crop, String entry, String rests) {
        if (!planting.crop().equals(crop)) {
            flaws.add(
                    path + "/crop",
                    entry + " is of " + Words.quoted(crop) + ", but here stands " + Words.quoted(planting.crop())
                            + ". They must agree.",
                    path + "/pool",
                    path + "/standing",
                    rests + "/crop");
        }
    }

    private void noEntry(String path, String list, int entry, int size) {
        flaws.add(
                path,
                "There is no entry " + entry + " in the season's " + Words.quoted(list) + ", which has "
                        + Words.count(size, "entry", "entries") + ". Mend the number; it counts from 1.",
                "/" + list);
    }
}
