package bedwright.log;

import bedwright.season.KindTree;
import bedwright.season.Outlet;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Stems of a kind in an order.
 *
 * @param kind its path in the season's tree of kinds
 * @param stems a week, at least 1
 * @param price of a stem; null in an order that was changed: as it was
 */
public record OrderLine(String kind, int stems, @Nullable Double price) {
    private static final Pattern PRICED = Pattern.compile("(.+?)\\s+at\\s+(\\d{1,6}(?:\\.\\d{1,4})?)");

    /**
     * Reads {@code 120 focal warm at 0.80, 60 spike}.
     *
     * @throws IllegalArgumentException if it is not understood; the message says at which words, and what to write instead
     */
    static List<OrderLine> of(Season season, String said, boolean isChange) {
        KindTree kinds = KindTree.of(season.roles());
        List<String> prices = new ArrayList<>();
        List<String> bare = new ArrayList<>();
        for (String one : said.split(",", -1)) {
            Matcher priced = PRICED.matcher(one.strip());
            boolean isPriced = priced.matches();
            prices.add(isPriced ? priced.group(2) : "");
            bare.add(isPriced ? priced.group(1) : one);
        }
        List<OrderLine> lines = new ArrayList<>();
        for (Wish.Line line : Wish.lines(kinds, String.join(",", bare))) {
            String price = prices.get(lines.size());
            OptionalDouble usual = usualPrice(season, line.kind());
            if (price.isEmpty() && usual.isEmpty()) {
                throw new IllegalArgumentException("Nobody in the season takes " + Wish.spoken(line.kind())
                        + ", so its price is not known. Write it too, like: " + line.stems() + " "
                        + Wish.spoken(line.kind()) + " at 0.80");
            }
            lines.add(new OrderLine(
                    line.kind(),
                    line.stems(),
                    price.isEmpty() ? (isChange ? null : usual.getAsDouble()) : Double.valueOf(price)));
        }
        return lines;
    }

    /** The best price at which anybody in the season takes a kind, by its own name or that of one that holds it. */
    public static OptionalDouble usualPrice(Season season, String kind) {
        return season.outlets().stream()
                .filter(outlet -> (kind + "/").startsWith(outlet.kind() + "/"))
                .mapToDouble(Outlet::price)
                .max();
    }
}
