package bedwright.file;

import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether what stands in a bed when the season begins has room there beside the others. More than a bed's length can't
 * stand in it: one of the figures is wrong, and no plan could mend it.
 */
final class StandingRoom {
    /** Metres that rounding may add up to. */
    private static final double ROUNDING = 1e-6;

    private final Season season;
    private final Flaws flaws;
    private final Map<String, Double> taken = new HashMap<>();
    private final Map<String, List<String>> told = new HashMap<>();

    StandingRoom(Season season, Flaws flaws) {
        this.season = season;
        this.flaws = flaws;
    }

    void run() {
        Map<String, Double> lengths = new HashMap<>();
        for (Bed bed : season.allBeds()) {
            lengths.putIfAbsent(bed.name(), bed.block().length());
        }
        for (int i = 0; i < season.standing().size(); i++) {
            Standing standing = season.standing().get(i);
            Optional<Method> method = method(standing);
            Double length = lengths.get(standing.bed());
            if (standing.bed() != null && length != null && method.isPresent() && isThere(standing, method.get())) {
                add(i, standing, standing.bed(), length, method.get());
            }
        }
    }

    private void add(int i, Standing standing, String bed, double length, Method method) {
        double metres = method.metres(standing.plants());
        double before = taken.getOrDefault(bed, 0.0);
        double sum = before + metres;
        taken.put(bed, sum);
        // Told once a bed, where it is first too much.
        if (sum > length + ROUNDING && before <= length + ROUNDING) {
            List<String> others = told.getOrDefault(bed, List.of());
            flaws.add(
                    "/standing/" + i + "/plants",
                    "When the season begins " + length(metres) + " of this one stand in " + Words.quoted(bed)
                            + (others.isEmpty()
                                    ? ""
                                    : ", beside " + String.join(" and ", others) + ": together " + length(sum))
                            + ", but the bed has " + length(length)
                            + ". Give fewer plants, another bed, or the spacing and rows in which they really stand.",
                    "/starts",
                    "/beds/*/name",
                    "/beds/*/count",
                    "/beds/*/length",
                    "/standing/*/plants",
                    "/standing/*/bed",
                    "/standing/*/crop",
                    "/standing/*/method",
                    "/crops/*/methods/*/spacing",
                    "/crops/*/methods/*/rows");
        }
        told.computeIfAbsent(bed, b -> new ArrayList<>()).add(length(metres) + " of " + Words.quoted(name(standing)));
    }

    private static String name(Standing standing) {
        return standing.name() == null ? standing.crop() : standing.name();
    }

    /** A length in the file's units, to a hundredth. */
    private String length(double metres) {
        Unit unit = season.units().length();
        return Words.number(Math.round(unit.of(metres) * 100) / 100.0) + " " + unit.symbol();
    }

    /** Its method; where stems are written out and none is named, the crop's first. */
    private Optional<Method> method(Standing standing) {
        Optional<Crop> crop = season.crops().stream()
                .filter(c -> c.name().equals(standing.crop()))
                .findFirst();
        String named = standing.method();
        return named == null
                ? crop.filter(c -> standing.isWritten())
                        .flatMap(c -> c.methods().stream().findFirst())
                : crop.flatMap(c -> Known.method(c, named));
    }

    /** Whether it is in its bed in the season's first week. */
    private boolean isThere(Standing standing, Method method) {
        Standing.ClockReading clock = standing.clock();
        LocalDate sown = standing.sown();
        if (standing.isWritten()) {
            return true;
        }
        if (clock != null) {
            return clock.on().isBefore(season.starts());
        }
        return sown != null
                && sown.isBefore(season.starts())
                && (method.start() != Method.Start.TRAY
                        || sown.plusWeeks(method.trayWeeks()).isBefore(season.starts()));
    }
}
