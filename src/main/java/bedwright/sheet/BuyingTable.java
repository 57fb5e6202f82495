package bedwright.sheet;

import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import bedwright.table.Cell;
import bedwright.table.Grid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a plan's plantings need of seed, plugs and tubers, with the day on which they need it. Just what is planted:
 * without a margin, packet sizes, or what is in stock.
 */
final class BuyingTable {
    static final String NAME = "Buying";
    private static final int DIGITS = 2;

    private BuyingTable() {}

    private record Need(KeptPlanting planting, Prospect.Cost cost) {}

    static Grid of(SheetFacts facts) {
        Season season = facts.season();
        Prospects prospects = Prospects.of(season, List.of());
        List<Need> needs = new ArrayList<>();
        for (KeptPlanting planting : facts.outcome().plantings()) {
            // What stands is bought already.
            if (planting.standing() == null) {
                // What is bought comes first, and then what only wears.
                needs.add(new Need(planting, prospects.expect(planting).costs().getFirst()));
            }
        }
        needs.sort(Comparator.<Need, LocalDate>comparing(need -> need.planting().sown())
                .thenComparing(need -> need.planting().crop())
                .thenComparing(need -> need.planting().number()));
        List<List<Cell>> rows = new ArrayList<>();
        for (Need need : needs) {
            KeptPlanting planting = need.planting();
            rows.add(List.of(
                    Cell.of(planting.sown()),
                    Cell.of(planting.crop()),
                    Cell.of(planting.method()),
                    Cell.of(planting.number()),
                    Cell.of(need.cost().item()),
                    Cell.of(Math.round(planting.lots() * need.cost().amount())),
                    Cell.of(planting.lots() * need.cost().money(), DIGITS)));
        }
        return Grid.of(NAME, List.of("needed on", "crop", "method", "planting", "what", "how many", "cost"), rows);
    }
}
