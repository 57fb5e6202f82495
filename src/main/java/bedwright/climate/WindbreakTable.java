package bedwright.climate;

import bedwright.season.Windbreak;

/**
 * Speed of the wind near a windbreak as a share of that in the open, by distance in heights of the windbreak. Straight
 * lines between the points of the tables, held below the first, 1 beyond the last.
 *
 * <p>Lee: J. R. Brandle and S. Finch, How Windbreaks Work, University of Nebraska Extension EC 1763, the table of wind
 * speed reductions by density; from memory. Windward: G. M. Heisler and D. R. DeWalle, Effects of windbreak structure
 * on wind flow, Agriculture, Ecosystems and Environment 22/23 (1988) 41–69, about the middle of what its figures show;
 * from memory, and weak. It hardly depends on density.
 */
final class WindbreakTable {
    private static final double[] LEE_AT = {5, 10, 15, 20, 25, 30};
    private static final double[] WINDWARD_AT = {1, 2, 5};
    private static final double[] WINDWARD = {0.75, 0.875, 0.95};

    private WindbreakTable() {}

    /** Share of the open wind in the lee of a windbreak. */
    static double lee(Windbreak.Density density, double heights) {
        return at(LEE_AT, lee(density), heights);
    }

    private static double[] lee(Windbreak.Density density) {
        return switch (density) {
            case SPARSE -> new double[] {0.50, 0.65, 0.80, 0.85, 0.95, 1.00};
            case MEDIUM -> new double[] {0.30, 0.50, 0.60, 0.75, 0.85, 0.95};
            case DENSE -> new double[] {0.25, 0.35, 0.65, 0.85, 0.90, 0.95};
            case SOLID -> new double[] {0.25, 0.70, 0.90, 0.95, 1.00, 1.00};
        };
    }

    /** Share of the open wind on the side from which it blows. */
    static double windward(double heights) {
        return at(WINDWARD_AT, WINDWARD, heights);
    }

    private static double at(double[] distances, double[] speeds, double heights) {
        if (!(heights >= 0)) {
            throw new IllegalArgumentException("A distance is 0 heights or more, not " + heights);
        }
        if (heights <= distances[0]) {
            return speeds[0];
        }
        for (int i = 1; i < distances.length; i++) {
            if (heights <= distances[i]) {
                double share = (heights - distances[i - 1]) / (distances[i] - distances[i - 1]);
                return speeds[i - 1] + share * (speeds[i] - speeds[i - 1]);
            }
        }
        return 1;
    }
}
