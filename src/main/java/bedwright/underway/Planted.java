package bedwright.underway;

import bedwright.log.Beginning;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A planting as the plan in force has it.
 *
 * @param kept the planting
 * @param crop its crop
 * @param method its method
 * @param before the standing planting that it was before the season, or null if its lots came from the pool
 * @param beginning when it is begun and planted out
 */
record Planted(
        KeptPlanting kept,
        Crop crop,
        Method method,
        @Nullable Standing before,
        Beginning beginning) {

    /** @param season the season before it began */
    static Planted of(Season season, KeptPlanting kept) {
        Crop crop = season.crops().stream()
                .filter(one -> one.name().equals(kept.crop()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No crop named " + kept.crop()));
        Standing before = kept.pool() == null && kept.standing() != null
                ? season.standing().get(kept.standing() - 1)
                : null;
        Method method = crop.methods().stream()
                .filter(one -> one.name().equals(kept.method()))
                .findFirst()
                .orElse(crop.methods().getFirst());
        Beginning beginning = Beginning.of(season, kept);
        return new Planted(kept, crop, method, before, beginning);
    }

    /** Day of planting out, of what is raised in trays during the season, or null. */
    @Nullable
    LocalDate out() {
        return beginning.out();
    }

    private static boolean isSownBefore(Season season, Standing before) {
        LocalDate sown = before.sown();
        return sown != null && sown.isBefore(season.starts()) && before.bed() != null;
    }

    int number() {
        return kept.number();
    }

    int plants() {
        return kept.plants();
    }

    String bed() {
        return kept.bed();
    }

    LocalDate sown() {
        return kept.sown();
    }

    /** Whether it stood in its bed before the season began. */
    boolean stoodBefore(Season season) {
        return before != null && (before.isWritten() || before.clock() != null || isSownBefore(season, before));
    }

    /** The other methods of its crop. */
    List<Method> otherMethods() {
        return crop.methods().stream().filter(one -> !one.equals(method)).toList();
    }
}
