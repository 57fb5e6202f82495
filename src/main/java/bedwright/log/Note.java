package bedwright.log;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one note says (season model, section 9). */
public sealed interface Note {

    /** Whether it says when, where or how much of something was done, or that it was not done. */
    default boolean isOfHow() {
        return this instanceof Moved
                || this instanceof InBed
                || this instanceof OfPlants
                || this instanceof NotDone
                || this instanceof WeekDone;
    }

    /** A note of one planting. */
    sealed interface OfPlanting extends Note {
        /** The planting's number in the plan. */
        int planting();
    }

    /** A stage seen that day. */
    record Seen(int planting, Stage stage) implements OfPlanting {}

    /** Up that day, and how much of what was sown came up: of the plants' places, or of the cells of what is in trays. */
    record CameUp(int planting, Amount share) implements OfPlanting {}

    /** A stand counted: what still stands, out of all plants of the planting. */
    record Counted(int planting, Amount stands) implements OfPlanting {}

    /** Plants lost, as a number or as a share of those that stood. */
    record Lost(int planting, Amount lost, Cause cause) implements OfPlanting {}

    /** Stems cut; {@code left} is how many more were ready, 0 if all was taken, null if nobody said. */
    record Cut(int planting, int stems, @Nullable Integer left) implements OfPlanting {}

    /** What was planned for another day was done, or is to be done, on this one. */
    record Moved(int planting, LocalDate to) implements OfPlanting {}

    /** It is, or is to be, in another bed. */
    record InBed(int planting, String bed) implements OfPlanting {}

    /** It is, or is to be, of so many plants. */
    record OfPlants(int planting, int plants) implements OfPlanting {}

    /** Never sown or set. */
    record NotDone(int planting) implements OfPlanting {}

    /** Pulled: it keeps its bed no longer. */
    record Pulled(int planting) implements OfPlanting {}

    /** A week's work was done but for some plantings. */
    record WeekDone(LocalDate week, List<Integer> except) implements Note {
        public WeekDone {
            except = List.copyOf(except);
        }
    }

    /**
     * A day's weather.
     *
     * @param least and {@code most}, °C, or both null if nobody said
     * @param gust its strongest gust, m/s, or null if nobody said
     * @param from the side from which that blew, degrees clockwise from north
     */
    record Weather(
            @Nullable Double least,
            @Nullable Double most,
            @Nullable Double gust,
            double from) implements Note {}

    /**
     * An order that is new, changed in some weeks, or asked for.
     *
     * @param name by which it is known
     * @param how what of it is new
     * @param weeks those of the weeks that hold one of these days
     * @param lines stems a week, empty if it is of bouquets
     * @param bouquets bouquets a week, or 0
     * @param recipe their recipe, or null if it is that of the order as it was
     * @param until last day on which what is asked for is held for them
     */
    record Ordered(
            String name,
            How how,
            Period weeks,
            List<OrderLine> lines,
            int bouquets,
            @Nullable String recipe,
            @Nullable LocalDate until)
            implements Note {
        public Ordered {
            lines = List.copyOf(lines);
        }
    }

    /** An order that is gone, in some weeks or, where none are said, from the day of the note on. */
    record OrderGone(String name, @Nullable Period weeks) implements Note {}

    /** A bed in which nothing can be planted for some weeks. */
    record BedGone(String bed, Period time) implements Note {}

    /**
     * Hands that are not there for some weeks.
     *
     * @param hours a week
     * @param isHired whether they are of those that can be hired, else one's own
     * @param cutting hands fewer on cutting mornings
     */
    record HelperGone(double hours, boolean isHired, double cutting, Period time) implements Note {}

    /**
     * Some of a stock that is not there for some weeks.
     *
     * @param stock bench, trays, row cover or a net's name
     * @param amount cells or metres
     */
    record StockGone(String stock, double amount, Period time) implements Note {}

    /** An earlier note, by its number, no longer counts. */
    record TakenBack(int number) implements Note {}

    /** Free words. */
    record Said(String words) implements Note {}

    /** What of an order is new. */
    enum How {
        NEW("order-new"),
        CHANGED("order-changed"),
        ASKED("order-asked");

        private final String word;

        How(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Stages that can be seen, in the order in which they come. */
    enum Stage {
        UP("up", "is up"),
        PINCH("pinch-stage", "is ready to be pinched"),
        COLOUR("colour", "shows colour"),
        FIRST_STEM("first-stem", "gave its first stem");

        private final String word;
        private final String sentence;

        Stage(String word, String sentence) {
            this.word = word;
            this.sentence = sentence;
        }

        String word() {
            return word;
        }

        String sentence() {
            return sentence;
        }
    }

    /** Why plants were lost. */
    enum Cause {
        WIND,
        FROST,
        PEST,
        DISEASE,
        OTHER
    }
}
