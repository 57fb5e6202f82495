package bedwright.season;

import java.util.List;

/** What some figures of a crop of the book rest on. */
public record Evidence(
        @Fact(value = "Keys of the figures that it speaks of, as in firstCut or stems", least = 1)
        List<String> of,

        @Fact(
                value =
                        "Methods whose figures they are; left out: the crop's, and those of all its methods where the crop has no such key",
                byDefault = "[]")
        List<String> methods,

        @Fact("How sure they are: sure, fair or weak") Sureness sure,

        @Fact("What they rest on: published, calculated, memory, practice or assumed")
        Origin from,

        @Fact(value = "Where they come from, in words", least = 1)
        String source) {

    public Evidence {
        of = List.copyOf(of);
        methods = List.copyOf(methods);
    }

    /** The same for one figure. */
    public Figure figure() {
        return new Figure(sure, from, source);
    }
}
