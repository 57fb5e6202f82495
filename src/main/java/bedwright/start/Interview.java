package bedwright.start;

import bedwright.file.AnswersFile;
import bedwright.file.FaultyFile;
import bedwright.file.PlainJson;
import bedwright.season.Answers;
import bedwright.season.Units;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Asks the questions one after the other. An answer that is not understood is asked for again; {@code <} goes back to the
 * question before, {@code ?} tells why it is asked; nothing typed takes what stands in brackets.
 */
public final class Interview {
    /** Typed to go back. */
    public static final String BACK = "<";
    /** Typed to be told why. */
    public static final String WHY = "?";

    /** The same questions in the same order, in either units. */
    private final Map<Units, List<Question>> questions = new EnumMap<>(Units.class);

    private final Supplier<@Nullable String> typing;
    private final Consumer<String> saying;
    private final Map<String, Map<String, Object>> values = new LinkedHashMap<>();
    private final Map<String, String> typedBefore = new LinkedHashMap<>();

    /**
     * @param today from which the usual start is reckoned
     * @param stationTrouble what is wrong with a station's file, if anything is
     * @param typing the next line that is typed, or null at the end
     * @param saying takes what is said, with its ends of lines
     */
    public Interview(
            LocalDate today,
            Function<String, Optional<String>> stationTrouble,
            Supplier<@Nullable String> typing,
            Consumer<String> saying) {
        for (Units units : Units.values()) {
            questions.put(units, new Questions(today, stationTrouble).all(units));
        }
        this.typing = typing;
        this.saying = saying;
    }

    /** The answers, or nothing if the input ended before the last question. */
    public Optional<Answers> answers() {
        saying.accept(
                "Enter takes what stands in brackets, " + BACK + " goes back, " + WHY + " tells why it is asked.\n\n");
        Deque<Integer> asked = new ArrayDeque<>();
        int q = 0;
        while (true) {
            while (q < count() && !question(q).isAsked().test(before(q))) {
                values.remove(question(q).name());
                q++;
            }
            if (q == count()) {
                Optional<Answers> done = finished();
                if (done.isPresent()) {
                    return done;
                }
                q = asked.pop();
            }
            Step step = ask(question(q), before(q));
            switch (step) {
                case ENDED -> {
                    return Optional.empty();
                }
                case BACK -> q = asked.isEmpty() ? q : asked.pop();
                case ON -> {
                    asked.push(q);
                    q++;
                }
            }
        }
    }

    private int count() {
        return asked().size();
    }

    private Question question(int q) {
        return asked().get(q);
    }

    private List<Question> asked() {
        boolean feet = values.getOrDefault("units", Map.of()).containsValue("feet");
        return Objects.requireNonNull(questions.get(feet ? Units.FEET : Units.METRES));
    }

    private enum Step {
        ON,
        BACK,
        ENDED
    }

    /** What was answered before a question, by key of the answers file. */
    private Map<String, Object> before(int q) {
        Map<String, Object> all = new LinkedHashMap<>();
        for (int i = 0; i < q; i++) {
            all.putAll(values.getOrDefault(question(i).name(), Map.of()));
        }
        return all;
    }

    private Step ask(Question question, Map<String, Object> before) {
        String usual =
                typedBefore.getOrDefault(question.name(), question.usual().apply(before));
        while (true) {
            saying.accept(question.text() + "\n  [" + usual + "] ");
            String line = typing.get();
            if (line == null) {
                saying.accept("\n");
                return Step.ENDED;
            }
            String typed = line.strip();
            if (typed.equals(BACK)) {
                return Step.BACK;
            }
            if (typed.equals(WHY)) {
                saying.accept("  " + question.why() + "\n");
                continue;
            }
            String answer = typed.isEmpty() ? usual : typed;
            try {
                values.put(question.name(), question.taking().apply(answer, before));
                typedBefore.put(question.name(), answer);
                return Step.ON;
            } catch (BadAnswer bad) {
                saying.accept("  " + bad.getMessage() + "\n");
            }
        }
    }

    /** What all answers together make; nothing if they contradict one another, which is then said. */
    private Optional<Answers> finished() {
        byte[] bytes = PlainJson.text(before(count())).getBytes(StandardCharsets.UTF_8);
        try {
            return Optional.of(AnswersFile.parse("answers", bytes));
        } catch (FaultyFile faulty) {
            saying.accept("These answers do not go together; " + BACK + " goes back to mend them.\n");
            faulty.faults().forEach(fault -> saying.accept("  " + fault.message() + "\n"));
            return Optional.empty();
        }
    }
}
