package bedwright.season;

import java.util.List;

/** The crop book: crops and the ways they are grown, each figure with where it comes from and how sure it is. */
public record CropBook(
        @Fact(value = "Version of the book's form", min = 1, max = 1)
        int version,

        @Fact(value = "What holds for all its figures", least = 1)
        String about,

        @Fact(value = "What its figures come from", byDefault = "[]")
        List<Source> sources,

        @Fact(value = "Plant families, and how long a bed should rest from each", byDefault = "[]")
        List<Family> families,

        @Fact(value = "What figures rest on where a crop does not say otherwise", byDefault = "[]")
        List<Evidence> usual,

        @Fact(value = "Published figures that contradict one another, and how that was settled", byDefault = "[]")
        List<Settled> settled,

        @Fact(value = "The crops, by name", least = 1) List<BookCrop> crops) {

    public CropBook {
        sources = List.copyOf(sources);
        families = List.copyOf(families);
        usual = List.copyOf(usual);
        settled = List.copyOf(settled);
        crops = List.copyOf(crops);
    }

    /** Names of its crops, in its order. */
    public List<String> names() {
        return crops.stream().map(entry -> entry.crop().name()).toList();
    }

    /** Figures that contradict one another. */
    public record Settled(
            @Fact(value = "What about", least = 1) String about,

            @Fact(value = "What is said against what", least = 1)
            String contradiction,

            @Fact(value = "What the book takes, and why", least = 1)
            String taken) {}
}
