package bedwright.season;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A bouquet recipe. */
public record Recipe(
        @Fact(value = "Name", least = 1) String name,

        @Fact(value = "What goes into one bouquet", least = 1)
        List<Line> lines,

        @Fact(value = "Minutes to make up one", unit = "min", min = 0, max = 1000, byDefault = "0")
        double making) {

    public Recipe {
        lines = List.copyOf(lines);
    }

    /** One line of a recipe. */
    public record Line(
            @Fact("Path of the kind") String kind,

            @Fact(value = "Stems in one bouquet", unit = "stems", min = 0, max = 1000)
            double stems,

            @Fact(value = "What the order pays for each such stem", unit = "money", min = 0)
            double price,

            @Fact(
                    value = "Price at which it is bought in, where the order buys in and this line differs",
                    unit = "money",
                    min = 0)
            @Nullable
            Double buyIn) {}
}
