package bedwright.sheet;

import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.plan.Outcomes;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A planting as it is shown: what is kept of it with its weeks and amounts. Weeks "to" are not included.
 *
 * @param kept number, bed, week, method and plants
 * @param name the crop, or the name of what already stands
 * @param role role of its stems
 * @param bed number of its bed
 * @param isWritten whether its stems are written out, so that it was sown at no known time
 * @param trayFrom first week in trays; equal to trayTo if it is not raised in them
 * @param heldFrom first week in the bed
 * @param cutFrom first week with stems in at least half of the possible seasons; equal to cutTo if there is none
 * @param millimetres length of bed
 * @param netMillimetres net, over all layers
 * @param coverFrom first week under cover; equal to coverTo if there is none
 * @param net name of its net, or null
 * @param stems stems in the whole season, hundredths
 * @param meanByWeek mean stems by week, hundredths
 * @param stemsByWeek stems by week and possible season, hundredths; not to be written to
 */
record Shown(
        KeptPlanting kept,
        String name,
        Crop crop,
        Method method,
        int role,
        int bed,
        boolean isWritten,
        int trayFrom,
        int trayTo,
        int heldFrom,
        int heldTo,
        int cutFrom,
        int cutTo,
        long millimetres,
        long cells,
        @Nullable String net,
        long netMillimetres,
        int coverFrom,
        int coverTo,
        long[] workMinutes,
        Spread stems,
        double[] meanByWeek,
        long[][] stemsByWeek) {

    int number() {
        return kept.number();
    }

    /** Stems of a week in each possible season, hundredths. */
    long[] stemsIn(int week) {
        return stemsByWeek[week];
    }

    boolean isHeldIn(int week) {
        return week >= heldFrom && week < heldTo;
    }

    boolean isInTraysIn(int week) {
        return week >= trayFrom && week < trayTo;
    }

    /** All plantings of an outcome, by number. */
    static List<Shown> of(SheetFacts facts) {
        Season season = facts.season();
        Map<String, Integer> beds = new HashMap<>();
        for (Bed bed : season.allBeds()) {
            beds.put(bed.name(), bed.index());
        }
        KindTree kinds = KindTree.of(season.roles());
        List<Shown> shown = new ArrayList<>();
        for (KeptPlanting kept : facts.outcome().plantings()) {
            shown.add(of(facts, kinds, beds, kept));
        }
        return List.copyOf(shown);
    }

    private static Shown of(SheetFacts facts, KindTree kinds, Map<String, Integer> beds, KeptPlanting kept) {
        Season season = facts.season();
        ProspectTable table = facts.prospects();
        Crop crop = season.crops().stream()
                .filter(c -> c.name().equals(kept.crop()))
                .findFirst()
                .orElseThrow(() -> unknown(kept, "the season has no such crop"));
        int method = 0;
        while (method < crop.methods().size()
                && !crop.methods().get(method).name().equals(kept.method())) {
            method++;
        }
        Integer bed = beds.get(kept.bed());
        if (bed == null || method == crop.methods().size()) {
            throw unknown(kept, bed == null ? "the season has no such bed" : "the crop has no such method");
        }
        Integer standing = kept.standing();
        Integer pool = kept.pool();
        Standing stands = standing == null ? null : season.standing().get(standing - 1);
        int stock = standing != null ? season.pool().size() + standing - 1 : pool != null ? pool - 1 : -1;
        Spot spot = stock < 0 ? null : Outcomes.spot(season, kept);
        int place = spot == null ? -1 : table.find(stock, bed, spot.sowWeek(), spot.method());
        if (place < 0) {
            throw unknown(kept, "the season's prospects have no such place");
        }
        int row = table.row(place);
        int lots = kept.lots();
        long[][] stems = stems(table, row, lots, season.weeks());
        int[] cut = cutWeeks(stems, table.seasons());
        double[] mean = new double[season.weeks()];
        long[] whole = new long[table.seasons()];
        for (int w = 0; w < mean.length; w++) {
            for (int k = 0; k < whole.length; k++) {
                whole[k] += stems[w][k];
                mean[w] += (double) stems[w][k] / whole.length;
            }
        }
        String name = stands != null && stands.name() != null ? stands.name() : crop.name();
        int kind = table.blocks(row) > 0
                ? table.blockNode(row, 0)
                : kinds.node(crop.kinds().getFirst().kind());
        int net = table.net(row);
        boolean written = stands != null && stands.isWritten();
        return new Shown(
                kept,
                name,
                crop,
                crop.methods().get(method),
                kinds.role(kind),
                bed,
                written,
                table.trayFrom(row),
                table.trayTo(row),
                table.heldFrom(row),
                table.heldTo(row),
                cut[0],
                cut[1],
                (long) lots * table.millimetres(row),
                (long) lots * table.cells(row),
                net < 0 ? null : season.stock().nets().get(net).name(),
                net < 0 ? 0 : (long) lots * table.netMillimetres(row),
                table.coverFrom(row),
                table.coverTo(row),
                work(table, row, lots, season.weeks()),
                Spread.of(whole),
                mean,
                stems);
    }

    private static IllegalArgumentException unknown(KeptPlanting kept, String why) {
        return new IllegalArgumentException("Planting " + kept.number() + " (" + kept.crop() + ", " + kept.method()
                + ", bed " + kept.bed() + ", " + kept.sown() + ") can't be shown: " + why);
    }

    private static long[][] stems(ProspectTable table, int row, int lots, int weeks) {
        int seasons = table.seasons();
        long[][] stems = new long[weeks][seasons];
        for (int b = 0; b < table.blocks(row); b++) {
            for (int k = 0; k < seasons; k++) {
                stems[table.blockWeek(row, b)][k] += (long) lots * table.stems(row)[b * seasons + k];
            }
        }
        return stems;
    }

    /** First week and end of the weeks that lie between stems in at least half of the seasons. */
    private static int[] cutWeeks(long[][] stems, int seasons) {
        int from = 0;
        int to = 0;
        for (int w = 0; w < stems.length; w++) {
            int giving = 0;
            for (long each : stems[w]) {
                giving += each > 0 ? 1 : 0;
            }
            if (2 * giving >= seasons) {
                from = to == 0 ? w : from;
                to = w + 1;
            }
        }
        return new int[] {from, to};
    }

    private static long[] work(ProspectTable table, int row, int lots, int weeks) {
        long[] minutes = new long[weeks];
        int[] work = table.work(row);
        for (int i = 0; i < work.length; i++) {
            int week = table.workFrom(row) + i;
            if (week >= 0 && week < weeks) {
                minutes[week] = (long) lots * work[i] + table.setUp(row)[i];
            }
        }
        return minutes;
    }
}
