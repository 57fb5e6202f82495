package bedwright.problems;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.Prospect;
import bedwright.growth.ProspectTable;
import bedwright.growth.Prospects;
import bedwright.plan.Outcomes;
import bedwright.season.KeptPlanting;
import bedwright.season.Rounding;
import bedwright.season.Season;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said of a kept planting, job by job, is what the plan was made on. */
class KeptProspectsTest {

    static List<String> names() {
        return Planned.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void itsJobsRoomAndCellsAreThoseOfThePlan(String name) {
        Planned planned = Planned.of(name, 4);
        Season season = planned.plan().season();
        ProspectTable table = planned.facts().table();
        Prospects prospects = Prospects.of(season, List.of());
        int[] places = Outcomes.places(planned.facts(), planned.plan().plantings());
        assertThat(planned.plan().plantings()).isNotEmpty().hasSizeLessThanOrEqualTo(places.length);

        for (KeptPlanting kept : planned.plan().plantings()) {
            Integer standing = kept.standing();
            Integer pool = kept.pool();
            if (standing != null && season.standing().get(standing - 1).isWritten()) {
                continue;
            }
            int stock = standing != null ? season.pool().size() + standing - 1 : pool == null ? -1 : pool - 1;
            int bed = season.allBeds().stream()
                    .filter(b -> b.name().equals(kept.bed()))
                    .findFirst()
                    .orElseThrow()
                    .index();
            int method = season.crops().stream()
                    .filter(c -> c.name().equals(kept.crop()))
                    .flatMap(c -> c.methods().stream().map(m -> m.name()))
                    .toList()
                    .indexOf(kept.method());
            int row = table.row(table.find(stock, bed, season.weekOf(kept.sown()), method));

            Prospect prospect = prospects.expect(kept);

            assertThat(prospect.millimetres()).as("%s", kept).isEqualTo(table.millimetres(row));
            assertThat(prospect.cells()).as("%s", kept).isEqualTo(table.cells(row));
            assertThat(prospect.heldTo()).as("%s", kept).isEqualTo(table.heldTo(row));
            for (int i = 0; i < table.work(row).length; i++) {
                int week = table.workFrom(row) + i;
                List<Prospect.Task> tasks =
                        prospect.tasks().stream().filter(t -> t.week() == week).toList();
                assertThat(Rounding.halfUp(tasks.stream()
                                .mapToDouble(Prospect.Task::minutes)
                                .sum()))
                        .as("%s, week %d", kept, week)
                        .isEqualTo(table.work(row)[i]);
                assertThat(tasks.stream().mapToInt(Prospect.Task::setUp).sum())
                        .as("%s, week %d", kept, week)
                        .isEqualTo(table.setUp(row)[i]);
            }
        }
    }
}
