package bedwright.season;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Sides of the compass by name, and in degrees clockwise from north. */
public final class Compass {
    private static final List<String> NAMES =
            List.of("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");
    private static final int BETWEEN = 45;

    private Compass() {}

    /** All names, clockwise from north. */
    public static List<String> names() {
        return NAMES;
    }

    /** The nearest of eight sides: "west", "south-east". */
    public static String name(double degrees) {
        return NAMES.get(Math.floorMod(Math.round(degrees / BETWEEN), NAMES.size()));
    }

    /** The degrees of a named side, with or without its hyphen; nothing if there is no such name. */
    public static OptionalDouble degrees(String name) {
        String said = name.strip().toLowerCase(Locale.ROOT).replace("-", "").replace(" ", "");
        for (int i = 0; i < NAMES.size(); i++) {
            if (NAMES.get(i).replace("-", "").equals(said)) {
                return OptionalDouble.of((double) i * BETWEEN);
            }
        }
        return OptionalDouble.empty();
    }
}
