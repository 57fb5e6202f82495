package bedwright.season;

import java.time.LocalDate;
import java.util.List;

/**
 * Prices of what a season has too little of, as they are kept beside a plan: what is the best possible follows from them.
 * All are in money of a mean season, the caution of the season included; those of stems and hired hours in the money of
 * the possible season that they belong to. Lists by week that are empty stand for nothing but 0.
 */
public record PriceList(
        @Fact(value = "Version of this file's form", min = 1, max = 1)
        int version,

        @Fact(value = "Weights of the possible seasons, as caution has them: as many as there are seasons", min = 0)
        List<Double> weights,

        @Fact(
                value = "What a stem that must be ours is worth, for a weight of 1",
                unit = "money",
                min = 0,
                byDefault = "0")
        double must,

        @Fact(
                value = "What an hour of work is worth beyond its pay, by week",
                unit = "money",
                min = 0,
                byDefault = "[]")
        List<Double> hours,

        @Fact(value = "What a cutting hour is worth, by week", unit = "money", min = 0, byDefault = "[]")
        List<Double> cutting,

        @Fact(
                value = "What a further hour costs more than an own one, by week and possible season",
                unit = "money",
                min = 0,
                byDefault = "[]")
        List<List<Double>> hired,

        @Fact(value = "What a cell of the bench is worth, by week", unit = "money", min = 0, byDefault = "[]")
        List<Double> bench,

        @Fact(value = "What a cell of the trays is worth, by week", unit = "money", min = 0, byDefault = "[]")
        List<Double> trays,

        @Fact(
                value = "What a metre of each net is worth, by net in the season's order and by week",
                unit = "money",
                min = 0,
                byDefault = "[]")
        List<List<Double>> nets,

        @Fact(value = "What a metre of row cover is worth, by week", unit = "money", min = 0, byDefault = "[]")
        List<Double> cover,

        @Fact(
                value = "What a lot is worth, by entry of the pool and then by standing planting",
                unit = "money",
                min = 0,
                byDefault = "[]")
        List<Double> lots,

        @Fact(
                value = "What a standing planting is charged for a metre of its bed, by standing planting",
                unit = "money",
                min = 0,
                byDefault = "[]")
        List<Double> standing,

        @Fact(value = "What stems are worth, by kind and week", byDefault = "[]")
        List<Stems> stems) {

    public PriceList {
        weights = List.copyOf(weights);
        hours = List.copyOf(hours);
        cutting = List.copyOf(cutting);
        hired = hired.stream().map(List::copyOf).toList();
        bench = List.copyOf(bench);
        trays = List.copyOf(trays);
        nets = nets.stream().map(List::copyOf).toList();
        cover = List.copyOf(cover);
        lots = List.copyOf(lots);
        standing = List.copyOf(standing);
        stems = List.copyOf(stems);
    }

    /** What stems of a kind are worth in a week. */
    public record Stems(
            @Fact("Kind of the season, a role or a path such as focal/warm")
            String kind,

            @Fact("First day of the week") LocalDate week,

            @Fact(
                    value =
                            "What somebody who asks for this kind pays more than for the kind above, by possible season",
                    unit = "money",
                    min = 0,
                    byDefault = "[]")
            List<Double> asked,

            @Fact(
                    value = "What the most that can be sold a week takes from a stem's worth, by possible season",
                    unit = "money",
                    min = 0,
                    byDefault = "[]")
            List<Double> most) {

        public Stems {
            asked = List.copyOf(asked);
            most = List.copyOf(most);
        }
    }
}
