package bedwright.file;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A file whose contents are at fault; it says all faults at once, in the order in which they stand in the file. Of a file
 * with a fault on line after line it says the first ones, and how many there are.
 */
public final class FaultyFile extends RuntimeException {
    private final transient List<Fault> faults;
    private final int count;

    FaultyFile(List<Fault> faults) {
        this(faults, faults.size());
    }

    /**
     * @param count all faults, those that are not told one by one among them
     */
    FaultyFile(List<Fault> faults, int count) {
        super(faults.stream().sorted(Fault.BY_PLACE).map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = faults.stream().sorted(Fault.BY_PLACE).toList();
        this.count = count;
    }

    /** All faults that are told, by place. */
    public List<Fault> faults() {
        return faults;
    }

    /** How many faults there are, those that are not told one by one among them. */
    public int count() {
        return count;
    }
}
