package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.ProspectTable;
import org.junit.jupiter.api.Test;

/** Holds say what the table says. */
class HoldsTest {
    @Test
    void eachPlaceHoldsWhatTheTableSays() {
        ProspectTable table = Seasons.facts(Seasons.of(Seasons.FIRST_BED)).table();
        Holds holds = new Holds(table, new Uses(table, new Uses.Shelves(0, 0, 0, 0)));

        for (int place = 0; place < table.places(); place++) {
            int row = table.row(place);
            assertThat(new int[] {holds.bed(place), holds.from(place), holds.to(place), holds.millimetres(place)})
                    .containsExactly(table.bed(place), table.heldFrom(row), table.heldTo(row), table.millimetres(row));
        }
    }
}
