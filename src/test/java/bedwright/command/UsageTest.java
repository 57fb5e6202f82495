package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of how the commands are used. */
class UsageTest {
    private static final String FIRST = "problems/first-bed.json";
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "expect", "crops", "recheck", "sheet", "schema"})
    void eachCommandExplainsItselfOnStandardOutput(String command) {
        Ran ran = Ran.of(command, "--help");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Usage: bedwright " + command).contains("  target/bedwright " + command);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "expect", "crops"})
    void theExampleOfTheHelpWorksAsItStands(String command) {
        String example = Ran.of(command, "--help")
                .out()
                .lines()
                .filter(line -> line.startsWith("  target/bedwright"))
                .findFirst()
                .orElseThrow();
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(example);
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }

        assertThat(Ran.of(words.subList(1, words.size()).toArray()).code()).isZero();
    }

    @Test
    void withNoCommandTheHelpIsShown() {
        assertThat(Ran.of().out()).contains("Exit codes");
    }

    @ParameterizedTest
    @CsvSource({
        "plan, Missing required parameter",
        "plan nothing else, Not understood: else",
        "plan " + FIRST + " --time soon, is not a number",
        "plan " + FIRST + " --time -1, --time takes",
        "plan " + FIRST + " --time NaN, --time takes",
        "plan " + FIRST + " --moves 0, --moves takes",
        "plan " + FIRST + " --moves 1.5, is not a whole number",
        "plan " + FIRST + " --seed -1, --seed takes",
        "plan " + FIRST + " --seasons 0, --seasons takes",
        "plan " + FIRST + " --caution wild, 'bold, steady, careful'",
        "plan " + FIRST + " --bound-for -1, --bound-for takes seconds",
        "plan " + FIRST + " --bound-steps 0, --bound-steps takes a number",
        "plan " + FIRST + " --bound-for 5 --bound-steps 5, keep one of them",
        "plan " + FIRST + " --moves 5 --bound-for 5, give --bound-steps",
        "plan " + FIRST + " --format yaml, is not \"text\" or \"json\"",
        "expect " + FIRST + " --crop dill, Missing required option",
        "expect " + FIRST + " --crop dill --week 2027-13-01, is not a day of the calendar",
        "expect " + FIRST + " --crop dill --week 2026-05-01, lies outside the season",
        "expect " + FIRST + " --crop rose --week 2027-05-10, 'there are: \"sunflower, once-cut\"'",
        "expect " + FIRST + " --crop dill --week 2027-05-10 --bed Moon, No bed is named",
        "expect " + FIRST + " --crop dill --week 2027-05-10 --method thrown, No method is named",
        "expect " + FIRST + " --crop dill --week 2027-05-10 --plants 0, --plants takes 1",
        "expect " + FIRST + " --crop dill --week 2027-05-10 --plants 99999999, --plants takes 1",
        "schema farm, 'is not \"season\", \"plan\", \"prices\", \"book\", \"answers\" or \"strategies\"'",
        "crops zinia, Did you mean \"zinnia\"?",
        "crops celosia, 'Did you mean \"celosia, crested\" or \"celosia, plume\"?'",
        "crops turnip, There is no crop",
        "dig, Not understood: dig"
    })
    void wrongUsageIsToldInWordsWithExitCode2(String typed, String told) {
        Ran ran = Ran.of((Object[]) typed.split(" "));

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(told).contains("--help").doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"season", "plan", "prices", "book"})
    void theSchemaIsPrintedAlone(String which) {
        Ran ran = Ran.of("schema", which);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("{").contains("\"$schema\"");
    }
}
