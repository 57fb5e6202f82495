package bedwright.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Lots of the pool that the grower holds in place: every plan has them there, whatever else would be better. */
public record Held(
        @Fact("Crop") String crop,

        @Fact(value = "Lots of it", min = 1, max = 10000, byDefault = "1")
        int lots,

        @Fact("Bed") String bed,

        @Fact("First day of the week in which it is sown, set or started in trays")
        LocalDate sown,

        @Fact("Method") String method,

        @Fact(
                value = "Entry of the pool that the lots come from, from 1; left out: the first of the crop",
                min = 1,
                max = 100000)
        @Nullable
        Integer pool) {

    /** Index in the season's pool of the entry that the lots come from; −1 if there is none of that crop. */
    public int entry(Season season) {
        if (pool != null) {
            return pool <= season.pool().size()
                            && season.pool().get(pool - 1).crop().equals(crop)
                    ? pool - 1
                    : -1;
        }
        return season.pool().stream().map(Lots::crop).toList().indexOf(crop);
    }

    /** Whether it comes from the same entry and stands at the same place as another. */
    public boolean isBeside(Held other, Season season) {
        return entry(season) == other.entry(season)
                && bed.equals(other.bed)
                && sown.equals(other.sown)
                && method.equals(other.method);
    }

    /** Whether a planting of a plan stands where this is held. */
    public boolean isAt(KeptPlanting planting, Season season) {
        return planting.standing() == null
                && Objects.equals(planting.pool(), entry(season) + 1)
                && planting.bed().equals(bed)
                && planting.sown().equals(sown)
                && planting.method().equals(method);
    }

    /** The same with so many lots. */
    public Held with(int otherLots) {
        return new Held(crop, otherLots, bed, sown, method, pool);
    }

    /** Those that stand together as one, in the order of the first of them. */
    public static List<Held> together(Season season) {
        List<Held> all = new ArrayList<>();
        for (Held one : season.held()) {
            int at = -1;
            for (int i = 0; i < all.size(); i++) {
                at = all.get(i).isBeside(one, season) ? i : at;
            }
            if (at < 0) {
                all.add(one);
            } else {
                all.set(at, all.get(at).with(all.get(at).lots() + one.lots()));
            }
        }
        return List.copyOf(all);
    }
}
