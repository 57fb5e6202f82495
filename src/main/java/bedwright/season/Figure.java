package bedwright.season;

import org.jspecify.annotations.Nullable;

/** Where a figure comes from and how sure it is. */
public record Figure(
        @Fact(value = "How sure it is: sure, fair or weak", byDefault = "\"fair\"")
        Sureness sure,

        @Fact("Where it comes from") @Nullable String source) {}
