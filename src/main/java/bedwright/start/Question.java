package bedwright.start;

import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One question.
 *
 * @param name a word for it
 * @param text what is asked
 * @param why why it is asked, and how an answer is written
 * @param usual the answer that is taken when nothing is typed, by what was answered before
 * @param taking makes values of the answers file of what was typed, by key; throws {@link BadAnswer}
 * @param isAsked whether it is asked, by what was answered before
 */
record Question(
        String name,
        String text,
        String why,
        Function<Map<String, Object>, String> usual,
        BiFunction<String, Map<String, Object>, Map<String, Object>> taking,
        Predicate<Map<String, Object>> isAsked) {

    Question(
            String name,
            String text,
            String why,
            Function<Map<String, Object>, String> usual,
            BiFunction<String, Map<String, Object>, Map<String, Object>> taking) {
        this(name, text, why, usual, taking, before -> true);
    }
}
