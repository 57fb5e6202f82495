package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Crop;
import bedwright.season.Job;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a lot may take at the most, against sums done by hand. */
class LotSizeTest {
    private static final Offset<Double> CLOSE = within(1e-9);

    /** A lot of a crop that is grown by one of its methods only. */
    private static LotSize size(Season season, String name, String method, int plants) {
        Crop crop = season.crops().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        Crop only = crop.with(
                crop.kinds(),
                crop.appeal(),
                crop.figures(),
                crop.methods().stream().filter(m -> m.name().equals(method)).toList());
        return LotSize.of(season, only, plants);
    }

    /** 15 plants in two rows 0.4 m apart; of each 8 stems, of which 0.8 can be sold. */
    @Test
    void bedNetAndStemsAreThoseOfItsPlants() {
        Season season = Edited.firstBed("\"net\": {\"net\": \"Net\"}", "\"net\": {\"net\": \"Net\", \"layers\": 2}")
                .season();

        LotSize size = size(season, "sunflower, branching", "sown, pinched, netted", 15);

        assertThat(size.metres()).isEqualTo(3, CLOSE);
        assertThat(size.netMetres()).isEqualTo(6, CLOSE);
        assertThat(size.cells()).isZero();
        assertThat(size.stems()).isEqualTo(96, CLOSE);
    }

    /** 45 plants of 9 in 10 cells: 50 cells. */
    @Test
    void traysHaveACellForEachPlantThatDoesNotComeUpToo() {
        LotSize size = size(Edited.firstBed().season(), "sunflower, branching", "tray, pinched, netted", 45);

        assertThat(size.cells()).isEqualTo(50, CLOSE);
    }

    /** 36 plugs at 0.35 of the crop, or at 0.5 of the method. */
    @Test
    void seedAndPlantsCostWhatTheMethodSaysOrElseTheCrop() {
        assertThat(size(Edited.firstBed().season(), "basil for foliage", "bought plugs, pinched", 36)
                        .money())
                .isEqualTo(12.6, CLOSE);
        assertThat(size(
                                Edited.firstBed("\"start\": \"plugs\"", "\"start\": \"plugs\", \"price\": 0.5")
                                        .season(),
                                "basil for foliage",
                                "bought plugs, pinched",
                                36)
                        .money())
                .isEqualTo(18, CLOSE);
    }

    /** 15 seeds at 0.1, and 3 m in two layers at 0.2 of wear, or 1.5 where all has to be bought besides. */
    @ParameterizedTest
    @CsvSource({"'', 2.7", "'\"buy\": 1.3, ', 10.5"})
    void aNetCostsItsWearAndWhatHasToBeBought(String buy, double money) {
        Season season = Edited.firstBed(
                        "\"net\": {\"net\": \"Net\"}",
                        "\"net\": {\"net\": \"Net\", \"layers\": 2}",
                        "\"metres\": 6,",
                        "\"metres\": 6, " + buy,
                        "\"strengthens\": 1.35}",
                        "\"strengthens\": 1.35}, {\"name\": \"Other net\", \"metres\": 5, \"wear\": 7}")
                .season();

        assertThat(size(season, "sunflower, branching", "sown, pinched, netted", 15)
                        .money())
                .isEqualTo(money, CLOSE);
    }

    /** 50 dill in five rows 0.18 m apart take 1.8 m, and their seed 0.5. */
    @ParameterizedTest
    @CsvSource({"'', '', 0.5", "'\"cover\": {}, ', '', 0.95", "'\"cover\": {}, ', '\"buy\": 0.75, ', 2.3"})
    void aCoverCostsItsWearAndWhatHasToBeBought(String use, String buy, double money) {
        Season season = Edited.firstBed(
                        "\"seedsAPlace\": 2,",
                        "\"seedsAPlace\": 2, " + use,
                        "\"bench\": 150,",
                        "\"bench\": 150, \"cover\": {\"metres\": 20, " + buy + "\"wear\": 0.25},")
                .season();

        assertThat(size(season, "dill", "sown", 50).money()).isEqualTo(money, CLOSE);
    }

    /** 45 sunflowers raised in 50 cells: seed of 0.08 a cell, and cells that may have to be bought at 0.3. */
    @ParameterizedTest
    @CsvSource({"tray, '', 4", "tray, ', \"buy\": 0.3', 19", "sown, ', \"buy\": 0.3', 3.6"})
    void traysCostWhatHasToBeBought(String method, String buy, double money) {
        Season season = Edited.firstBed("\"bench\": 150,", "\"bench\": 150, \"trays\": {\"cells\": 100" + buy + "},")
                .season();

        assertThat(size(season, "sunflower, once-cut", method, 45).money()).isEqualTo(money, CLOSE);
    }

    /**
     * Only one job takes time: 6 minutes to begin and end, and 12 a metre or a hundred. Sown, 16 branching sunflowers in
     * two rows 0.4 m apart take 3.2 m under a net of two layers and a cover, and are weeded three times; raised, 90 of
     * them take 18 m, 100 cells, and are weeded twice.
     */
    @ParameterizedTest
    @CsvSource({
        "prepare, sown, 16, 44.4",
        "clear, sown, 16, 44.4",
        "net-up, sown, 16, 88.8",
        "net-down, sown, 16, 88.8",
        "cover-on, sown, 16, 44.4",
        "cover-off, sown, 16, 44.4",
        "weed, sown, 16, 133.2",
        "pinch, sown, 16, 7.92",
        "fill-trays, sown, 16, 0",
        "fill-trays, tray, 90, 18",
        "cover-on, tray, 90, 0",
        "weed, tray, 90, 444"
    })
    void hoursAreThoseOfEachJobAsOftenAsItIsDone(String job, String start, int plants, double minutes) {
        String jobs = Arrays.stream(Job.values())
                .map(Words::word)
                .map(word -> "\"" + word + "\": "
                        + (word.equals(job) ? "{\"setUp\": 6, \"minutes\": 12}" : "{\"setUp\": 0, \"minutes\": 0}"))
                .collect(Collectors.joining(", ", "\"jobs\": {", "}, "));
        Season season = Edited.firstBed(
                        "\"ownRate\": 10,",
                        jobs + "\"ownRate\": 10,",
                        "\"net\": {\"net\": \"Net\"}",
                        "\"net\": {\"net\": \"Net\", \"layers\": 2}",
                        "\"bench\": 150,",
                        "\"bench\": 150, \"cover\": {\"metres\": 20},",
                        "\"name\": \"sown, pinched, netted\",",
                        "\"name\": \"sown, pinched, netted\", \"cover\": {},")
                .season();

        LotSize size = size(season, "sunflower, branching", start + ", pinched, netted", plants);

        assertThat(size.hours() * 60).isEqualTo(minutes, CLOSE);
    }

    @Test
    void whatIsNotPinchedTakesNoHoursForIt() {
        String own = "\"jobs\": {\"pinch\": {\"setUp\": 1000, \"minutes\": 1}}, ";
        List<Double> hours = List.of(
                size(Edited.firstBed().season(), "dill", "sown", 50).hours(),
                size(
                                Edited.firstBed("\"ownRate\": 10,", own + "\"ownRate\": 10,")
                                        .season(),
                                "dill",
                                "sown",
                                50)
                        .hours());

        assertThat(hours.get(1)).isEqualTo(hours.get(0));
    }

    /** Sown, 45 take less money than raised in 50 cells at 0.08; raised they are weeded less often. */
    @Test
    void ofSeveralMethodsTheDearestCountsInEach() {
        Season season = Edited.firstBed().season();
        LotSize sown = size(season, "sunflower, once-cut", "sown", 45);
        LotSize tray = size(season, "sunflower, once-cut", "tray", 45);

        LotSize both = LotSize.of(season, season.crops().getFirst(), 45);

        assertThat(both.money()).isEqualTo(tray.money()).isGreaterThan(sown.money());
        assertThat(both.hours()).isEqualTo(Math.max(sown.hours(), tray.hours()));
    }
}
