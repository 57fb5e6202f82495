package bedwright.log;

import java.io.Serial;
import java.util.List;
import java.util.stream.Collectors;

/** Notes that can't be taken, with all that is wrong with them. */
public final class FaultyNotes extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    private final transient List<NoteFault> faults;

    FaultyNotes(List<NoteFault> faults) {
        super(faults.stream().map(NoteFault::toString).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    /** All that is wrong, by line. */
    public List<NoteFault> faults() {
        return faults;
    }
}
