package bedwright.season;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A top kind of stems: focal, spike, filler, foliage and the like, with the work of cutting it. */
public record Role(
        @Fact(value = "Name of the role", least = 1) String name,

        @Fact(
                value = "Minutes to cut, strip and bunch 100 stems that go somewhere",
                unit = "min",
                min = 0,
                max = 10000,
                byDefault = "40")
        double cutting,

        @Fact(
                value = "Minutes to clear 100 stems that are left over",
                unit = "min",
                min = 0,
                max = 10000,
                byDefault = "0")
        double clearing,

        @Fact(
                value = "Stems of this role that can be sold in a week, to all together",
                unit = "stems",
                min = 0,
                max = 10000000)
        @Nullable
        Integer mostAWeek,

        @Fact(value = "Kinds within it", byDefault = "[]") List<Kind> kinds) {

    public Role {
        kinds = List.copyOf(kinds);
    }

    /** A kind within a role or within another kind; it is named by its path, as in {@code focal/warm/zinnia}. */
    public record Kind(
            @Fact(value = "Name of the kind", least = 1) String name,

            @Fact(
                    value = "Stems of this kind that can be sold in a week, to all together",
                    unit = "stems",
                    min = 0,
                    max = 10000000)
            @Nullable
            Integer mostAWeek,

            @Fact(value = "Kinds within it", byDefault = "[]")
            List<Kind> kinds) {

        public Kind {
            kinds = List.copyOf(kinds);
        }
    }
}
