package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Site;
import bedwright.season.Standing;
import java.util.List;

/** The stems of a planting by week in one possible season (season model, sections 3 and 4). */
final class Stems {
    private final Facts facts;

    Stems(Facts facts) {
        this.facts = facts;
    }

    /** Saleable stems of one plant in each week; a function of crop, method, bed and sow week only. */
    double[] ofAPlant(Placed placed, PossibleSeason possible, Calendar calendar) {
        double[] stems = new double[facts.weeks()];
        Course course = new Course(facts, placed, possible);
        if (course.firstCut == NEVER) {
            return stems;
        }
        Pests pests = new Pests(facts, placed, possible, course, calendar);
        Frosts frosts = new Frosts(facts, placed, possible, course, calendar);
        double[] standing = new Storms(facts, placed, possible, course).standing();
        double[] shares = Cutting.shares(facts, placed, possible, course);
        double plants = stand(placed, possible) * pests.seedAndSeedlings() * frosts.winterAndSpring();
        double stemsAPlant = placed.method().stems() * possible.stemsFactor()[placed.cropIndex()];
        Past past = placed.past();
        double factor = past == null ? 1 : past.factor();
        for (int week = facts.now(); week <= calendar.lastStems; week++) {
            if (shares[week] > 0) {
                double saleable = placed.method().saleable() * pests.blooms(week);
                stems[week] =
                        plants * frosts.autumn(week) * standing[week] * stemsAPlant * shares[week] * saleable * factor;
            }
        }
        return stems;
    }

    /** Share of the plants that come up or take. */
    private double stand(Placed placed, PossibleSeason possible) {
        Past past = placed.past();
        if (past == null) {
            return unseenStand(placed, possible);
        }
        return past.counted() == null ? unseenStand(placed, possible) * past.left() : past.left();
    }

    private double unseenStand(Placed placed, PossibleSeason possible) {
        Method method = placed.method();
        return switch (method.start()) {
            case SOWN -> method.emergence() * seedBed(placed, possible);
            case TRAY -> 1;
            case PLUGS, SET -> method.emergence();
        };
    }

    private double seedBed(Placed placed, PossibleSeason possible) {
        Site.BadSeedBed bad = facts.season.site().badSeedBed();
        int sowWeek = Math.floorDiv(placed.sowDay(facts.season), 7);
        if (!placed.knowsSowWeek() || sowWeek < 0) {
            return 1;
        }
        if (possible.normal()) {
            return 1 - bad.chance() * (1 - bad.share());
        }
        return possible.badSeedBed()[sowWeek] ? bad.share() : 1;
    }

    /** Stems of one lot in 1/100, by kind and week. */
    long[][] ofALot(Placed placed, double[] ofAPlant) {
        double[][] stems = new double[facts.kinds.size()][facts.weeks()];
        if (placed.isWritten() && placed.standing() != null) {
            addWritten(placed.crop(), placed.standing(), stems);
        } else {
            List<Crop.KindShare> own = placed.method().kinds();
            for (Crop.KindShare kind : own == null ? placed.crop().kinds() : own) {
                for (int week = 0; week < facts.weeks(); week++) {
                    stems[facts.kinds.node(kind.kind())][week] += placed.plants() * ofAPlant[week] * kind.share();
                }
            }
        }
        long[][] whole = new long[facts.kinds.size()][facts.weeks()];
        for (int node = 0; node < facts.kinds.size(); node++) {
            for (int week = 0; week < facts.weeks(); week++) {
                whole[node][week] = Units.hundredths(stems[node][week]);
            }
        }
        return whole;
    }

    private void addWritten(Crop crop, Standing standing, double[][] stems) {
        for (Standing.WrittenStems written : standing.stems()) {
            int week = facts.season.weekOf(written.week());
            if (week < facts.now() || week >= facts.weeks()) {
                continue;
            }
            if (written.kind() != null) {
                stems[facts.kinds.node(written.kind())][week] += written.stems();
            } else {
                for (Crop.KindShare kind : crop.kinds()) {
                    stems[facts.kinds.node(kind.kind())][week] += written.stems() * kind.share();
                }
            }
        }
    }
}
