package bedwright.season;

import java.util.List;

/** A crop of the book with what its figures rest on. */
public record BookCrop(
        @Fact("The crop, as it could stand in a season file; what its figures rest on stands beside it")
        Crop crop,

        @Fact(value = "What its figures rest on, where it is not the usual", least = 1)
        List<Evidence> evidence) {

    public BookCrop {
        evidence = List.copyOf(evidence);
    }
}
