package bedwright.file;

import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What must hold of any bytes: they are read, and what was read can be written and read back; or their faults are told. */
final class FuzzTargets {
    private FuzzTargets() {}

    static void season(byte[] bytes) {
        Season season = readOrTold(() -> SeasonFile.parse("file", bytes));
        if (season != null) {
            SeasonFile.check("file", bytes);
            if (!season.equals(SeasonFile.parse("again", SeasonFile.bytes(season)))) {
                throw new AssertionError("A season is read back otherwise than it was written");
            }
        }
    }

    static void plan(byte[] bytes) {
        Plan plan = readOrTold(() -> PlanFile.parse("file", bytes));
        if (plan != null && !plan.equals(PlanFile.parse("again", PlanFile.bytes(plan)))) {
            throw new AssertionError("A plan is read back otherwise than it was written");
        }
    }

    static void weather(byte[] bytes) {
        readOrTold(() -> WeatherFile.parse("file", bytes, WeatherFile.NO_YEAR, WeatherFile.NO_YEAR));
    }

    private static <T> @Nullable T readOrTold(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (FaultyFile e) {
            if (e.faults().isEmpty() || e.faults().stream().anyMatch(fault -> !isTold(fault))) {
                throw new AssertionError("Not told with its place: " + e.faults(), e);
            }
            return null;
        }
    }

    private static boolean isTold(Fault fault) {
        return fault.line() >= 1 && fault.column() >= 1 && !fault.message().isBlank();
    }
}
