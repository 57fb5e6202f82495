package bedwright.file;

import java.util.List;
import java.util.stream.Collectors;

/** A file whose contents are at fault; it says all faults at once, in the order in which they stand in the file. */
public final class FaultyFile extends RuntimeException {
    private final transient List<Fault> faults;

    FaultyFile(List<Fault> faults) {
        super(faults.stream().sorted(Fault.BY_PLACE).map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = faults.stream().sorted(Fault.BY_PLACE).toList();
    }

    /** All faults, by place. */
    public List<Fault> faults() {
        return faults;
    }
}
