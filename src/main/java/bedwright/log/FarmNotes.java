package bedwright.log;

import bedwright.log.Line.NotUnderstood;
import bedwright.season.Compass;
import bedwright.season.Season;
import bedwright.season.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads notes of what is not a planting: weather, orders, beds, hands and stock. Figures are in the season file's units. */
final class FarmNotes {
    /** The words that such notes begin with. */
    static final List<String> WORDS = List.of(
            "weather",
            "order-new",
            "order-changed",
            "order-gone",
            "order-asked",
            "bed-gone",
            "helper-gone",
            "stock-gone");

    private static final Pattern BOUQUETS = Pattern.compile("(\\d{1,5}) bouquets?(?: of (.+))?");
    private static final double FULL_TURN = 360;

    private final Season season;
    private final Line line;

    FarmNotes(Season season, Line line) {
        this.season = season;
        this.line = line;
    }

    /** @param first its first word, one of {@link #WORDS}, which was taken already */
    Note read(String first) throws NotUnderstood {
        return switch (first) {
            case "weather" -> weather();
            case "order-new" -> ordered(Note.How.NEW);
            case "order-changed" -> ordered(Note.How.CHANGED);
            case "order-asked" -> ordered(Note.How.ASKED);
            case "order-gone" -> orderGone();
            case "bed-gone" -> new Note.BedGone(line.upTo("for", "the bed's name"), time());
            case "helper-gone" -> helperGone();
            case "stock-gone" -> stockGone();
            default -> throw new IllegalArgumentException(first);
        };
    }

    private Note weather() throws NotUnderstood {
        Double least = null;
        Double most = null;
        Double gust = null;
        double from = 0;
        if (line.takes("min")) {
            Unit unit = season.units().temperature();
            least = metric(unit, "the least temperature in " + unit.symbol());
            line.expect("max");
            most = metric(unit, "the greatest temperature in " + unit.symbol());
        }
        if (least == null || !line.isOver()) {
            String expected = "min and max with a temperature each, gust with a speed and a side, or both";
            if (!line.takes("gust")) {
                line.next(expected);
                line.back();
                throw line.unknown(expected, List.of("min", "gust"));
            }
            Unit unit = season.units().speed();
            gust = metric(unit, "the strongest gust in " + unit.symbol());
            from = side();
        }
        return new Note.Weather(least, most, gust, from);
    }

    private double side() throws NotUnderstood {
        String expected = "the side from which it blew: " + String.join(", ", Compass.names()) + ", or degrees";
        OptionalDouble named = Compass.degrees(line.next(expected));
        if (named.isPresent()) {
            return named.getAsDouble();
        }
        line.back();
        if (!Character.isDigit(String.valueOf(line.peek()).charAt(0))) {
            throw line.unknown(expected, Compass.names());
        }
        double degrees = line.figure(expected).doubleValue();
        if (degrees > FULL_TURN) {
            line.back();
            throw line.unknown(expected, List.of());
        }
        return degrees;
    }

    private double metric(Unit unit, String expected) throws NotUnderstood {
        return unit.metric(line.figure(expected));
    }

    private Period time() throws NotUnderstood {
        int from = line.place();
        String said = line.rest("a day, or the first day, to and the last");
        return period(from, said);
    }

    private Period period(int from, String said) throws NotUnderstood {
        int now = line.place();
        line.backTo(from);
        Period period = line.read(() -> Period.of(season, said));
        line.backTo(now);
        return period;
    }

    private Note ordered(Note.How how) throws NotUnderstood {
        LocalDate until = null;
        String name;
        if (how == Note.How.ASKED) {
            name = line.upTo("until", "whose order it is");
            until = line.day(season, "the last day on which it is held for them");
            line.expect("for");
        } else {
            name = line.upTo("for", "whose order it is");
        }
        int from = line.place();
        String said = line.rest("a day, a colon and the stems, like 12 Sep: 120 focal, 60 spike");
        int colon = said.indexOf(':');
        line.backTo(from);
        if (colon < 0) {
            throw line.fault(
                    "There is no colon behind the day in \"" + said + "\". Write it like: 12 Sep: 120 focal, 60 spike");
        }
        Period weeks = line.read(() -> Period.of(season, said.substring(0, colon)));
        String what = said.substring(colon + 1).strip();
        Matcher bouquets = BOUQUETS.matcher(what);
        if (bouquets.matches()) {
            line.rest("");
            return new Note.Ordered(
                    name, how, weeks, List.of(), Integer.parseInt(bouquets.group(1)), bouquets.group(2), until);
        }
        List<OrderLine> lines = line.read(() -> OrderLine.of(season, what, how == Note.How.CHANGED));
        line.rest("");
        return new Note.Ordered(name, how, weeks, lines, 0, null, until);
    }

    private Note orderGone() throws NotUnderstood {
        if (line.has("for")) {
            return new Note.OrderGone(line.upTo("for", "whose order it is"), time());
        }
        return new Note.OrderGone(line.rest("whose order it is"), null);
    }

    private Note helperGone() throws NotUnderstood {
        double hours = line.figure("hours a week").doubleValue();
        boolean isHired = line.takes("hired");
        if (!line.takes("hours") && !line.takes("hour")) {
            line.expect("hours");
        }
        double cutting = 0;
        if (!"for".equals(line.peek()) && !line.isOver()) {
            cutting = line.figure("for and the days, or how many hands fewer there are on cutting mornings")
                    .doubleValue();
            if (!line.takes("hand")) {
                line.expect("hands");
            }
        }
        line.expect("for");
        return new Note.HelperGone(hours, isHired, cutting, time());
    }

    private Note stockGone() throws NotUnderstood {
        BigDecimal amount = line.figure("how much is not there: cells of bench or trays, metres of net or cover");
        line.expect("of");
        int from = line.place();
        String name = line.upTo("for", "what it is: bench, trays, row cover or a net's name");
        boolean isCells = name.equals("bench") || name.equals("trays");
        Note note = new Note.StockGone(
                name, isCells ? amount.doubleValue() : season.units().length().metric(amount), time());
        if (amount.signum() < 0) {
            line.backTo(from);
            throw line.fault("Less than nothing can't be gone. Write how much is not there.");
        }
        return note;
    }
}
