package bedwright.season;

import org.jspecify.annotations.Nullable;

/** Something that figures of the crop book come from. */
public record Source(
        @Fact(value = "Short name, with which what figures rest on begins", least = 1)
        String name,

        @Fact(value = "Who said what, and when", least = 1) String title,

        @Fact("Where it is to be found") @Nullable String where,

        @Fact("How it is known: its text, its abstract, another's account of it, or memory alone")
        Known known) {

    /** How much of a source was before one's eyes. */
    public enum Known {
        /** Its text, or a good part of it. */
        TEXT,
        /** Its abstract or summary. */
        ABSTRACT,
        /** What another says that it says. */
        ACCOUNT,
        /** Nothing: it is remembered. */
        MEMORY
    }
}
