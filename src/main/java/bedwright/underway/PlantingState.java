package bedwright.underway;

import bedwright.growth.Prospect;
import bedwright.growth.Weathered;
import bedwright.season.KeptPlanting;
import bedwright.season.Standing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a planting of the plan in force has become by a date.
 *
 * @param planned as the plan in force has it
 * @param stage how far it is
 * @param standing what it is in the season that is left; null for what is not begun, left out or written out
 * @param plants plants begun, or to be begun
 * @param left share that is left of them as far as noted: of all where they were counted, else of those expected
 * @param isCounted whether they were counted
 * @param cut stems cut so far, as noted
 * @param factor on the stems still to come, from what was cut
 * @param weathered what noted weather has most likely taken of it, if it stands
 * @param expected what to expect of it over the whole season, those weeks that are over among them; null where it is left
 *     out
 */
public record PlantingState(
        KeptPlanting planned,
        Stage stage,
        @Nullable Standing standing,
        int plants,
        double left,
        boolean isCounted,
        int cut,
        double factor,
        List<Weathered> weathered,
        @Nullable Prospect expected) {

    public PlantingState {
        weathered = List.copyOf(weathered);
    }

    /** How far a planting is. */
    public enum Stage {
        /** Not begun yet. */
        TO_COME,
        /** Left out: never sown or set. */
        LEFT_OUT,
        /** In trays. */
        RAISING,
        /** In the bed, not above ground. */
        SOWN,
        /** Above ground, not cut yet. */
        GROWING,
        /** In cut. */
        CUTTING,
        /** Cut for the last time, pulled or dead. */
        OVER
    }

    /** Its number. */
    public int number() {
        return planned.number();
    }

    /** Whether it was begun and is not over. */
    public boolean isAlive() {
        return stage == Stage.RAISING || stage == Stage.SOWN || stage == Stage.GROWING || stage == Stage.CUTTING;
    }

    /** Share from 0 to 1 of what else is left that noted weather has most likely taken, in the mean. */
    public double takenByWeather() {
        double left = 1;
        for (Weathered taken : weathered) {
            left *= 1 - taken.share();
        }
        return 1 - left;
    }

    /** Whether nobody saw it dead, but a noted night has most likely killed it: in more than half of the possible seasons. */
    public boolean isLikelyLost() {
        return isAlive()
                && weathered.stream().anyMatch(taken -> taken.cause() == Weathered.Cause.NIGHT && taken.share() > 0.5);
    }
}
