package bedwright.calendar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A calendar that was written before.
 *
 * @param entries its entries' lines by UID, in order
 */
record Published(Map<String, List<String>> entries) {
    static final String PRODUCT = "-//Bedwright//Jobs and events of a season//EN";
    static final String SUBJECT = "X-BEDWRIGHT-SUBJECT";
    private static final int THREAD = 36;

    /** No calendar yet. */
    static Published none() {
        return new Published(Map.of());
    }

    /**
     * Reads a calendar that Bedwright wrote.
     *
     * @throws IllegalArgumentException if somebody else wrote it; the message says so
     */
    static Published read(String file) {
        List<String> lines = ContentLines.unfolded(file);
        if (!lines.contains("PRODID:" + PRODUCT)) {
            String product = lines.stream()
                    .filter(line -> line.startsWith("PRODID"))
                    .findFirst()
                    .orElse("no PRODID");
            throw new IllegalArgumentException(
                    "This is not a calendar that Bedwright wrote (it says: " + product + ")");
        }
        Map<String, List<String>> entries = new LinkedHashMap<>();
        List<String> entry = new ArrayList<>();
        for (String line : lines) {
            if (line.equals("BEGIN:VEVENT")) {
                entry = new ArrayList<>();
            } else if (line.equals("END:VEVENT")) {
                String uid = value(entry, "UID").orElse("");
                if (uid.length() <= THREAD
                        || value(entry, SUBJECT)
                                .flatMap(v -> Subject.of(ContentLines.texts(v)))
                                .isEmpty()) {
                    throw new IllegalArgumentException(
                            "This calendar was changed after Bedwright wrote it: the entry with the UID \"" + uid
                                    + "\" is not ours");
                }
                entries.put(uid, List.copyOf(entry));
            } else {
                entry.add(line);
            }
        }
        return new Published(entries);
    }

    /** What it speaks of, by thread; without what is cancelled as a whole. */
    Map<String, Subject> subjects() {
        Map<String, Subject> subjects = new LinkedHashMap<>();
        entries.forEach((uid, lines) -> {
            if (!isCancelled(lines)) {
                value(lines, SUBJECT)
                        .flatMap(v -> Subject.of(ContentLines.texts(v)))
                        .ifPresent(subject -> subjects.putIfAbsent(uid.substring(0, THREAD), subject));
            }
        });
        return subjects;
    }

    static boolean isCancelled(List<String> lines) {
        return lines.contains("STATUS:CANCELLED");
    }

    /** The how manieth version of itself an entry is, from 0. */
    static int sequence(List<String> lines) {
        return value(lines, "SEQUENCE")
                .filter(v -> v.matches("[0-9]{1,8}"))
                .map(Integer::parseInt)
                .orElse(0);
    }

    private static Optional<String> value(List<String> lines, String name) {
        return lines.stream()
                .filter(line -> line.startsWith(name + ":"))
                .map(line -> line.substring(name.length() + 1))
                .findFirst();
    }
}
