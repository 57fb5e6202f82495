package bedwright.log;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which notes count: those that no later note, counting itself, takes back. */
final class InForce {
    private InForce() {}

    /** @param entries by number */
    static List<Entry> of(List<Entry> entries) {
        Set<Integer> back = new HashSet<>();
        List<Entry> counting = new ArrayList<>();
        for (Entry entry : entries.reversed()) {
            if (!back.contains(entry.number())) {
                counting.add(entry);
                if (entry.note() instanceof Note.TakenBack taken) {
                    back.add(taken.number());
                }
            }
        }
        return List.copyOf(counting.reversed());
    }
}
