package bedwright.station;

import bedwright.weather.InventedStation;
import bedwright.weather.StationRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A benchmark: how many of the years held back lie within the band of the sampled seasons, over many invented records and
 * the real ones that there are. Argument: how many invented records of 100 years of each kind (default 10).
 */
final class Calibration {
    private Calibration() {}

    public static void main(String[] args) {
        int records = args.length > 0 ? Integer.parseInt(args[0]) : 10;
        System.out.println("| records | what is foretold | below | within | above | share within |");
        System.out.println("|---|---|---|---|---|---|");
        print("New York, 4 years in turn", List.of(Judge.of(Stations.newYork(), 1)));
        print("Seattle, 4 years in turn", List.of(Judge.of(Stations.seattle(), 1)));
        List<Judge.Judgement> even = new ArrayList<>();
        List<Judge.Judgement> uneven = new ArrayList<>();
        List<Judge.Judgement> few = new ArrayList<>();
        for (int seed = 1; seed <= records; seed++) {
            even.add(Judge.of(invented(1901, seed, 0), seed));
            uneven.add(Judge.of(invented(1901, seed, 0.35), seed));
            few.add(Judge.of(invented(1997, seed, 0.35), seed));
        }
        print(records + " of 100 years, the same spread all year", even);
        print(records + " of 100 years, winters that stray more", uneven);
        print(records + " of 4 years in turn, winters that stray more", few);
    }

    private static StationRecord invented(int from, int seed, double winter) {
        InventedStation station = new InventedStation(from, 2000, seed);
        station.winter = winter;
        return Stations.of(station);
    }

    /** Sowings are told apart by their order, since their dates differ from record to record. */
    private static void print(String name, List<Judge.Judgement> judgements) {
        List<Judge.Judged> first = judgements.getFirst().figures();
        for (int i = 0; i < first.size(); i++) {
            int below = 0;
            int within = 0;
            int above = 0;
            for (Judge.Judgement judgement : judgements) {
                Judge.Judged judged = judgement.figures().get(i);
                below += judged.below();
                within += judged.within();
                above += judged.above();
            }
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %d | %d | %d | %.0f %% |%n",
                    name,
                    judgements.size() > 1
                            ? first.get(i).name().replaceAll("sown .*", "sowing " + (i - 2))
                            : first.get(i).name(),
                    below,
                    within,
                    above,
                    100.0 * within / (below + within + above));
        }
    }
}
