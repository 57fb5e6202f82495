package bedwright.log;

import bedwright.season.Compass;
import bedwright.season.Season;
import bedwright.season.Unit;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Notes of weather, orders, hands and stock as sentences. */
final class FarmWords {
    private FarmWords() {}

    static String said(Season season, Note.Weather day) {
        Double least = day.least();
        Double most = day.most();
        Double gust = day.gust();
        Unit warmth = season.units().temperature();
        String temperatures = least == null || most == null
                ? ""
                : "between " + figure(warmth, least) + " and " + figure(warmth, most) + " " + warmth.symbol();
        String wind = gust == null
                ? ""
                : "a gust of " + figure(season.units().speed(), gust) + " "
                        + season.units().speed().symbol() + " from the " + Compass.name(day.from());
        return "weather: " + temperatures + (temperatures.isEmpty() || wind.isEmpty() ? "" : ", ") + wind + ".";
    }

    private static String figure(Unit unit, double metric) {
        return Understood.plain(unit.of(metric));
    }

    static String said(Season season, Note.Ordered order) {
        String what = order.bouquets() > 0
                ? order.bouquets() + " bouquets" + (order.recipe() == null ? "" : " of " + order.recipe())
                : order.lines().stream()
                        .map(line -> line.stems() + " " + Wish.spoken(line.kind()) + price(season, line.price()))
                        .collect(Collectors.joining(", "));
        boolean isLong = season.weekOf(order.weeks().from())
                != season.weekOf(order.weeks().to());
        String when = (isLong ? "each week, " : "") + order.weeks().said();
        String name = "\"" + order.name() + "\"";
        return switch (order.how()) {
            case NEW -> "a new order, " + name + ", promised: " + when + ": " + what + ".";
            case CHANGED ->
                "the order " + name + " is now, in the weeks of "
                        + order.weeks().said() + ": " + what + ".";
            case ASKED ->
                name + " asked for, " + when + ": " + what + "; undecided, held for them up to " + order.until() + ".";
        };
    }

    private static String price(Season season, @Nullable Double price) {
        return price == null
                ? " at the price as it was"
                : " at " + season.currency().sign()
                        + String.format(Locale.ROOT, "%." + season.currency().digits() + "f", price);
    }

    static String said(Note.HelperGone helper) {
        return Understood.plain(helper.hours()) + (helper.isHired() ? " hired" : " own") + " hours a week fewer"
                + (helper.cutting() > 0
                        ? ", and " + Understood.plain(helper.cutting()) + (helper.cutting() == 1 ? " hand" : " hands")
                                + " fewer on cutting mornings"
                        : "")
                + ", " + helper.time().said() + ".";
    }

    static String said(Season season, Note.StockGone gone) {
        boolean isCells = gone.stock().equals("bench") || gone.stock().equals("trays");
        Unit length = season.units().length();
        return (isCells
                        ? Understood.plain(gone.amount()) + " cells"
                        : figure(length, gone.amount()) + " " + length.symbol())
                + " of " + gone.stock() + " not there, " + gone.time().said() + ".";
    }
}
