package bedwright.file;

import bedwright.season.Crop;
import bedwright.season.Harvest;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Role;
import bedwright.season.Season;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Checks of kinds, crops, methods and the pool. */
final class CropCheck {
    private static final int DEEPEST_KIND = 5;
    /** The keys that a figure may speak of. */
    static final List<String> FIGURES = figures();

    private final Season season;
    private final Known known;
    private final Flaws flaws;

    CropCheck(Season season, Known known, Flaws flaws) {
        this.season = season;
        this.known = known;
        this.flaws = flaws;
    }

    private static List<String> figures() {
        Set<String> keys = new TreeSet<>();
        for (Class<? extends Record> type : List.of(
                Crop.class, Crop.Clock.class, Crop.Stand.class, Crop.Killing.class, Harvest.class, Method.class)) {
            keys.addAll(Layout.of(type).keys());
        }
        return List.copyOf(keys);
    }

    void run() {
        flaws.unlessDifferent("role", season.roles().stream().map(Role::name).toList(), i -> "/roles/" + i + "/name");
        for (int i = 0; i < season.roles().size(); i++) {
            Role role = season.roles().get(i);
            plainName("/roles/" + i + "/name", role.name());
            kinds("/roles/" + i + "/kinds", role.kinds(), 2);
        }
        flaws.unlessDifferent("crop", season.crops().stream().map(Crop::name).toList(), i -> "/crops/" + i + "/name");
        for (int i = 0; i < season.crops().size(); i++) {
            crop("/crops/" + i, season.crops().get(i));
        }
        for (int i = 0; i < season.pool().size(); i++) {
            Lots lots = season.pool().get(i);
            known.checkCrop(flaws, "/pool/" + i + "/crop", lots.crop());
        }
    }

    private void kinds(String path, List<Role.Kind> kinds, int depth) {
        if (depth > DEEPEST_KIND && !kinds.isEmpty()) {
            flaws.add(
                    path,
                    "Kinds stand within kinds more than " + DEEPEST_KIND
                            + " deep here, the role included. Take a level away.");
            return;
        }
        flaws.unlessDifferent("kind", kinds.stream().map(Role.Kind::name).toList(), i -> path + "/" + i + "/name");
        for (int i = 0; i < kinds.size(); i++) {
            plainName(path + "/" + i + "/name", kinds.get(i).name());
            kinds(path + "/" + i + "/kinds", kinds.get(i).kinds(), depth + 1);
        }
    }

    private void plainName(String path, String name) {
        if (name.contains("/")) {
            flaws.add(
                    path,
                    "The name " + Words.quoted(name) + " holds a slash, which stands between the names of a path. Write"
                            + " another sign in its place.");
        }
    }

    private void crop(String path, Crop crop) {
        if (crop.family() != null) {
            known.checkFamily(flaws, path + "/family", crop.family());
        }
        shares(path + "/kinds", crop.kinds());
        for (String pest : crop.appeal().keySet()) {
            known.checkPest(flaws.ofKeys(), Pointer.to(path + "/appeal", pest), pest);
        }
        clock(path + "/clock", crop.clock());
        if (crop.harvest() != null) {
            harvest(path + "/harvest", crop.harvest());
        }
        figureKeys(path + "/figures", crop.figures().keySet());
        flaws.unlessDifferent(
                "method", crop.methods().stream().map(Method::name).toList(), i -> path + "/methods/" + i + "/name");
        for (int i = 0; i < crop.methods().size(); i++) {
            method(path + "/methods/" + i, crop.methods().get(i), crop, path);
        }
    }

    private void shares(String path, List<Crop.KindShare> kinds) {
        for (int i = 0; i < kinds.size(); i++) {
            known.checkKind(flaws, path + "/" + i + "/kind", kinds.get(i).kind());
        }
        flaws.unlessWhole(
                path, "its kinds", kinds.stream().map(Crop.KindShare::share).toList());
    }

    private void figureKeys(String path, Set<String> keys) {
        for (String key : keys) {
            if (!FIGURES.contains(key)) {
                flaws.ofKeys()
                        .add(
                                Pointer.to(path, key),
                                "\"figures\" speaks of " + Words.quoted(key)
                                        + ", but crops and methods have no such key. Name the key whose figure it is, as in"
                                        + " \"firstCut\" or \"stems\"." + Words.didYouMean(key, FIGURES));
            }
        }
    }

    private String temperature(double metric) {
        return Words.measured(metric, season.units().temperature());
    }

    private String sum(double metric) {
        return Words.measured(metric, season.units().degreeDays());
    }

    private void clock(String path, Crop.Clock clock) {
        if (clock.upper() != null && clock.upper() <= clock.base()) {
            flaws.add(
                    path + "/upper",
                    "The upper threshold, " + temperature(clock.upper()) + ", is not above the base temperature, "
                            + temperature(clock.base()) + ". Raise it, or leave it out if there is none.",
                    path + "/base");
        }
        Double pinch = clock.pinch();
        if (pinch != null && pinch < clock.emergence()) {
            marks(path, "pinch", "the pinching stage", pinch, "emergence", "emergence", clock.emergence());
        }
        if (pinch != null && clock.firstCut() < pinch) {
            marks(path, "firstCut", "the first cut", clock.firstCut(), "pinch", "the pinching stage", pinch);
        }
        if (pinch == null && clock.firstCut() < clock.emergence()) {
            marks(path, "firstCut", "the first cut", clock.firstCut(), "emergence", "emergence", clock.emergence());
        }
        Crop.DayLengthAnswer answer = clock.dayLength();
        if (answer != null && answer.shortDay() >= answer.longDay()) {
            flaws.add(
                    path + "/dayLength/longDay",
                    "The longer day, " + Words.number(answer.longDay()) + " hours, is not longer than the shorter, "
                            + Words.number(answer.shortDay()) + " hours. Change one of them, or swap them.",
                    path + "/dayLength/shortDay");
        }
    }

    private void harvest(String path, Harvest harvest) {
        if (harvest.vase() != null) {
            days(path + "/vase", harvest.vase());
        }
        if (harvest.cold() != null) {
            days(path + "/cold/days", harvest.cold().days());
        }
    }

    private void days(String path, Harvest.Days days) {
        if (days.least() > days.most()) {
            flaws.add(
                    path + "/most",
                    "At most " + Words.count(days.most(), "day", "days") + " is fewer than at least " + days.least()
                            + ". Change one of them, or swap them.",
                    path + "/least");
        }
    }

    private void marks(String path, String key, String late, double lateSum, String before, String early, double sum) {
        flaws.add(
                path + "/" + key,
                "From sowing, " + late + " comes at " + sum(lateSum) + ", before " + early + " at " + sum(sum)
                        + ". All are counted from sowing: change one of them.",
                path + "/" + before,
                path + "/pinch");
    }

    private void method(String path, Method method, Crop crop, String cropPath) {
        flaws.unlessWhole(path + "/cutShares", "the cutting days", method.cutShares());
        if (method.kinds() != null) {
            shares(path + "/kinds", method.kinds());
        }
        figureKeys(path + "/figures", method.figures().keySet());
        if (method.pinched() && crop.clock().pinch() == null) {
            flaws.add(
                    path + "/pinched",
                    "This method is pinched, but the clock of " + Words.quoted(crop.name())
                            + " has no pinching stage. Add \"pinch\" to its \"clock\", or leave \"pinched\" out.",
                    cropPath + "/clock/pinch");
        }
        trays(path, method);
        Method.SeedTemperature seed = method.seedTemperature();
        if (seed != null && seed.coldest() != null && seed.warmest() != null && seed.coldest() > seed.warmest()) {
            flaws.add(
                    path + "/seedTemperature/warmest",
                    "The warmest temperature, " + temperature(seed.warmest()) + ", is below the coldest, "
                            + temperature(seed.coldest()) + ". Change one of them, or swap them.",
                    path + "/seedTemperature/coldest");
        }
        if (method.net() != null) {
            known.checkNet(flaws, path + "/net/net", method.net().net());
        }
        if (method.cover() != null && season.stock().cover() == null) {
            flaws.add(
                    path + "/cover",
                    "This method lies under row cover, but \"stock\" has no \"cover\". Add it there (of length 0, with a price,"
                            + " if it is still to be bought), or leave it out here.",
                    "/stock/cover");
        }
    }

    private void trays(String path, Method method) {
        if (method.start() == Method.Start.TRAY) {
            if (method.trayWeeks() == 0) {
                flaws.add(
                        path + "/trayWeeks",
                        "This method is raised in trays, but for 0 weeks. Add \"trayWeeks\", the weeks from sowing to"
                                + " planting out.",
                        path + "/start");
            } else if (method.hardeningWeeks() > method.trayWeeks()) {
                flaws.add(
                        path + "/hardeningWeeks",
                        "Hardening takes " + Words.count(method.hardeningWeeks(), "week", "weeks") + ", more than the "
                                + method.trayWeeks()
                                + " from sowing to planting out. It is the last part of them: write"
                                + " fewer, or more \"trayWeeks\".",
                        path + "/trayWeeks",
                        path + "/start");
            }
            return;
        }
        String start = Words.word(method.start());
        onlyForTrays(path, "trayWeeks", method.trayWeeks(), start);
        onlyForTrays(path, "hardeningWeeks", method.hardeningWeeks(), start);
        onlyForTrays(path, "holds", method.holds(), start);
    }

    private void onlyForTrays(String path, String key, int weeks, String start) {
        if (weeks > 0) {
            flaws.add(
                    path + "/" + key,
                    Words.quoted(key) + " is " + weeks
                            + ", but only what is raised in trays has such weeks, and this method's" + " \"start\" is "
                            + Words.quoted(start) + ". Leave the key out, or write \"tray\" as its start.",
                    path + "/start");
        }
    }
}
