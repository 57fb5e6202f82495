package bedwright.season;

import org.jspecify.annotations.Nullable;

/** Where a figure comes from and how sure it is. */
public record Figure(
        @Fact(value = "How sure it is: sure, fair or weak", byDefault = "\"fair\"")
        Sureness sure,

        @Fact("What it rests on: published, calculated, memory, practice, assumed or own") @Nullable
        Origin from,

        @Fact("Where it comes from, in words") @Nullable String source) {

    /** A figure of which nothing more is known than how sure it is. */
    public Figure(Sureness sure, @Nullable String source) {
        this(sure, null, source);
    }
}
