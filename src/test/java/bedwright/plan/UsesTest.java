package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.ProspectTable;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Uses say what the table says. */
class UsesTest {
    private record Use(int shelf, int first, int end, int amount) {}

    @ParameterizedTest
    @ValueSource(strings = {Seasons.FIRST_BED, Seasons.DEMO_FARM})
    void eachPlaceTakesUpWhatTheTableSays(String problem) {
        ProspectTable table = Seasons.facts(Seasons.of(problem)).table();
        Uses uses = new Uses(table, new Uses.Shelves(101, 102, 103, 199));

        for (int place = 0; place < table.places(); place++) {
            int row = table.row(place);
            List<Use> wanted = new ArrayList<>();
            wanted.add(new Use(-1, table.heldFrom(row), table.heldTo(row), table.millimetres(row)));
            if (table.cells(row) > 0 && table.benchFrom(row) < table.benchTo(row)) {
                wanted.add(new Use(101, table.benchFrom(row), table.benchTo(row), table.cells(row)));
            }
            if (table.cells(row) > 0 && table.trayFrom(row) < table.trayTo(row)) {
                wanted.add(new Use(102, table.trayFrom(row), table.trayTo(row), table.cells(row)));
            }
            if (table.net(row) >= 0 && table.netFrom(row) < table.netTo(row)) {
                int net = 103 + table.net(row);
                wanted.add(new Use(net, table.netFrom(row), table.netTo(row), table.netMillimetres(row)));
            }
            if (table.coverFrom(row) < table.coverTo(row)) {
                wanted.add(new Use(199, table.coverFrom(row), table.coverTo(row), table.millimetres(row)));
            }
            assertThat(of(uses, place)).isEqualTo(wanted);
            assertThat(uses.amount(uses.sizeInBed(place))).isEqualTo(table.millimetres(row));
        }
    }

    private static List<Use> of(Uses uses, int place) {
        List<Use> all = new ArrayList<>();
        int at = uses.start(place);
        for (int u = uses.all[at++]; u > 0; u--, at += Uses.A_USE) {
            assertThat(uses.amount(uses.all[at + Uses.SIZE])).isEqualTo(uses.all[at + Uses.AMOUNT]);
            all.add(new Use(
                    uses.all[at + Uses.SHELF],
                    uses.all[at + Uses.FIRST],
                    uses.all[at + Uses.END],
                    uses.all[at + Uses.AMOUNT]));
        }
        return all;
    }
}
