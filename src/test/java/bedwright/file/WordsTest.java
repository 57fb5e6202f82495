package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How values are written in messages and files. */
class WordsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, -0.0",
        "2, 2",
        "-12.50, -12.5",
        "100, 100",
        "1e-7, 0.0000001",
        "9.5e-8, 9.5E-8",
        "1e16, 10000000000000000",
        "1e17, 1.0E17"
    })
    void aNumberIsWrittenOutWithinUsualSizes(double value, String written) {
        assertThat(Words.number(value)).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsNotWritten(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Words.number(value))
                .withMessage("A file cannot hold the number " + value);
    }

    /** As long as it takes no more than sixty digits. */
    @Test
    void aDecimalFigureIsWrittenOutUnlessItIsAbsurdlyLong() {
        assertThat(Words.number(new BigDecimal("23.6200"))).isEqualTo("23.62");
        assertThat(Words.number(new BigDecimal("1E+59"))).isEqualTo("1" + "0".repeat(59));
        assertThat(Words.number(new BigDecimal("1E+60"))).isEqualTo("1E+60");
    }

    @Test
    void aTextOfSixtyLettersIsToldWholeAndOneMoreIsCut() {
        assertThat(Words.shortened("é".repeat(60))).isEqualTo("é".repeat(60));
        assertThat(Words.shortened("é".repeat(61))).isEqualTo("é".repeat(60) + "…");
    }

    @ParameterizedTest
    @CsvSource({"'', ''", "bed, Bed", "élan, Élan", "2 beds, 2 beds"})
    void aSentenceBeginsWithACapital(String text, String sentence) {
        assertThat(Words.sentence(text)).isEqualTo(sentence);
    }

    @Test
    void wordsAreJoinedAsInASentence() {
        assertThat(Words.and(List.of())).isEmpty();
        assertThat(Words.and(List.of("a"))).isEqualTo("\"a\"");
        assertThat(Words.and(List.of("a", "b"))).isEqualTo("\"a\" and \"b\"");
        assertThat(Words.oneOf(List.of("a", "b", "c"))).isEqualTo("\"a\", \"b\" or \"c\"");
    }

    @Test
    void ofMoreThanTwelveWordsTheRestIsCounted() {
        List<String> letters = IntStream.range(0, 14)
                .mapToObj(i -> String.valueOf((char) ('a' + i)))
                .toList();

        assertThat(Words.and(Collections.nCopies(12, "x"))).endsWith("\"x\" and \"x\"");
        assertThat(Words.oneOf(letters)).startsWith("\"a\", \"b\",").endsWith("\"k\", \"l\" and 2 more");
    }
}
