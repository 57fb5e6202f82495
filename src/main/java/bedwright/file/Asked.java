package bedwright.file;

import bedwright.season.Fact;
import org.jspecify.annotations.Nullable;

/**
 * What a value is asked for.
 *
 * @param label how a message names it: {@code "weeks"}, or {@code entry 3 of "meanMin"}
 * @param path JSON pointer
 * @param fact what it means
 * @param part the part that it is the value of; null for what stands within one
 */
record Asked(String label, String path, Fact fact, Layout.@Nullable Part part) {
    static Asked part(Layout.Part part, String path) {
        return new Asked(Words.quoted(part.key()), Pointer.to(path, part.key()), part.fact(), part);
    }

    Asked entry(int entry) {
        return new Asked("entry " + (entry + 1) + " of " + label, Pointer.to(path, entry), fact, null);
    }

    Asked under(String key) {
        return new Asked(Words.quoted(key) + " in " + label, Pointer.to(path, key), fact, null);
    }

    /** What stands where its key is left out, as it is written; empty where that is nothing, or more than one value. */
    String usual() {
        if (part == null || !part.hasDefault()) {
            return "";
        }
        String text = part.fact().byDefault();
        Object usual = Defaults.of(part);
        return text.startsWith("{") || text.startsWith("[") || text.startsWith("\"") || usual == null
                ? text
                : Unbinder.text(usual, part.shape());
    }

    /** What it means, in brackets and with a space before it. */
    String meaning() {
        return " (" + fact.value() + ")";
    }
}
