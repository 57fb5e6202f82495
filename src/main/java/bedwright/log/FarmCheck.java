package bedwright.log;

import bedwright.season.Labour;
import bedwright.season.Nearest;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Recipe;
import bedwright.season.Season;
import bedwright.season.Stock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Whether notes of weather, orders, beds, hands and stock can be true together. */
final class FarmCheck {
    private static final double COLDEST = -60;
    private static final double WARMEST = 60;
    private static final double STRONGEST = 150;
    private static final int MOST_NAMED = 12;

    private final Season season;

    FarmCheck(Season season) {
        this.season = season;
    }

    /** What is wrong first with notes that count, if anything is. */
    Optional<String> trouble(List<Entry> inForce) {
        Map<LocalDate, Entry> weather = new HashMap<>();
        Map<String, Entry> asked = new HashMap<>();
        Set<String> orders = new TreeSet<>();
        season.outlets().stream().map(Outlet::name).forEach(orders::add);
        season.orders().stream().map(Order::name).forEach(orders::add);
        List<Entry> before = new ArrayList<>();
        OrderSums sums = new OrderSums(season);
        for (Entry entry : inForce) {
            String wrong = switch (entry.note()) {
                case Note.Weather day -> weather(entry, day, weather.putIfAbsent(entry.on(), entry));
                case Note.Ordered order -> {
                    String its = ordered(entry, order, orders, asked);
                    yield its != null ? its : sums.add(order).orElse(null);
                }
                case Note.OrderGone gone -> gone(gone, orders, asked);
                case Note.HelperGone helper -> helper(helper, before);
                case Note.StockGone stock -> stock(stock, before);
                default -> null;
            };
            if (wrong != null) {
                return Optional.of(wrong);
            }
            before.add(entry);
        }
        return Optional.empty();
    }

    /** What is wrong with a day's weather, by itself and beside that of others. */
    Optional<String> trouble(Entry entry, Note.Weather day, List<Entry> inForce) {
        Entry other = inForce.stream()
                .filter(one -> one != entry && one.on().equals(entry.on()) && one.note() instanceof Note.Weather)
                .findFirst()
                .orElse(null);
        return Optional.ofNullable(weather(entry, day, other));
    }

    private static @Nullable String weather(Entry entry, Note.Weather day, @Nullable Entry other) {
        if (other != null) {
            return "Note " + other.number() + " says already what the weather was on " + entry.on() + ". "
                    + Course.instead(other);
        }
        Double least = day.least();
        Double most = day.most();
        Double gust = day.gust();
        if (least != null && most != null && least > most) {
            return "The least temperature can't be above the greatest. Write min and the lower one first.";
        }
        if (least != null && most != null && (least < COLDEST || most > WARMEST)) {
            return "No such temperature was ever measured. Write min and max in the units of the season file.";
        }
        return gust != null && (gust < 1 || gust > STRONGEST)
                ? "No gust was ever measured so. Write its speed in the units of the season file."
                : null;
    }

    private @Nullable String ordered(Entry entry, Note.Ordered order, Set<String> orders, Map<String, Entry> asked) {
        String recipe = recipe(order);
        if (recipe != null) {
            return recipe;
        }
        Entry before = asked.get(order.name());
        switch (order.how()) {
            case NEW -> {
                if (!orders.add(order.name())) {
                    return "There is an order \"" + order.name() + "\" already. Write order-changed if it changes, or"
                            + " give this one a name of its own.";
                }
                asked.remove(order.name());
            }
            case ASKED -> {
                if (orders.contains(order.name())) {
                    return "There is an order \"" + order.name() + "\" already. Give what is asked for besides a name"
                            + " of its own.";
                }
                if (before != null) {
                    return "Note " + before.number() + " says already what \"" + order.name() + "\" asked for. "
                            + Course.instead(before);
                }
                LocalDate until = order.until();
                if (until != null
                        && (until.isBefore(entry.on())
                                || until.isAfter(order.weeks().to()))) {
                    return "What is asked for is held from the day of the note, " + entry.on() + ", to that of the"
                            + " order, " + order.weeks().to() + ", at the most. Write a day between them, not " + until
                            + ".";
                }
                asked.put(order.name(), entry);
            }
            case CHANGED -> {
                return known(order.name(), orders);
            }
        }
        return null;
    }

    private @Nullable String recipe(Note.Ordered order) {
        if (order.bouquets() == 0) {
            return order.lines().isEmpty() ? "No bouquets are no order. Write order-gone and its name." : null;
        }
        List<String> recipes = season.recipes().stream().map(Recipe::name).toList();
        String recipe = order.recipe();
        boolean hasOne = season.orders().stream().anyMatch(one -> one.name().equals(order.name()));
        if (recipe == null) {
            return order.how() == Note.How.CHANGED && hasOne
                    ? null
                    : "The bouquets need a recipe. Write of and its name behind them, one of: "
                            + String.join(", ", recipes) + ".";
        }
        return recipes.contains(recipe)
                ? null
                : "There is no recipe \"" + recipe + "\"."
                        + Nearest.of(recipe, recipes)
                                .map(near -> " Did you mean \"" + near + "\"?")
                                .orElse(" Write one of: " + String.join(", ", recipes) + ".");
    }

    private static @Nullable String known(String name, Set<String> orders) {
        return orders.contains(name)
                ? null
                : "There is no order \"" + name + "\"."
                        + Nearest.of(name, orders)
                                .map(near -> " Did you mean \"" + near + "\"?")
                                .orElse(orders.isEmpty() ? "" : " Write one of: " + someOf(orders) + ".");
    }

    private static String someOf(Set<String> names) {
        List<String> some = names.stream().limit(MOST_NAMED).toList();
        return String.join("; ", some) + (names.size() > some.size() ? "; or another name of the season file" : "");
    }

    private static @Nullable String gone(Note.OrderGone gone, Set<String> orders, Map<String, Entry> asked) {
        if (asked.containsKey(gone.name()) && gone.weeks() == null) {
            asked.remove(gone.name());
            return null;
        }
        String unknown = known(gone.name(), orders);
        if (unknown == null && gone.weeks() == null) {
            orders.remove(gone.name());
        }
        return unknown;
    }

    private @Nullable String helper(Note.HelperGone helper, List<Entry> before) {
        List<Labour.Hours> hours =
                helper.isHired() ? season.labour().hired() : season.labour().own();
        String whose = helper.isHired() ? "hired" : "own";
        if (hours.isEmpty()) {
            return "The season file sets no limit to " + whose + " hours, so fewer of them change nothing. Write it in"
                    + " words instead: say and the words.";
        }
        if (helper.cutting() > 0 && season.labour().cutting().isEmpty()) {
            return "The season file says nothing of hands on cutting mornings. Leave them out.";
        }
        double others = sum(
                before,
                note -> note instanceof Note.HelperGone other
                                && other.isHired() == helper.isHired()
                                && other.time().meets(helper.time())
                        ? other.hours()
                        : 0);
        for (int w = season.weekOf(helper.time().from());
                w <= season.weekOf(helper.time().to());
                w++) {
            double there = Labour.at(hours, season.weekStart(w)) - others;
            if (helper.hours() > there) {
                return "In the week of " + season.weekStart(w) + " there are " + plain(there) + " " + whose
                        + " hours, so " + plain(helper.hours()) + " can't be gone. Write a number up to " + plain(there)
                        + ".";
            }
        }
        return null;
    }

    private @Nullable String stock(Note.StockGone gone, List<Entry> before) {
        Stock stock = season.stock();
        Map<String, Double> owned = new HashMap<>();
        owned.put("bench", (double) stock.bench());
        Stock.Trays trays = stock.trays();
        if (trays != null) {
            owned.put("trays", (double) trays.cells());
        }
        stock.nets().forEach(net -> owned.put(net.name(), net.metres()));
        Stock.Cover cover = stock.cover();
        if (cover != null) {
            owned.put("row cover", cover.metres());
        }
        Double all = owned.get(gone.stock());
        if (all == null) {
            return "There is no stock \"" + gone.stock() + "\" that could be short."
                    + Nearest.of(gone.stock(), owned.keySet())
                            .map(near -> " Did you mean \"" + near + "\"?")
                            .orElse(" Write one of: " + String.join(", ", new TreeSet<>(owned.keySet())) + ".");
        }
        double others = sum(
                before,
                note -> note instanceof Note.StockGone other
                                && other.stock().equals(gone.stock())
                                && other.time().meets(gone.time())
                        ? other.amount()
                        : 0);
        boolean isCells = gone.stock().equals("bench") || gone.stock().equals("trays");
        double there = all - others;
        return gone.amount() > there + 1e-9
                ? "Of " + gone.stock() + " there " + (isCells ? "are " : "is ") + told(isCells, there)
                        + " then, so no more than that can be gone. Write a number up to " + told(isCells, there) + "."
                : null;
    }

    private String told(boolean isCells, double amount) {
        return plain(isCells ? amount : season.units().length().of(amount));
    }

    private static double sum(List<Entry> before, ToDoubleFunction<Note> of) {
        return before.stream().map(Entry::note).mapToDouble(of).sum();
    }

    private static String plain(double figure) {
        return Understood.plain(figure);
    }
}
