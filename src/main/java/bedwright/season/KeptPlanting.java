package bedwright.season;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** One planting of a plan: equal lots of a crop in one bed, week and method, or a standing planting. */
public record KeptPlanting(
        @Fact(value = "Its number, short enough to say aloud", min = 1, max = 100000)
        int number,

        @Fact("Crop") String crop,
        @Fact("Method") String method,
        @Fact("Bed") String bed,

        @Fact("First day of the week in which it is sown, set or started in trays")
        LocalDate sown,

        @Fact(
                value = "Entry of the season's pool that its lots come from, from 1; left out for a standing planting",
                min = 1,
                max = 100000)
        @Nullable
        Integer pool,

        @Fact(
                value = "Entry of the season's standing plantings, from 1; left out for lots of the pool",
                min = 1,
                max = 100000)
        @Nullable
        Integer standing,

        @Fact(value = "Lots", min = 1, max = 100000, byDefault = "1")
        int lots,

        @Fact(value = "Plants in all", unit = "plants", min = 1, max = 100000000)
        int plants,

        @Fact("Day on which it is planted out, of what is in trays or was while the season is under way") @Nullable
        LocalDate out,

        @Fact("First day of the last week in which it keeps its bed, if it is pulled early") @Nullable
        LocalDate until,

        @Fact(
                value =
                        "Number in the plan before of the planting that it was, where the plan was changed during the season",
                min = 1,
                max = 100000)
        @Nullable
        Integer was) {

    /** A planting of a plan made before its season. */
    public KeptPlanting(
            int number,
            String crop,
            String method,
            String bed,
            LocalDate sown,
            @Nullable Integer pool,
            @Nullable Integer standing,
            int lots,
            int plants) {
        this(number, crop, method, bed, sown, pool, standing, lots, plants, null, null, null);
    }

    /** The same planting by another number, having been another. */
    public KeptPlanting with(int otherNumber, @Nullable Integer itWas) {
        return new KeptPlanting(otherNumber, crop, method, bed, sown, pool, standing, lots, plants, out, until, itWas);
    }

    /** The same planting, planted out another day. */
    public KeptPlanting plantedOut(LocalDate day) {
        return new KeptPlanting(number, crop, method, bed, sown, pool, standing, lots, plants, day, until, was);
    }

    /** The same planting, pulled early: its last week. */
    public KeptPlanting pulledAfter(LocalDate week) {
        return new KeptPlanting(number, crop, method, bed, sown, pool, standing, lots, plants, out, week, was);
    }
}
