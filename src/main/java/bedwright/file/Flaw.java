package bedwright.file;

import java.util.Collection;
import java.util.List;

/**
 * Something that does not hold together in what a file says, although each value alone is right.
 *
 * @param path JSON pointer to the value that shows it
 * @param message what is wrong and how to mend it, in a grower's words
 * @param ofKey whether it shows in the key that the path ends in rather than in its value
 * @param restsOn pointers to the other values it was concluded from; a step {@code *} is any one
 */
record Flaw(String path, String message, boolean ofKey, List<String> restsOn) {
    Flaw {
        restsOn = List.copyOf(restsOn);
    }

    /** Whether a doubtful value is among those that this was concluded from. */
    boolean restsOnAny(Collection<String> doubtful) {
        return doubtful.stream()
                .anyMatch(path -> touches(this.path, path) || restsOn.stream().anyMatch(p -> touches(p, path)));
    }

    /** Whether one path is the other, or leads to it. */
    private static boolean touches(String pattern, String path) {
        List<String> wanted = Pointer.steps(pattern);
        List<String> steps = Pointer.steps(path);
        for (int i = 0; i < Math.min(wanted.size(), steps.size()); i++) {
            if (!wanted.get(i).equals("*") && !wanted.get(i).equals(steps.get(i))) {
                return false;
            }
        }
        return true;
    }
}
