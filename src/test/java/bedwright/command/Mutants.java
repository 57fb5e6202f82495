package bedwright.command;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Season files with something changed in them: bytes, numbers, texts, dates, keys, whole entries. Changes keep to the
 * shape of the file more often than not, since a file that breaks at once is read no further.
 */
final class Mutants {
    private static final Pattern NUMBER = Pattern.compile("(?<=[\\s:\\[,])-?[0-9]+(\\.[0-9]+)?");
    private static final Pattern TEXT = Pattern.compile("\"[^\"\\n]*\"");
    private static final Pattern DATE = Pattern.compile("\"[0-9]{4}-[0-9]{2}-[0-9]{2}\"");
    private static final Pattern ENTRY = Pattern.compile("\\{[^{}]*},?");
    private static final Pattern MEMBER =
            Pattern.compile("\"[a-zA-Z]+\": ?(\"[^\"\\n]*\"|-?[0-9.]+|\\[[^\\[\\]{}]*]),?");
    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "1",
            "-1",
            "2",
            "0.5",
            "0.1",
            "1e-9",
            "3",
            "7",
            "10",
            "80",
            "99",
            "100",
            "366",
            "500",
            "1000",
            "2000",
            "1e4",
            "1e5",
            "1e6",
            "1e9",
            "1e300",
            "1e309",
            "2147483647",
            "9223372036854775807",
            "0.3333333333");
    private static final List<String> TEXTS = List.of(
            "\"\"",
            "\" \"",
            "\"sown\"",
            "\"tray\"",
            "\"set\"",
            "\"plugs\"",
            "\"ends\"",
            "\"\\u0000\"",
            "\"<b>&amp;\"",
            "\"=1+1\"",
            "null",
            "true",
            "[]",
            "{}",
            "\"01-01\"",
            "\"12-31\"",
            "\"02-29\"");

    private final RandomGenerator random;
    private final List<String> whole;

    /**
     * @param whole files to change, one character a byte
     */
    Mutants(RandomGenerator random, List<String> whole) {
        this.random = random;
        this.whole = whole;
    }

    /** One of the files with one to four changes. */
    byte[] next() {
        String text = any(whole);
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            text = changed(text);
        }
        return text.getBytes(ISO_8859_1);
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private String changed(String text) {
        return switch (random.nextInt(16)) {
            case 0 -> bytes(text);
            case 1 -> cut(text);
            case 2 -> moved(text);
            case 3 -> replaced(text, TEXT, any(TEXTS));
            case 4, 5 -> swapped(text, TEXT);
            case 6, 7 -> swapped(text, DATE);
            case 8 -> swapped(text, ENTRY);
            case 9 -> twice(text, ENTRY);
            case 10 -> replaced(text, ENTRY, "");
            case 11 -> replaced(text, MEMBER, "");
            case 12 -> swapped(text, NUMBER);
            default -> replaced(text, NUMBER, number());
        };
    }

    private String number() {
        return switch (random.nextInt(3)) {
            case 0 -> any(NUMBERS);
            case 1 -> Integer.toString(random.nextInt(1000));
            default -> Double.toString(Math.round(random.nextDouble() * 1000) / 1000.0);
        };
    }

    private String bytes(String text) {
        char[] all = text.toCharArray();
        for (int i = 1 + random.nextInt(3); i > 0 && all.length > 0; i--) {
            all[random.nextInt(all.length)] = (char) random.nextInt(256);
        }
        return new String(all);
    }

    private String cut(String text) {
        int from = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), from + random.nextInt(60));
        return text.substring(0, from) + text.substring(to);
    }

    /** A piece of any of the files put in somewhere. */
    private String moved(String text) {
        String other = any(whole);
        int from = random.nextInt(other.length());
        int to = Math.min(other.length(), from + random.nextInt(200));
        int at = random.nextInt(text.length() + 1);
        return text.substring(0, at) + other.substring(from, to) + text.substring(at);
    }

    /** The first match behind a place anywhere, put differently. */
    private String replaced(String text, Pattern pattern, String by) {
        MatchResult[] found = found(text, pattern);
        return found.length == 0 ? text : put(text, found[random.nextInt(found.length)], by);
    }

    private String twice(String text, Pattern pattern) {
        MatchResult[] found = found(text, pattern);
        if (found.length == 0) {
            return text;
        }
        MatchResult one = found[random.nextInt(found.length)];
        return put(text, one, one.group() + (one.group().endsWith(",") ? "" : ",") + one.group());
    }

    /** One match put in the place of another. */
    private String swapped(String text, Pattern pattern) {
        MatchResult[] found = found(text, pattern);
        return found.length == 0
                ? text
                : put(text, found[random.nextInt(found.length)], found[random.nextInt(found.length)].group());
    }

    /** All matches in a window of the text, since a whole large file takes long. */
    private MatchResult[] found(String text, Pattern pattern) {
        int window = 4000;
        int from = text.length() <= window ? 0 : random.nextInt(text.length() - window);
        int to = Math.min(text.length(), from + window);
        return pattern.matcher(text)
                .region(from, to)
                .useTransparentBounds(true)
                .results()
                .toArray(MatchResult[]::new);
    }

    private static String put(String text, MatchResult at, String by) {
        return text.substring(0, at.start()) + by + text.substring(at.end());
    }

    /** Bytes as text with one character a byte. */
    static String text(byte[] bytes) {
        return new String(bytes, ISO_8859_1);
    }
}
