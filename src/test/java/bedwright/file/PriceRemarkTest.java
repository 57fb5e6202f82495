package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A crop that costs nothing is worth a look. */
class PriceRemarkTest {
    private static String text() throws IOException {
        return Files.readString(Path.of("problems/from-the-book.json"));
    }

    @Test
    void aCropWithoutAnyPriceIsRemarkedOn() throws IOException {
        String text = text();
        String without = text.replace("{\"book\": \"statice\", \"price\": 0.05,", "{\"book\": \"statice\",");
        assertThat(without).isNotEqualTo(text);

        assertThat(SeasonFile.check("book", without.getBytes(StandardCharsets.UTF_8))
                        .remarks())
                .singleElement()
                .satisfies(remark -> assertThat(remark.message()).contains("\"statice\" has no \"price\""));
    }

    @Test
    void cropsWithPricesAreNot() throws IOException {
        assertThat(SeasonFile.check("book", text().getBytes(StandardCharsets.UTF_8))
                        .remarks())
                .isEmpty();
    }
}
