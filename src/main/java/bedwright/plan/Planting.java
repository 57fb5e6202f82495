package bedwright.plan;

import ai.timefold.solver.core.api.domain.common.PlanningId;
import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.entity.PlanningPin;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import bedwright.growth.ProspectTable;
import org.jspecify.annotations.Nullable;

/**
 * One lot of a crop, or a standing planting: it gets a bed, a sow week and a method, or none of the three and is left
 * out. Mutable: this is what the solver turns over.
 */
@PlanningEntity
public class Planting {
    private static final int UNKNOWN = -2;

    private int id;
    private int stock;
    private boolean held;
    private @Nullable ProspectTable table;
    private @Nullable Integer bed;
    private @Nullable Integer sowWeek;
    private @Nullable Integer method;
    /** Its place as last worked out, or {@link #UNKNOWN}. */
    private int place = UNKNOWN;

    /** For the solver, which copies plantings. */
    public Planting() {}

    Planting(int id, int stock, boolean held, @Nullable ProspectTable table) {
        this.id = id;
        this.stock = stock;
        this.held = held;
        this.table = table;
    }

    /** A planting like this one, at the same place. */
    Planting copy() {
        Planting copy = new Planting(id, stock, held, table);
        copy.bed = bed;
        copy.sowWeek = sowWeek;
        copy.method = method;
        copy.place = place;
        return copy;
    }

    /** Its number in the plan's list, from 0. */
    @PlanningId
    public int getId() {
        return id;
    }

    public void setId(int id) {
        this.id = id;
    }

    /** The stock of equal plantings that it belongs to. */
    public int getStock() {
        return stock;
    }

    public void setStock(int stock) {
        this.stock = stock;
        place = UNKNOWN;
    }

    /** Whether it is held in place. */
    @PlanningPin
    public boolean isHeld() {
        return held;
    }

    public void setHeld(boolean held) {
        this.held = held;
    }

    public @Nullable ProspectTable getTable() {
        return table;
    }

    public void setTable(@Nullable ProspectTable table) {
        this.table = table;
    }

    /** Number of its bed in the season, or null if it is left out. */
    @PlanningVariable(valueRangeProviderRefs = "beds", allowsUnassigned = true)
    public @Nullable Integer getBed() {
        return bed;
    }

    public void setBed(@Nullable Integer bed) {
        this.bed = bed;
        place = UNKNOWN;
    }

    /** Week of the season in which it is sown, set or started in trays, or null. */
    @PlanningVariable(valueRangeProviderRefs = "sowWeeks", allowsUnassigned = true)
    public @Nullable Integer getSowWeek() {
        return sowWeek;
    }

    public void setSowWeek(@Nullable Integer sowWeek) {
        this.sowWeek = sowWeek;
        place = UNKNOWN;
    }

    /** Index of its method in the crop's list, or its way where it is pulled early, or null. */
    @PlanningVariable(valueRangeProviderRefs = "methods", allowsUnassigned = true)
    public @Nullable Integer getMethod() {
        return method;
    }

    public void setMethod(@Nullable Integer method) {
        this.method = method;
        place = UNKNOWN;
    }

    /** Its place in the table of prospects; {@link SeasonScore#NOWHERE} unless all three are set and it is offered. */
    int place() {
        if (place == UNKNOWN) {
            place = find();
        }
        return place;
    }

    private int find() {
        Integer b = bed;
        Integer w = sowWeek;
        Integer m = method;
        ProspectTable t = table;
        return b == null || w == null || m == null || t == null ? SeasonScore.NOWHERE : t.find(stock, b, w, m);
    }

    /** Puts it at a place, or nowhere; only before or after solving. */
    void put(int to) {
        ProspectTable t = table;
        place = UNKNOWN;
        if (to < 0 || t == null) {
            bed = null;
            sowWeek = null;
            method = null;
        } else {
            bed = t.bed(to);
            sowWeek = t.sowWeek(to);
            method = t.way(to);
        }
    }

    @Override
    public String toString() {
        return "planting " + id + " of stock " + stock + " at bed " + bed + ", week " + sowWeek + ", method " + method;
    }
}
