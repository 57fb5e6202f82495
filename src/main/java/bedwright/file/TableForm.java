package bedwright.file;

import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Held;
import bedwright.season.Method;
import bedwright.season.Outlet;
import bedwright.season.Standing;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A table of the season that a grower edits: a row for each entry of one of its lists. */
enum TableForm {
    BEDS("Beds", "beds", null, BedBlock.class, "name", true),
    BEDS_TAKEN("Beds taken", "taken", BEDS, BedBlock.Taken.class, null, true),
    BEDS_HISTORY("Beds history", "history", BEDS, BedBlock.Grown.class, null, true),
    CROPS("Crops", "crops", null, Crop.class, "name", false),
    METHODS("Methods", "methods", CROPS, Method.class, "name", false),
    STANDING("Standing", "standing", null, Standing.class, TableForm.ENTRY, true),
    HELD("Held", "held", null, Held.class, TableForm.ENTRY, true),
    OUTLETS("Outlets", "outlets", null, Outlet.class, "name", true),
    OUTLET_WEEKS("Outlet weeks", "asks", OUTLETS, Outlet.Ask.class, null, true);

    /** Heads the numbers by which entries are known that need no name. */
    static final String ENTRY = "entry";

    private final String sheet;
    private final String list;
    private final @Nullable TableForm parent;
    private final Class<? extends Record> type;
    private final @Nullable String key;
    private final boolean whole;

    TableForm(
            String sheet,
            String list,
            @Nullable TableForm parent,
            Class<? extends Record> type,
            @Nullable String key,
            boolean whole) {
        this.sheet = sheet;
        this.list = list;
        this.parent = parent;
        this.type = type;
        this.key = key;
        this.whole = whole;
    }

    /** Its name, a sheet's or a file's. */
    String sheet() {
        return sheet;
    }

    /** Key of the list, in the season or in an entry of the parent's list. */
    String list() {
        return list;
    }

    /** The table whose entries hold its lists; null for a list of the season. */
    @Nullable
    TableForm parent() {
        return parent;
    }

    Class<? extends Record> type() {
        return type;
    }

    /** The column by which an entry is known; null if by nothing. */
    @Nullable
    String key() {
        return key;
    }

    /** Whether its entries are known by their numbers, from 1; a row without one is new. */
    boolean numbered() {
        return ENTRY.equals(key);
    }

    /** Whether its rows are all that there is; else they change entries that there are, and those without a row stay. */
    boolean whole() {
        return whole;
    }

    /** What heads the column that names the parent's entry. */
    String parentHead() {
        return switch (this) {
            case BEDS_TAKEN, BEDS_HISTORY -> "beds";
            case METHODS -> "crop";
            case OUTLET_WEEKS -> "outlet";
            case BEDS, CROPS, STANDING, HELD, OUTLETS -> "";
        };
    }

    /** The tables of its entries' lists. */
    List<TableForm> children() {
        return Arrays.stream(values()).filter(form -> form.parent == this).toList();
    }
}
