package bedwright.log;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one note says (season model, section 9). */
public sealed interface Note {

    /** A note of one planting. */
    sealed interface OfPlanting extends Note {
        /** The planting's number in the plan. */
        int planting();
    }

    /** A stage seen that day. */
    record Seen(int planting, Stage stage) implements OfPlanting {}

    /** A stand counted: what still stands, out of all plants of the planting. */
    record Counted(int planting, Amount stands) implements OfPlanting {}

    /** Plants lost, as a number or as a share of those that stood. */
    record Lost(int planting, Amount lost, Cause cause) implements OfPlanting {}

    /** Stems cut; {@code left} is how many more were ready, 0 if all was taken, null if nobody said. */
    record Cut(int planting, int stems, @Nullable Integer left) implements OfPlanting {}

    /** What was planned for another day was done, or is to be done, on this one. */
    record Moved(int planting, LocalDate to) implements OfPlanting {}

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

    /** An earlier note, by its number, no longer counts. */
    record TakenBack(int number) implements Note {}

    /** Free words. */
    record Said(String words) implements Note {}

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
