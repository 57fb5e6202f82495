package bedwright.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Gathers flaws, and the checks that many kinds of things share. */
final class Flaws {
    private final List<Flaw> found;
    private final boolean ofKeys;

    Flaws() {
        this(new ArrayList<>(), false);
    }

    private Flaws(List<Flaw> found, boolean ofKeys) {
        this.found = found;
        this.ofKeys = ofKeys;
    }

    /** The same flaws, for checks of keys: what is added shows in the key that its path ends in. */
    Flaws ofKeys() {
        return new Flaws(found, true);
    }

    List<Flaw> found() {
        return found;
    }

    /**
     * @param restsOn other paths that it was concluded from
     */
    void add(String path, String message, String... restsOn) {
        found.add(new Flaw(path, message, ofKeys, List.of(restsOn)));
    }

    /**
     * Tells of a name that nothing has.
     *
     * @param what as in {@code crop %s}
     * @param names all that there are
     * @param restsOn where these names stand
     */
    void unlessKnown(String path, String what, String name, List<String> names, String... restsOn) {
        if (!names.contains(name)) {
            String near = Words.didYouMean(name, names);
            String known = names.isEmpty()
                    ? " There is none at all. Add it, or take this away."
                    : " There is " + Words.and(names) + ". Mend the name, or add it there.";
            add(
                    path,
                    "There is no " + what.replace("%s", Words.quoted(name)) + "." + (near.isEmpty() ? known : near),
                    restsOn);
        }
    }

    /**
     * Tells of names that stand twice.
     *
     * @param what as in {@code crop}
     * @param pathOf path of the name of an entry, by its number
     */
    void unlessDifferent(String what, List<String> names, Function<Integer, String> pathOf) {
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            Integer before = first.putIfAbsent(names.get(i), i);
            if (before != null) {
                add(
                        pathOf.apply(i),
                        "There is another " + what + " " + Words.quoted(names.get(i)) + " before this one. Names must"
                                + " differ: give one of them another.",
                        pathOf.apply(before));
            }
        }
    }

    /** Tells of shares that don't add up to 1 within a millionth. */
    void unlessWhole(String path, String what, List<Double> shares) {
        double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
        if (Math.abs(sum - 1) > 1e-6) {
            add(
                    path,
                    "The shares of " + what + " add up to " + Words.number(Math.round(sum * 1e6) / 1e6)
                            + ", but they must add up to 1. Change one of them by "
                            + Words.number(Math.round((1 - sum) * 1e6) / 1e6) + ".");
        }
    }
}
