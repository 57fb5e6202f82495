package bedwright.log;

import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Recipe;
import bedwright.season.Season;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Orders so large that a plan with them could not be counted exactly: a season file has its own such limits. */
final class OrderSums {
    /** In a week, of one order: with what a season file may ask for there is room for so many. */
    static final int MOST_STEMS = 1_000_000;
    /** Of all the money that is counted, what orders noted may come to. A tenth more than the file may is still exact. */
    private static final double SHARE = 0.1;
    /** A stem brings its price; one that is missing costs three times that. */
    private static final int PRICES = 4;

    private final Season season;
    private double money;

    OrderSums(Season season) {
        this.season = season;
    }

    /** What is too much with an order, on top of those before it, if anything is. */
    Optional<String> add(Note.Ordered order) {
        List<Recipe.Line> recipe = recipe(order);
        double stems = order.bouquets()
                        * recipe.stream().mapToDouble(Recipe.Line::stems).sum()
                + order.lines().stream().mapToDouble(OrderLine::stems).sum();
        if (stems > MOST_STEMS) {
            return Optional.of(
                    "Order \"" + order.name() + "\" comes to " + Math.round(stems) + " stems a week; no more than "
                            + MOST_STEMS + " can be counted. Is a figure mistyped? Write fewer.");
        }
        int weeks = Math.max(
                1,
                season.weekOf(order.weeks().to()) - season.weekOf(order.weeks().from()) + 1);
        double dearest = dearest();
        double paid = order.bouquets()
                        * recipe.stream()
                                .mapToDouble(line -> line.stems() * line.price())
                                .sum()
                + order.lines().stream()
                        .mapToDouble(line -> line.stems() * (line.price() == null ? dearest : line.price()))
                        .sum();
        money += PRICES * weeks * paid;
        double most = SHARE * season.currency().mostCounted();
        return money > most
                ? Optional.of("With order \"" + order.name() + "\" what is noted as ordered could come to "
                        + Math.round(money) + " " + season.currency().sign() + "; no more than " + Math.round(most)
                        + " can be counted. Is a price or an amount mistyped? Write it as it is meant, or take back"
                        + " orders that are over.")
                : Optional.empty();
    }

    private List<Recipe.Line> recipe(Note.Ordered order) {
        String name = order.recipe();
        String its = name != null
                ? name
                : season.orders().stream()
                        .filter(one -> one.name().equals(order.name()))
                        .map(Order::recipe)
                        .findFirst()
                        .orElse("");
        return season.recipes().stream()
                .filter(one -> one.name().equals(its))
                .findFirst()
                .map(Recipe::lines)
                .orElse(List.of());
    }

    /** What anybody pays for a stem at most. */
    private double dearest() {
        DoubleStream outlets = season.outlets().stream().mapToDouble(Outlet::price);
        Stream<Recipe.Line> lines = season.recipes().stream().flatMap(one -> one.lines().stream());
        return DoubleStream.concat(outlets, lines.mapToDouble(Recipe.Line::price))
                .max()
                .orElse(0);
    }
}
