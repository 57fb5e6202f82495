package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.SeasonFile;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The families of problems that the search is measured on. */
class ProblemFamilyTest {

    @ParameterizedTest
    @EnumSource
    void aSeasonFileCouldHoldEachMember(ProblemFamily family) {
        Season season = family.season(3);
        assertThat(SeasonFile.parse(family.label(), SeasonFile.bytes(season))).isEqualTo(season);
    }

    @Test
    void thePlainDemoFarmIsTheOneOfTheFile() {
        assertThat(ProblemFamily.DEMO.season(0)).isEqualTo(SeasonFile.read(Path.of("problems", "demo-farm.json")));
    }

    @ParameterizedTest
    @EnumSource
    void theSameSeedGivesTheSameMember(ProblemFamily family) {
        Season once = family.season(5);
        Season again = family.season(5);
        assertThat(again).isEqualTo(once);
    }

    @ParameterizedTest
    @EnumSource
    void anotherSeedGivesAnotherMember(ProblemFamily family) {
        assertThat(family.season(5)).isNotEqualTo(family.season(6));
    }

    @ParameterizedTest
    @CsvSource({"DEMO_X4, 4", "DEMO_X16, 16"})
    void aLargerFarmHasSoManyTimesTheBeds(ProblemFamily family, int times) {
        Season farm = ProblemFamily.DEMO.season(0);
        assertThat(family.season(0).allBeds()).hasSize(times * farm.allBeds().size());
    }

    @ParameterizedTest
    @CsvSource({"DEMO_X4, 4", "DEMO_X16, 16"})
    void aLargerFarmIsAskedForSoManyTimesTheStems(ProblemFamily family, int times) {
        assertThat(stemsAskedFor(family.season(0))).isEqualTo(times * stemsAskedFor(ProblemFamily.DEMO.season(0)));
    }

    private static long stemsAskedFor(Season season) {
        long sum = 0;
        for (DemandLine line : Demand.of(season, KindTree.of(season.roles())).lines()) {
            for (long asked : line.asked()) {
                sum += asked;
            }
        }
        return sum;
    }

    @Test
    void aPlantingThatStandsInAFieldStandsInABedOfThatField() {
        assertThat(ProblemFamily.DEMO_X4.season(0).standing())
                .filteredOn(standing -> standing.bed() != null)
                .isNotEmpty()
                .allSatisfy(standing -> assertThat(standing.name())
                        .startsWith(String.valueOf(standing.bed()).substring(0, "Field 1".length())));
    }
}
