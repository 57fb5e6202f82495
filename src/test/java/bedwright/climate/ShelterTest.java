package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Season;
import bedwright.season.Windbreak;
import bedwright.season.Windbreak.Density;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShelterTest {
    private static final double NORTH = 0;
    private static final double EAST = 90;
    private static final double SOUTH = 180;
    private static final double HEIGHT = 4;

    /** A bed from the corner eastwards, 10 m long: all of it equally far from a windbreak that runs east and west. */
    private static double speed(double from, Windbreak... windbreaks) {
        return speed(from, null, windbreaks);
    }

    private static double speed(double from, BedBlock.@Nullable Tunnel tunnel, Windbreak... windbreaks) {
        Farm farm = new Farm();
        farm.beds = List.of(Farm.bed(0, 0, EAST, 10, tunnel));
        farm.windbreaks = List.of(windbreaks);
        Season season = farm.season();
        return Shelter.relativeSpeed(season, season.allBeds().getFirst(), from);
    }

    /** A long one to the north, so many of its heights away. */
    private static Windbreak north(double heights, Density density) {
        return line(-1000, heights * HEIGHT, 1000, heights * HEIGHT, density);
    }

    private static Windbreak line(double x1, double y1, double x2, double y2, Density density) {
        return new Windbreak("hedge", new Point(x1, y1), new Point(x2, y2), HEIGHT, density);
    }

    /**
     * University of Nebraska Extension EC 1763, How Windbreaks Work: per cent of the open wind at 5, 10, 15, 20, 25 and 30
     * heights to leeward, by density; from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "SPARSE, 50 65 80 85 95 100",
        "MEDIUM, 30 50 60 75 85 95",
        "DENSE, 25 35 65 85 90 95",
        "SOLID, 25 70 90 95 100 100"
    })
    void theLeeIsAsPublished(Density density, String percents) {
        String[] published = percents.split(" ", -1);
        for (int i = 0; i < published.length; i++) {
            assertThat(speed(NORTH, north(5 * (i + 1), density)))
                    .as("%s heights", 5 * (i + 1))
                    .isCloseTo(Integer.parseInt(published[i]) / 100.0, within(1e-9));
        }
    }

    /** Between 10 and 15 heights behind a belt of medium density: from 50 to 60 per cent in a straight line. */
    @ParameterizedTest
    @CsvSource({"11, 0.52", "12.5, 0.55", "14.75, 0.595"})
    void theLeeIsStraightBetweenThePoints(double heights, double expected) {
        assertThat(speed(NORTH, north(heights, Density.MEDIUM))).isCloseTo(expected, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 4.99})
    void nearerThanTheFirstPointTheLeeIsAsThere(double heights) {
        assertThat(speed(NORTH, north(heights, Density.DENSE))).isEqualTo(0.25);
    }

    /** EC 1763: shelter reaches up to 30 heights to leeward. */
    @Test
    void beyondThirtyHeightsTheWindIsOpen() {
        assertThat(speed(NORTH, north(30.01, Density.DENSE))).isEqualTo(1);
    }

    /** Heisler and DeWalle 1988, read off figures: 0.7 to 0.8, 0.85 to 0.9 and 0.95; from memory, weak. */
    @ParameterizedTest
    @CsvSource({"1, 0.7, 0.8", "2, 0.85, 0.9", "5, 0.95, 0.95"})
    void toWindwardItIsWithinWhatIsPublished(double heights, double least, double most) {
        assertThat(speed(SOUTH, north(heights, Density.MEDIUM))).isBetween(least - 1e-9, most + 1e-9);
    }

    /** EC 1763: to windward shelter reaches 2 to 5 heights. */
    @Test
    void beyondFiveHeightsToWindwardTheWindIsOpen() {
        assertThat(speed(SOUTH, north(5.01, Density.SOLID))).isEqualTo(1);
    }

    /** From 0.875 at 2 to 0.95 at 5 heights in a straight line. */
    @Test
    void toWindwardItIsStraightBetweenThePoints() {
        assertThat(speed(SOUTH, north(3, Density.SOLID))).isCloseTo(0.9, within(1e-9));
    }

    @Test
    void nearerThanTheFirstPointToWindwardItIsAsThere() {
        assertThat(speed(SOUTH, north(0.25, Density.SOLID))).isEqualTo(0.75);
    }

    @Test
    void withoutWindbreaksTheWindIsOpen() {
        assertThat(speed(NORTH)).isEqualTo(1);
    }

    /** At 45° the ray is √2 longer: 5 heights straight are 7.07 slantwise; SPARSE from 0.50 at 5 to 0.65 at 10. */
    @Test
    void aSlantingWindComesAlongALongerWay() {
        assertThat(speed(45, north(5, Density.SPARSE)))
                .isCloseTo(0.50 + 0.15 * (5 * Math.sqrt(2) - 5) / 5, within(1e-9));
    }

    @Test
    void theLowestOfSeveralCounts() {
        assertThat(speed(NORTH, north(20, Density.MEDIUM), north(10, Density.MEDIUM), north(15, Density.SPARSE)))
                .isCloseTo(0.50, within(1e-9));
    }

    /** Season model, section 4: the points are the centres of fifths, here 1, 3, 5, 7 and 9 m along the bed. */
    @ParameterizedTest
    @CsvSource({
        "-50, 0.9, 0",
        "-50, 1.1, 1",
        "-50, 4.9, 2",
        "-50, 8.9, 4",
        "-50, 9.1, 5",
        "1.1, 50, 4",
        "5.1, 50, 2",
        "5.1, 8.9, 1",
        "9.1, 50, 0"
    })
    void aShortWindbreakSheltersAShareOfTheBed(double from, double to, int points) {
        assertThat(speed(NORTH, line(from, 5 * HEIGHT, to, 5 * HEIGHT, Density.MEDIUM)))
                .isCloseTo((points * 0.30 + (5 - points)) / 5, within(1e-9));
    }

    @Test
    void aWindAlongAWindbreakIsNotSlowed() {
        assertThat(speed(EAST, line(20, 0, 60, 0, Density.SOLID))).isEqualTo(1);
    }

    @Test
    void aTunnelTakesItsShare() {
        assertThat(speed(NORTH, new BedBlock.Tunnel(2, 2, 0.2), north(10, Density.MEDIUM)))
                .isCloseTo(0.2 * 0.50, within(1e-9));
    }

    /** Turning the farm and the wind together changes nothing. */
    @Test
    void noDirectionIsSpecial() {
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < 200; i++) {
            double angle = random.nextDouble(360);
            double from = random.nextDouble(360);
            Farm farm = new Farm();
            farm.beds = List.of(Farm.bed(3, -7, 30, 40, null));
            farm.windbreaks = List.of(
                    line(-60, 35, 80, 60, Density.SPARSE),
                    line(45, -50, 50, 20, Density.MEDIUM),
                    line(-30, -40, 20, -55, Density.SOLID));
            Farm turned = new Farm();
            Point at = turned(new Point(3, -7), angle);
            turned.beds = List.of(Farm.bed(at.x(), at.y(), 30 + angle, 40, null));
            turned.windbreaks = farm.windbreaks.stream()
                    .map(w -> new Windbreak(
                            w.name(), turned(w.from(), angle), turned(w.to(), angle), w.height(), w.density()))
                    .toList();
            assertThat(first(turned, from + angle))
                    .as("turned by %s, wind from %s", angle, from)
                    .isCloseTo(first(farm, from), within(1e-6));
        }
    }

    private static double first(Farm farm, double from) {
        Season season = farm.season();
        return Shelter.relativeSpeed(season, season.allBeds().getFirst(), from);
    }

    /** Clockwise, as directions run. */
    private static Point turned(Point point, double degrees) {
        double angle = Math.toRadians(degrees);
        return new Point(
                point.x() * Math.cos(angle) + point.y() * Math.sin(angle),
                point.y() * Math.cos(angle) - point.x() * Math.sin(angle));
    }

    @Test
    void aDirectionThatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> speed(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    @Test
    void aDistanceThatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> WindbreakTable.lee(Density.SOLID, -0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-0.5");
    }

    /** From the middle of the bed, 5 m east of the corner. */
    private static double toRoughGrass(RoughGrass... edges) {
        Farm farm = new Farm();
        farm.beds = List.of(Farm.bed(0, 0, EAST, 10, null));
        farm.roughGrass = List.of(edges);
        Season season = farm.season();
        Bed bed = season.allBeds().getFirst();
        return Shelter.toRoughGrass(season, bed);
    }

    private static RoughGrass edge(double x1, double y1, double x2, double y2) {
        return new RoughGrass(new Point(x1, y1), new Point(x2, y2));
    }

    @Test
    void roughGrassBesideTheBedIsAsFarAsItsLine() {
        assertThat(toRoughGrass(edge(-100, 12, 100, 12))).isCloseTo(12, within(1e-9));
    }

    /** A triangle of sides 3, 4 and 5 to the edge's nearer end. */
    @Test
    void roughGrassAsideIsAsFarAsItsNearerEnd() {
        assertThat(toRoughGrass(edge(8, 4, 100, 4))).isCloseTo(5, within(1e-9));
    }

    @Test
    void theNearestRoughGrassCounts() {
        assertThat(toRoughGrass(edge(-100, 12, 100, 12), edge(-100, -7, 100, -7)))
                .isCloseTo(7, within(1e-9));
    }

    @Test
    void anEdgeOfOnePointIsAsFarAsThePoint() {
        assertThat(toRoughGrass(edge(8, 4, 8, 4))).isCloseTo(5, within(1e-9));
    }

    @Test
    void withoutRoughGrassItIsInfinitelyFar() {
        assertThat(toRoughGrass()).isInfinite();
    }

    /**
     * Before a slanting line the wind is checked downwind: from (1, 0), (3, 0) … (9, 0) north-eastwards to the line x + y =
     * 24 it is 23, 21 … 15 by √½, from 4.07 to 2.65 heights: on the straight from 0.875 at 2 to 0.95 at 5 heights, 0.909 in
     * the mean.
     */
    @Test
    void toWindwardASlantingLineIsMetDownwind() {
        Windbreak slanting = line(4, 20, 20, 4, Density.SOLID);

        assertThat(speed(225, slanting)).isCloseTo(0.90897, within(1e-5));
        assertThat(speed(135, slanting)).isEqualTo(1);
        assertThat(speed(315, slanting)).isEqualTo(1);
    }

    /** From the bed's middle, (5, 0): to an end, along the perpendicular, and to the nearest of several. */
    @ParameterizedTest
    @CsvSource({
        "8, 4, 20, 9, 5",
        "-20, 30, 2, 4, 5",
        "6, 7, 12, -1, 5",
        "12, -1, 6, 7, 5",
        "11, -3, 11, 4, 6",
        "-4, 2.5, 40, 2.5, 2.5"
    })
    void roughGrassIsAsFarAsItsNearestPoint(double x1, double y1, double x2, double y2, double metres) {
        Farm farm = new Farm();
        farm.beds = List.of(Farm.bed(0, 0, EAST, 10, null));
        RoughGrass far = new RoughGrass(new Point(500, 500), new Point(600, 500));
        farm.roughGrass = List.of(far, new RoughGrass(new Point(x1, y1), new Point(x2, y2)), far);
        Season season = farm.season();

        assertThat(Shelter.toRoughGrass(season, season.allBeds().getFirst())).isCloseTo(metres, within(1e-9));
    }
}
