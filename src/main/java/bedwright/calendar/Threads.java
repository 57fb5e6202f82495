package bedwright.calendar;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Finds the plantings and events of a former calendar again in a new plan. */
final class Threads {
    private Threads() {}

    private record Pair(Map.Entry<String, Subject> former, Subject now, long distance) {}

    /**
     * A thread for each subject: that of the one most like it in the former calendar, each of which is taken once; for
     * what is new, one that follows from what it is.
     *
     * @param seed tells this calendar from others
     * @param former the former calendar's subjects that were not cancelled, by thread
     */
    static Map<Subject, String> of(String seed, Map<String, Subject> former, List<Subject> subjects) {
        List<Pair> pairs = new ArrayList<>();
        for (Map.Entry<String, Subject> old : former.entrySet()) {
            for (Subject now : subjects) {
                if (now.isAkin(old.getValue())) {
                    pairs.add(new Pair(old, now, now.distance(old.getValue())));
                }
            }
        }
        pairs.sort(Comparator.comparingLong(Pair::distance));
        Map<Subject, String> threads = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (Pair pair : pairs) {
            String thread = pair.former().getKey();
            if (!threads.containsKey(pair.now()) && taken.add(thread)) {
                threads.put(pair.now(), thread);
            }
        }
        taken.addAll(former.keySet());
        for (Subject now : subjects) {
            if (!threads.containsKey(now)) {
                String thread = fresh(seed, now, 1);
                for (int more = 2; !taken.add(thread); more++) {
                    thread = fresh(seed, now, more);
                }
                threads.put(now, thread);
            }
        }
        return threads;
    }

    private static String fresh(String seed, Subject subject, int time) {
        String all = seed + "\n" + String.join("\n", subject.parts()) + "\n" + time;
        return UUID.nameUUIDFromBytes(all.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
