package bedwright.compare;

import bedwright.climate.PossibleSeason;
import bedwright.compare.Judged.Cause;
import bedwright.compare.Judged.Loss;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * To what a plan loses stems. What survives is a product over the causes, so what is lost is shared among them by the
 * logarithms of what each leaves. Standing plantings with stems written out, or with a clock of their own, are left out.
 */
final class Losses {
    /** Seasons looked at, the first ones: enough for a mean that is shown in hundreds of stems. */
    private static final int ENOUGH = 50;

    /** What leaves less than this counts as leaving this much, so that it has a logarithm. */
    private static final double LEAST = 1e-9;

    private Losses() {}

    /** A planting apart from how many there are of it. */
    private record Alike(int crop, int method, int bed, int week) {}

    /** Stems lost in the mean of the first seasons, 1/100, for each cause. */
    static List<Loss> of(Season season, List<KeptPlanting> plantings, List<PossibleSeason> seasons) {
        Prospects prospects = Prospects.of(season, seasons.subList(0, Math.min(ENOUGH, seasons.size())));
        List<String> crops = season.crops().stream().map(Crop::name).toList();
        List<String> beds = season.allBeds().stream().map(Bed::name).toList();
        Map<Alike, Prospect> known = new HashMap<>();
        double[] lost = new double[Cause.values().length];
        for (KeptPlanting planting : plantings) {
            if (isUnknown(season, planting)) {
                continue;
            }
            Crop crop = season.crops().get(crops.indexOf(planting.crop()));
            List<String> ways = crop.methods().stream().map(Method::name).toList();
            Alike alike = new Alike(
                    crops.indexOf(planting.crop()),
                    ways.indexOf(planting.method()),
                    beds.indexOf(planting.bed()),
                    season.weekOf(planting.sown()));
            Prospect prospect =
                    known.computeIfAbsent(alike, a -> prospects.expect(a.crop(), a.method(), 1, a.bed(), a.week()));
            Method way = crop.methods().get(alike.method());
            add(lost, 100 * planting.plants() * way.stems() * way.saleable(), prospect.seasons());
        }
        List<Loss> losses = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            losses.add(new Loss(cause, lost[cause.ordinal()]));
        }
        return losses;
    }

    private static boolean isUnknown(Season season, KeptPlanting planting) {
        Integer entry = planting.standing();
        if (entry == null) {
            return false;
        }
        Standing standing = season.standing().get(entry - 1);
        return standing.isWritten() || standing.clock() != null;
    }

    private static void add(double[] lost, double stems, List<Prospect.Surviving> seasons) {
        for (Prospect.Surviving left : seasons) {
            double[] logs = new double[lost.length];
            logs[Cause.STAND.ordinal()] = log(left.stand());
            logs[Cause.FROST.ordinal()] = log(left.springOrWinter()) + log(left.autumn());
            logs[Cause.STORM.ordinal()] = log(left.storms());
            for (double pest : left.pests().values()) {
                logs[Cause.PESTS.ordinal()] += log(pest);
            }
            double sum = 0;
            for (double one : logs) {
                sum += one;
            }
            for (int c = 0; c < logs.length && sum < 0; c++) {
                lost[c] += stems * (1 - left.all()) * logs[c] / sum / seasons.size();
            }
        }
    }

    private static double log(double share) {
        return StrictMath.log(Math.clamp(share, LEAST, 1));
    }
}
