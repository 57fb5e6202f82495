package bedwright.file;

import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Recipe;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Checks of outlets, recipes and orders. */
final class DemandCheck {
    private final Season season;
    private final Known known;
    private final Days days;
    private final Flaws flaws;

    DemandCheck(Season season, Known known, Days days, Flaws flaws) {
        this.season = season;
        this.known = known;
        this.days = days;
        this.flaws = flaws;
    }

    void run() {
        int outlets = season.outlets().size();
        List<String> names =
                new ArrayList<>(season.outlets().stream().map(Outlet::name).toList());
        names.addAll(season.orders().stream().map(Order::name).toList());
        flaws.unlessDifferent(
                "outlet or order",
                names,
                i -> i < outlets ? "/outlets/" + i + "/name" : "/orders/" + (i - outlets) + "/name");
        for (int i = 0; i < outlets; i++) {
            outlet("/outlets/" + i, season.outlets().get(i));
        }
        flaws.unlessDifferent(
                "recipe", season.recipes().stream().map(Recipe::name).toList(), i -> "/recipes/" + i + "/name");
        for (int i = 0; i < season.recipes().size(); i++) {
            List<Recipe.Line> lines = season.recipes().get(i).lines();
            for (int l = 0; l < lines.size(); l++) {
                known.checkKind(
                        flaws,
                        "/recipes/" + i + "/lines/" + l + "/kind",
                        lines.get(l).kind());
            }
        }
        for (int i = 0; i < season.orders().size(); i++) {
            order("/orders/" + i, season.orders().get(i));
        }
    }

    private void outlet(String path, Outlet outlet) {
        known.checkKind(flaws, path + "/kind", outlet.kind());
        for (int i = 0; i < outlet.asks().size(); i++) {
            Outlet.Ask ask = outlet.asks().get(i);
            days.weeks(path + "/asks/" + i, ask.from(), ask.to());
        }
        promise(path + "/promise", outlet.promise());
    }

    private void order(String path, Order order) {
        known.checkRecipe(flaws, path + "/recipe", order.recipe());
        for (int i = 0; i < order.asks().size(); i++) {
            Order.Ask ask = order.asks().get(i);
            days.weeks(path + "/asks/" + i, ask.from(), ask.to());
        }
        promise(path + "/promise", order.promise());
    }

    private void promise(String path, @Nullable Promise promise) {
        if (promise == null) {
            return;
        }
        List<String> said = new ArrayList<>();
        if (promise.must() != null) {
            said.add("must");
        }
        if (promise.buyIn() != null) {
            said.add("buyIn");
        }
        if (promise.shortage() != null) {
            said.add("shortage");
        }
        if (said.size() > 1) {
            flaws.add(
                    path,
                    "This promise names "
                            + String.join(
                                    " and ", said.stream().map(Words::quoted).toList())
                            + ", which exclude one another: a missing stem must be ours, or is bought in, or costs a price."
                            + " Keep one of them.");
        }
    }
}
