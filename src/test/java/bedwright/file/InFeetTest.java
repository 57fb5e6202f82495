package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bedwright.season.Answers;
import bedwright.season.Crop;
import bedwright.season.Season;
import bedwright.season.Units;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files written in feet, inches, °F and miles an hour. */
class InFeetTest {
    private static final String FEET = text("units/feet.json");

    private static String text(String resource) {
        return new String(Resources.bytes(resource), StandardCharsets.UTF_8);
    }

    private static Season parse(String text) {
        return SeasonFile.parse("feet.json", text.getBytes(StandardCharsets.UTF_8));
    }

    /** The two files were written by hand, one from the other: 1 ft is 0.3048 m, 1 °F is 5/9 °C, 1 mph is 0.44704 m/s. */
    @Test
    void aSeasonInFeetIsTheSeasonInMetres() {
        Season feet = Resources.season("units/feet.json");

        assertThat(feet.units()).isEqualTo(Units.FEET);
        assertThat(feet.with(Units.METRES)).isEqualTo(Resources.season("units/metres.json"));
    }

    /** So that none is read as metres by oversight. */
    @Test
    void theTwoFilesHoldEveryFigureThatFeetChange() {
        Set<String> changed = new LinkedHashSet<>();
        collect(Season.class, new LinkedHashSet<>(), changed);

        for (String key : changed) {
            assertThat(FEET)
                    .as("a season file in feet with a figure for every key")
                    .contains("\"" + key + "\"");
        }
    }

    private static void collect(Class<? extends Record> type, Set<Class<?>> seen, Set<String> changed) {
        if (seen.add(type)) {
            for (Layout.Part part : Layout.of(type, Units.FEET).parts()) {
                collect(part.key(), part.shape(), seen, changed);
            }
        }
    }

    private static void collect(String key, Shape shape, Set<Class<?>> seen, Set<String> changed) {
        switch (shape) {
            case Shape.Decimal decimal when !decimal.unit().isPlain() -> changed.add(key);
            case Shape.Group group -> collect(group.type(), seen, changed);
            case Shape.Many many -> collect(key, many.each(), seen, changed);
            case Shape.Named named -> collect(key, named.each(), seen, changed);
            default -> {}
        }
    }

    /** Whoever adds a figure in another unit has to say how it is written in feet. */
    @Test
    void unitsThatFeetDoNotChangeAreThese() {
        Set<String> plain = new LinkedHashSet<>();
        for (Class<? extends Record> type : List.of(Season.class, Answers.class)) {
            plainUnits(type, new LinkedHashSet<>(), plain);
        }

        assertThat(plain)
                .containsExactlyInAnyOrder(
                        "",
                        "weeks",
                        "degrees",
                        "gusts/week",
                        "hours",
                        "days",
                        "money",
                        "stems",
                        "plants",
                        "cells",
                        "bouquets",
                        "min",
                        "years");
    }

    private static void plainUnits(Class<? extends Record> type, Set<Class<?>> seen, Set<String> plain) {
        if (seen.add(type)) {
            for (Layout.Part part : Layout.of(type, Units.FEET).parts()) {
                plainUnits(part, part.shape(), seen, plain);
            }
        }
    }

    private static void plainUnits(Layout.Part part, Shape shape, Set<Class<?>> seen, Set<String> plain) {
        switch (shape) {
            case Shape.Whole whole -> plain.add(part.fact().unit());
            case Shape.Decimal decimal
            when decimal.unit().isPlain() -> plain.add(decimal.unit().symbol());
            case Shape.Group group -> plainUnits(group.type(), seen, plain);
            case Shape.Many many -> plainUnits(part, many.each(), seen, plain);
            case Shape.Named named -> plainUnits(part, named.each(), seen, plain);
            default -> {}
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-bed", "tray-and-bed", "from-the-book", "farmers-problem", "demo-farm"})
    void aSeasonConvertedIntoFeetComesBackAsItWas(String problem) {
        Season metres = SeasonFile.read(Path.of("problems", problem + ".json"));
        byte[] bytes = SeasonFile.bytes(metres.with(Units.FEET));

        Season back = SeasonFile.parse("converted", bytes);

        assertThat(back.units()).isEqualTo(Units.FEET);
        assertThat(back.with(Units.METRES)).isEqualTo(metres);
    }

    @Test
    void aBedThatIsTooFullIsToldInFeet() {
        Season metres = SeasonFile.read(Path.of("problems", "demo-farm.json"));
        String feet = new String(SeasonFile.bytes(metres.with(Units.FEET)), StandardCharsets.UTF_8);
        String tooMany = feet.replaceFirst("(\"Peonies\"(?s:.*?)\"plants\": )60", "$16000");

        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> parse(tooMany))
                .satisfies(e -> assertThat(e.faults())
                        .singleElement()
                        .extracting(Fault::message)
                        .asString()
                        .contains("When the season begins ", " ft of this one stand in \"Meadow4\"")
                        .doesNotContain(" m of"));
    }

    @Test
    void whatIsWrittenIsAsShortAsWhatWasRead() {
        String written = new String(SeasonFile.bytes(parse(FEET)), StandardCharsets.UTF_8);

        assertThat(written)
                .contains("\"units\": \"feet\"")
                .containsPattern("\"spacing\": 9,")
                .containsPattern("\"feet\": 30,")
                .containsPattern("\"firstCut\": 1080")
                .containsPattern("\"grown\": 30.2")
                .containsPattern("\"mode\": 40,")
                .containsPattern("\"minutes\": 0.381")
                .doesNotContain("metres");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "length": 40          | "length": 7000       | "length" is 7000, but it must be between 1.64 and 6562 ft
            "spacing": 9          | "spacing": 500       | "spacing" is 500, but it must be between 0.1968 and 393.8 in
            "mode": 40            | "mode": 300          | "mode" is 300, but it must be between 2.236 and 201.4 mph
            "base": 50            | "base": 90           | "base" is 90, but it must be between 14 and 77 °F
            "firstCut": 1080      | "firstCut": 40000    | must be above 0 and at most 36000 °F·d
            "warmth": 5.4         | "warmth": 40         | must be between 0 and 36 °F
            "springDaysPerDegree": 3 | "springDaysPerDegree": 30 | must be between 0 and 16.67 days/°F
            "young": 32           | "young": null        | Leave the key out for the usual, 32.
            "feet": 30            | "metres": 30         | There is no key "metres"
            "base": 50, "upper": 95 | "base": 50, "upper": 41 | The upper threshold, 41 °F, is not above the base temperature, 50 °F
            "pinch": 360          | "pinch": 1260        | the first cut comes at 1080 °F·d, before the pinching stage at 1260 °F·d
            "coldest": 59, "warmest": 95 | "coldest": 95, "warmest": 59 | The warmest temperature, 59 °F, is below the coldest, 95 °F
            [23, 23, 32           | [23, 23, 68          | the mean minimum, 68 °F, is above the mean maximum, 50 °F
            """)
    void faultsAreToldInTheFilesOwnUnits(String before, String after, String told) {
        assertThat(FEET).contains(before);

        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> parse(FEET.replace(before, after)))
                .satisfies(faulty -> assertThat(faulty.faults())
                        .anySatisfy(fault -> assertThat(fault.message()).contains(told)));
    }

    @Test
    void remarksAreMadeInTheFilesOwnUnits() {
        byte[] large = FEET.replace("\"plants\": 40", "\"plants\": 400").getBytes(StandardCharsets.UTF_8);

        assertThat(SeasonFile.check("feet.json", large).remarks())
                .anySatisfy(remark ->
                        assertThat(remark.message()).contains("at least 75 ft of bed, but the longest bed has 40 ft"));
    }

    /** Otherwise one mistyped word would put every figure out of its range. */
    @Test
    void ofAMistypedUnitOnlyTheWordIsAtFault() {
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> parse(FEET.replace("\"feet\",", "\"fete\",")))
                .satisfies(faulty -> assertThat(faulty.faults())
                        .singleElement()
                        .satisfies(fault -> assertThat(fault.message()).contains("Did you mean \"feet\"?")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e-999999999", "1E+9999", "0.00000000000000000000000000000000000000000000000000000001"})
    void absurdFiguresAreRefusedOrTakenForNothing(String figure) {
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> parse(FEET.replace("\"spacing\": 9", "\"spacing\": " + figure)))
                .satisfies(faulty -> assertThat(faulty.faults())
                        .singleElement()
                        .satisfies(fault -> assertThat(fault.path()).isEqualTo("/crops/0/methods/0/spacing")));
    }

    @Test
    void aCropOfTheBookIsTheSameInFeetAndWhatChangesItIsInFeet() {
        String metres = text("book/own.json");

        Season feet = parse(metres.replace("\"starts\"", "\"units\": \"feet\", \"starts\""));

        Crop dill = BookFigures.find(CropBookFile.ours(), "dill").orElseThrow();
        assertThat(feet.crops().get(1).clock()).isEqualTo(dill.clock());
        assertThat(feet.crops().get(1).height()).isEqualTo(dill.height());
        assertThat(feet.crops().get(0).clock().firstCut()).isEqualTo(1000 * 5 / 9.0);
        assertThat(feet.crops().get(0).methods().getFirst().spacing())
                .isEqualTo(parse(metres).crops().get(0).methods().getFirst().spacing());
    }
}
