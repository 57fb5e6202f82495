package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What to expect of a planting, as it is told. */
class ExpectTest {
    private static String dill(int plants) {
        Path season = Path.of("problems/first-bed.json");
        return Ran.of(
                        "expect",
                        season,
                        "--crop",
                        "dill",
                        "--bed",
                        "Open bed",
                        "--week",
                        "2027-05-17",
                        "--plants",
                        plants)
                .out();
    }

    /** Five rows, 18 cm apart in the row: 36 mm of bed a plant, of which a bed of 12 m has 333. */
    @Test
    void moreThanTheBedHoldsIsTold() {
        assertThat(dill(334))
                .contains("More than there is room for: the bed is 12 m long and holds 333 plants like these.");
    }

    @Test
    void whatFitsIsNotTold() {
        assertThat(dill(333)).doesNotContain("More than there is room for").contains("333 plants on");
    }
}
