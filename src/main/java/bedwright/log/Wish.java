package bedwright.log;

import bedwright.season.KindTree;
import bedwright.season.Nearest;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Stems that somebody would like to have on a day: {@code 12 Sep: 120 focal warm, 60 spike white}.
 *
 * @param on the day
 * @param lines what they would like
 */
public record Wish(LocalDate on, List<Line> lines) {
    private static final Pattern LINE = Pattern.compile("(\\d{1,7})\\s+(?:x\\s+)?(.+)");
    private static final int MOST_NAMED = 6;

    public Wish {
        lines = List.copyOf(lines);
    }

    /**
     * Stems of a kind.
     *
     * @param kind its path in the season's tree of kinds, like {@code focal/warm}
     * @param stems how many, at least 1
     */
    public record Line(String kind, int stems) {}

    /**
     * Reads a wish.
     *
     * @throws IllegalArgumentException if it is not understood; the message says at which words, and what to write instead
     */
    public static Wish of(Season season, String said) {
        int colon = said.indexOf(':');
        if (colon < 0) {
            throw new IllegalArgumentException("There is no colon behind a day in \"" + said.strip()
                    + "\". Write it like: 12 Sep: 120 focal, 60 spike");
        }
        LocalDate on = SaidDay.toCome(season, said.substring(0, colon));
        return new Wish(on, lines(KindTree.of(season.roles()), said.substring(colon + 1)));
    }

    /** Reads the lines of a wish, likewise. */
    static List<Line> lines(KindTree kinds, String said) {
        List<Line> lines = new ArrayList<>();
        for (String one : said.split(",", -1)) {
            Matcher parts = LINE.matcher(one.strip());
            if (!parts.matches() || Integer.parseInt(parts.group(1)) == 0) {
                throw new IllegalArgumentException("\"" + one.strip()
                        + "\" is not stems of a kind. Write a number and a kind, like: 120 "
                        + spoken(kinds.path(0)));
            }
            String kind = kinds.path(kind(kinds, parts.group(2)));
            if (lines.stream().anyMatch(line -> line.kind().equals(kind))) {
                throw new IllegalArgumentException(
                        spoken(kind) + " stands there twice. Write it once, with all its stems.");
            }
            lines.add(new Line(kind, Integer.parseInt(parts.group(1))));
        }
        long stems = lines.stream().mapToLong(Line::stems).sum();
        if (stems > OrderSums.MOST_STEMS) {
            throw new IllegalArgumentException(stems + " stems are too many: no more than " + OrderSums.MOST_STEMS
                    + " in a week can be counted. Is a figure mistyped? Write fewer.");
        }
        return lines;
    }

    /** A path as it is said: {@code focal warm}. */
    public static String spoken(String path) {
        return path.replace('/', ' ');
    }

    /**
     * The kind that is meant by words: its whole path, or the end of it where that is the end of one path only.
     *
     * @return a node of the tree
     * @throws IllegalArgumentException if there is none or more than one; the message says which there are
     */
    public static int kind(KindTree kinds, String said) {
        String words = spoken(said).strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        List<Integer> ending = IntStream.range(0, kinds.size())
                .filter(node -> (" " + lower(kinds, node)).endsWith(" " + words))
                .boxed()
                .toList();
        for (int node : ending) {
            if (lower(kinds, node).equals(words)) {
                return node;
            }
        }
        if (ending.size() == 1) {
            return ending.getFirst();
        }
        if (ending.isEmpty()) {
            List<String> all = IntStream.range(0, kinds.size())
                    .mapToObj(node -> spoken(kinds.path(node)))
                    .toList();
            throw new IllegalArgumentException("There is no kind \"" + said.strip() + "\"."
                    + Nearest.of(said.strip(), all)
                            .map(near -> " Did you mean \"" + near + "\"?")
                            .orElse("")
                    + " The kinds begin with "
                    + named(kinds, IntStream.range(0, kinds.size()).boxed().toList()) + ".");
        }
        throw new IllegalArgumentException(
                "\"" + said.strip() + "\" may be more than one kind. Write " + named(kinds, ending) + ".");
    }

    private static String lower(KindTree kinds, int node) {
        return spoken(kinds.path(node)).toLowerCase(Locale.ROOT);
    }

    private static String named(KindTree kinds, List<Integer> nodes) {
        List<String> names = nodes.stream()
                .limit(MOST_NAMED)
                .map(node -> spoken(kinds.path(node)))
                .toList();
        return String.join(" or ", names) + (nodes.size() > MOST_NAMED ? " or another" : "");
    }
}
