package bedwright.season;

/** A plant family and how a bed rests from it. */
public record Family(
        @Fact(value = "Name", least = 1) String name,

        @Fact(
                value = "Whole calendar years that a bed should be without it",
                unit = "years",
                min = 0,
                max = 20,
                byDefault = "0")
        int restYears,

        @Fact(value = "Whether it may never come back sooner", byDefault = "false")
        boolean never) {}
