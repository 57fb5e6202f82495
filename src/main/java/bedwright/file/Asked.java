package bedwright.file;

import bedwright.season.Fact;

/**
 * What a value is asked for.
 *
 * @param label how a message names it: {@code "weeks"}, or {@code entry 3 of "meanMin"}
 * @param path JSON pointer
 * @param fact what it means
 * @param hasDefault whether its key may be left out for a usual value
 */
record Asked(String label, String path, Fact fact, boolean hasDefault) {
    static Asked part(Layout.Part part, String path) {
        return new Asked(Words.quoted(part.key()), Pointer.to(path, part.key()), part.fact(), part.hasDefault());
    }

    Asked entry(int entry) {
        return new Asked("entry " + (entry + 1) + " of " + label, Pointer.to(path, entry), fact, false);
    }

    Asked under(String key) {
        return new Asked(Words.quoted(key) + " in " + label, Pointer.to(path, key), fact, false);
    }

    /** What it means, in brackets and with a space before it. */
    String meaning() {
        return " (" + fact.value() + ")";
    }
}
