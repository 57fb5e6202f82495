package bedwright.file;

import java.io.Serial;
import java.util.List;
import java.util.stream.Collectors;

/** Tables that are at fault, with all their faults at once. */
public final class FaultyTables extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    private final transient List<TableFault> faults;

    FaultyTables(List<TableFault> faults) {
        super(faults.stream().map(TableFault::toString).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    /** All faults, by table, row and column. */
    public List<TableFault> faults() {
        return faults;
    }
}
