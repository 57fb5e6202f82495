package bedwright.growth;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.climate.Shelter;
import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Season;
import bedwright.season.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The beds by what grows alike in them: beds of one class are exactly equal in all that a prospect depends on. */
final class Ground {
    private final List<BedClass> classes = new ArrayList<>();
    private final int[] classOfBed;
    private final List<Double> directions = new ArrayList<>();

    /**
     * All of a bed that growth depends on.
     *
     * @param warmth °C that a tunnel adds
     * @param protects °C of frost that it keeps off
     * @param gusts relative speed of a gust by direction, in the order of the ground's directions
     * @param toGrass m to the nearest rough grass
     */
    record BedClass(double warmth, double protects, List<Double> gusts, double toGrass) {}

    private Ground(Season season, List<PossibleSeason> seasons) {
        for (Site.StormSide side : season.site().storms()) {
            directions.add(side.from());
        }
        for (PossibleSeason possible : seasons) {
            for (Gust gust : possible.gusts()) {
                if (gust.side() < 0 && !directions.contains(gust.from())) {
                    directions.add(gust.from());
                }
            }
        }
        List<Bed> beds = season.allBeds();
        classOfBed = new int[beds.size()];
        Map<BedClass, Integer> numbers = new HashMap<>();
        for (Bed bed : beds) {
            BedBlock.Tunnel tunnel = bed.block().tunnel();
            List<Double> gusts = new ArrayList<>();
            for (double from : directions) {
                gusts.add(Shelter.relativeSpeed(season, bed, from));
            }
            BedClass kind = new BedClass(
                    tunnel == null ? 0 : tunnel.warmth(),
                    tunnel == null ? 0 : tunnel.protects(),
                    List.copyOf(gusts),
                    Shelter.toRoughGrass(season, bed));
            Integer number = numbers.putIfAbsent(kind, classes.size());
            if (number == null) {
                number = classes.size();
                classes.add(kind);
            }
            classOfBed[bed.index()] = number;
        }
    }

    static Ground of(Season season, List<PossibleSeason> seasons) {
        return new Ground(season, seasons);
    }

    int classOf(int bed) {
        return classOfBed[bed];
    }

    List<BedClass> classes() {
        return classes;
    }

    /** Index of the direction that a gust comes from. */
    int direction(Gust gust) {
        return gust.side() >= 0 ? gust.side() : directions.indexOf(gust.from());
    }
}
