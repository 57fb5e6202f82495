package bedwright.climate;

/**
 * One damaging gust in the open.
 *
 * @param day day of the season on which it blows
 * @param side index of the side in {@code site.storms}, or −1 for a gust given outright from a side of its own
 * @param from direction from which it blows, degrees clockwise from north
 * @param speed m/s
 */
public record Gust(int day, int side, double from, double speed) {}
