package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.ProspectTable;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Room that is looked up is the room there is, also after a shelf was changed. */
class VacancyTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void thereIsRoomWhereNoWeekOfTheStretchIsTooFull(long seed) {
        ProspectTable table = Seasons.facts(Seasons.of(Seasons.FIRST_BED)).table();
        Uses uses = new Uses(table, new Uses.Shelves(1, 2, 3, 4));
        Random random = new Random(seed);
        int weeks = 20;
        int[] holds = {12_000, 300};
        int[] used = new int[holds.length * weeks];
        Vacancy vacancy = new Vacancy(uses, weeks, used, holds);
        int room = 0;
        for (int i = 0; i < 3000; i++) {
            int shelf = random.nextInt(holds.length);
            if (random.nextInt(10) == 0) {
                used[shelf * weeks + random.nextInt(weeks)] = random.nextInt(holds[shelf] * 5 / 4);
                vacancy.changed(shelf);
            }
            int size = random.nextInt(uses.sizes());
            int first = random.nextInt(weeks);
            int end = random.nextInt(first, weeks + 1);
            boolean fits = true;
            for (int w = first; w < end; w++) {
                fits &= used[shelf * weeks + w] + uses.amount(size) <= holds[shelf];
            }
            assertThat(vacancy.has(shelf, size, first, end)).isEqualTo(fits);
            room += fits ? 1 : 0;
        }
        assertThat(room).isBetween(300, 2700);
    }
}
