package bedwright.command;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** The day that a person means who names none: that on which they started the program. */
final class StartDay {
    private StartDay() {}

    /** The day that was said, else the one on which this program was started. */
    static LocalDate or(@Nullable LocalDate said) {
        if (said != null) {
            return said;
        }
        Instant started = ProcessHandle.current().info().startInstant().orElse(Instant.EPOCH);
        return LocalDate.ofInstant(started, ZoneId.systemDefault());
    }
}
