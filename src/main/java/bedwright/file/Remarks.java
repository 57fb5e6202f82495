package bedwright.file;

import bedwright.season.Crop;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Pest;
import bedwright.season.Recipe;
import bedwright.season.Role;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Unit;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Finds what in a season is no fault but will have no effect, or another than was probably meant. */
public final class Remarks {
    private final Season season;
    private final Known known;
    private final List<Remark> found = new ArrayList<>();

    private Remarks(Season season) {
        this.season = season;
        this.known = new Known(season);
    }

    /** All remarks on a season that has no fault. */
    public static List<Remark> of(Season season) {
        Remarks remarks = new Remarks(season);
        remarks.outlets();
        remarks.orders();
        remarks.crops();
        remarks.pool();
        remarks.takers();
        remarks.pests();
        return List.copyOf(remarks.found);
    }

    private void add(String path, String message) {
        found.add(new Remark(path, message));
    }

    private void outlets() {
        for (int i = 0; i < season.outlets().size(); i++) {
            Outlet outlet = season.outlets().get(i);
            if (outlet.promise() == null && outlet.price() <= cuttingCost(outlet.kind())) {
                add(
                        "/outlets/" + i + "/price",
                        Words.quoted(outlet.name()) + " pays " + Words.number(outlet.price())
                                + " a stem, no more than cutting one costs (" + money(cuttingCost(outlet.kind()))
                                + "), and nothing is promised: it will never get a stem.");
            }
        }
    }

    private void orders() {
        Set<String> ordered = new TreeSet<>();
        for (int i = 0; i < season.orders().size(); i++) {
            Order order = season.orders().get(i);
            ordered.add(order.recipe());
            Optional<Recipe> recipe = season.recipes().stream()
                    .filter(r -> r.name().equals(order.recipe()))
                    .findFirst();
            for (Recipe.Line line : recipe.map(Recipe::lines).orElse(List.of())) {
                double price = line.price() / (1 + order.spare());
                if (order.promise() == null && price <= cuttingCost(line.kind())) {
                    add(
                            "/orders/" + i,
                            Words.quoted(order.name()) + " pays " + money(price) + " for each stem of "
                                    + Words.quoted(line.kind()) + " asked for, no more than cutting one costs ("
                                    + money(cuttingCost(line.kind()))
                                    + "), and nothing is promised: it will never get one.");
                }
            }
        }
        for (int i = 0; i < season.recipes().size(); i++) {
            String recipe = season.recipes().get(i).name();
            if (!ordered.contains(recipe)) {
                add("/recipes/" + i, "Nobody orders the recipe " + Words.quoted(recipe) + ".");
            }
        }
    }

    /** What cutting a stem costs at the owner's rate, less the clearing saved; season model, section 7. */
    private double cuttingCost(String kind) {
        String name = kind.split("/", 2)[0];
        return season.roles().stream()
                .filter(r -> r.name().equals(name))
                .mapToDouble((Role r) ->
                        (r.cutting() - r.clearing()) / 100 * season.labour().ownRate() / 60)
                .findFirst()
                .orElse(0);
    }

    private String money(double amount) {
        double smallest = Math.pow(10, season.currency().digits() + 1.0);
        return Words.number(Math.round(amount * smallest) / smallest);
    }

    private void crops() {
        Set<String> pooled =
                new TreeSet<>(season.pool().stream().map(Lots::crop).toList());
        Set<String> used = new TreeSet<>(pooled);
        used.addAll(season.standing().stream().map(Standing::crop).toList());
        for (int i = 0; i < season.crops().size(); i++) {
            Crop crop = season.crops().get(i);
            if (!used.contains(crop.name())) {
                add(
                        "/crops/" + i,
                        Words.quoted(crop.name()) + " is neither among the plantings to choose from (\"pool\") nor"
                                + " \"standing\": it will not be planted.");
            }
            if (pooled.contains(crop.name())
                    && crop.price() == 0
                    && crop.methods().stream().allMatch(method -> method.price() == null)) {
                add(
                        "/crops/" + i,
                        Words.quoted(crop.name())
                                + " has no \"price\", and none of its methods has one: its seed, plugs or"
                                + " tubers cost nothing. The crop book has no prices either.");
            }
            for (int m = 0; m < crop.methods().size(); m++) {
                method("/crops/" + i + "/methods/" + m, crop, crop.methods().get(m), pooled.contains(crop.name()));
            }
        }
    }

    private void method(String path, Crop crop, Method method, boolean pooled) {
        String name = Words.quoted(method.name()) + " of " + Words.quoted(crop.name());
        if (pooled && !mayEverBeSown(method)) {
            add(path, "No week of the season starts within the sowing dates of " + name + ": it is never offered.");
        }
        if (pooled && method.start() == Method.Start.TRAY && season.stock().bench() == 0) {
            add(
                    path,
                    name
                            + " is raised in trays, but the bench holds no cells (\"stock\", \"bench\"): it can't be used.");
        }
        boolean grown = method.start() == Method.Start.SOWN || method.start() == Method.Start.SET;
        if (grown && (method.headStart() > 0 || method.check() > 0)) {
            add(
                    path,
                    name + " has a \"headStart\" or a \"check\", which only raised or bought plants have: they are not"
                            + " counted.");
        }
        if (!method.pinched() && method.pinchDelay() > 0) {
            add(path, name + " has a \"pinchDelay\" but is not \"pinched\": it is not counted.");
        }
    }

    private boolean mayEverBeSown(Method method) {
        MonthDay from = method.sowFrom() == null ? MonthDay.of(1, 1) : method.sowFrom();
        MonthDay to = method.sowTo() == null ? MonthDay.of(12, 31) : method.sowTo();
        for (int week = 0; week < season.weeks(); week++) {
            MonthDay day = MonthDay.from(season.weekStart(week));
            if (Days.forward(from, day) <= Days.forward(from, to)) {
                return true;
            }
        }
        return false;
    }

    private void pool() {
        double longest =
                season.beds().stream().mapToDouble(b -> b.length()).max().orElse(0);
        for (int i = 0; i < season.pool().size(); i++) {
            Lots lots = season.pool().get(i);
            double least = known.crop(lots.crop()).map(Crop::methods).orElse(List.of()).stream()
                    .mapToDouble(m -> m.metres(lots.plants()))
                    .min()
                    .orElse(0);
            if (least > longest + 0.0005) {
                add(
                        "/pool/" + i + "/plants",
                        "A lot of " + Words.quoted(lots.crop()) + " takes at least " + length(least)
                                + " of bed, but the longest bed has " + length(longest)
                                + ": it will not be planted. Make the lots smaller and more.");
            }
        }
    }

    private String length(double metres) {
        Unit unit = season.units().length();
        return Words.number(Math.round(unit.of(metres) * 10) / 10.0) + " " + unit.symbol();
    }

    /** Kinds that are grown and nobody takes, and kinds that are asked for and nothing gives. */
    private void takers() {
        Set<String> given = new TreeSet<>();
        for (Crop crop : season.crops()) {
            crop.kinds().forEach(k -> given.add(k.kind()));
            for (Method method : crop.methods()) {
                if (method.kinds() != null) {
                    method.kinds().forEach(k -> given.add(k.kind()));
                }
            }
        }
        for (Standing standing : season.standing()) {
            for (Standing.WrittenStems stems : standing.stems()) {
                if (stems.kind() != null) {
                    given.add(stems.kind());
                }
            }
        }
        Set<String> asked = new TreeSet<>();
        for (int i = 0; i < season.outlets().size(); i++) {
            String kind = season.outlets().get(i).kind();
            asked.add(kind);
            nobodyGives("/outlets/" + i + "/kind", kind, given);
        }
        for (int i = 0; i < season.recipes().size(); i++) {
            List<Recipe.Line> lines = season.recipes().get(i).lines();
            for (int l = 0; l < lines.size(); l++) {
                asked.add(lines.get(l).kind());
                nobodyGives(
                        "/recipes/" + i + "/lines/" + l + "/kind", lines.get(l).kind(), given);
            }
        }
        for (int i = 0; i < season.crops().size(); i++) {
            Crop crop = season.crops().get(i);
            for (int k = 0; k < crop.kinds().size(); k++) {
                String kind = crop.kinds().get(k).kind();
                if (asked.stream().noneMatch(taker -> isWithin(kind, taker))) {
                    add(
                            "/crops/" + i + "/kinds/" + k,
                            "No outlet and no recipe takes " + Words.quoted(kind) + ", which "
                                    + Words.quoted(crop.name()) + " gives.");
                }
            }
        }
    }

    private void nobodyGives(String path, String kind, Set<String> given) {
        if (given.stream().noneMatch(giver -> isWithin(giver, kind))) {
            add(path, "No crop gives stems of " + Words.quoted(kind) + ", which are asked for here.");
        }
    }

    private static boolean isWithin(String kind, String around) {
        return kind.equals(around) || kind.startsWith(around + "/");
    }

    private void pests() {
        for (int i = 0; i < season.pests().size(); i++) {
            Pest pest = season.pests().get(i);
            if (pest.pressure().isEmpty()) {
                add("/pests/" + i, "The pest " + Words.quoted(pest.name()) + " has no \"pressure\": it takes nothing.");
            } else if (season.crops().stream().noneMatch(c -> c.appeal().getOrDefault(pest.name(), 0.0) > 0)) {
                add(
                        "/pests/" + i,
                        "No crop has an \"appeal\" to the pest " + Words.quoted(pest.name()) + ": it takes nothing.");
            }
        }
    }
}
