package bedwright.season;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the farm has for raising, netting and covering. */
public record Stock(
        @Fact(value = "Tray cells that the bench holds", unit = "cells", min = 0, max = 10000000, byDefault = "0")
        int bench,

        @Fact("Trays owned; left out: never short of them") @Nullable
        Trays trays,

        @Fact(value = "Kinds of support net", byDefault = "[]")
        List<Net> nets,

        @Fact("Row cover, if there is any") @Nullable Cover cover) {

    public Stock {
        nets = List.copyOf(nets);
    }

    /** Trays, counted in cells, in use from sowing until planting out. */
    public record Trays(
            @Fact(value = "Cells owned", unit = "cells", min = 0, max = 10000000)
            int cells,

            @Fact(value = "Price of a cell more; left out: none can be bought", unit = "money", min = 0) @Nullable
            Double buy) {}

    /** A kind of support net. */
    public record Net(
            @Fact(value = "Name", least = 1) String name,

            @Fact(value = "Length owned, one layer", unit = "m", inFeet = "feet", min = 0, max = 1000000)
            double metres,

            @Fact(
                    value = "Price of a metre (in a file in feet: a foot) more; left out: none can be bought",
                    unit = "money",
                    each = true,
                    min = 0)
            @Nullable
            Double buy,

            @Fact(
                    value = "Wear of a metre (in a file in feet: a foot), each time it is used",
                    unit = "money",
                    each = true,
                    min = 0,
                    byDefault = "0")
            double wear,

            @Fact(
                    value = "How much stronger a gust the netted plants stand (assumed: no measured figure known)",
                    min = 1,
                    max = 5,
                    byDefault = "1.35")
            double strengthens) {}

    /** Row cover. */
    public record Cover(
            @Fact(value = "Length owned", unit = "m", inFeet = "feet", min = 0, max = 1000000)
            double metres,

            @Fact(
                    value = "Price of a metre (in a file in feet: a foot) more; left out: none can be bought",
                    unit = "money",
                    each = true,
                    min = 0)
            @Nullable
            Double buy,

            @Fact(
                    value = "Wear of a metre (in a file in feet: a foot), each time it is used",
                    unit = "money",
                    each = true,
                    min = 0,
                    byDefault = "0")
            double wear,

            @Fact(
                    value = "Degrees of frost that it keeps off",
                    unit = "°C difference",
                    min = 0,
                    max = 20,
                    byDefault = "2")
            double protects,

            @Fact(value = "Share of the pests that it lets through", min = 0, max = 1, byDefault = "0.1")
            double letsThrough) {}
}
