package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Method;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a crop of the book is fitted into a season. */
class BookFitTest {
    private static BookFit fit(List<String> nets, boolean cover) {
        return new BookFit(Set.of("focal", "focal/warm", "focal/zinnia"), nets, Set.of(), cover);
    }

    private static Method marigold(String name) {
        CropBook book = CropBookFile.parse("small.json", Resources.bytes("book/small.json"));
        return BookFigures.find(book, "marigold").orElseThrow().methods().stream()
                .filter(method -> method.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aMethodUnderCoverNeedsOne() {
        assertThat(fit(List.of(), false).allows(marigold("tray, pinched"))).isFalse();
        assertThat(fit(List.of(), true).allows(marigold("tray, pinched"))).isTrue();
        assertThat(fit(List.of(), false).allows(marigold("sown"))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"'', net", "'wide,net', net", "'wide,narrow', wide"})
    void inPlaceOfANetThatTheSeasonDoesNotHaveStandsItsFirst(String nets, String used) {
        Crop crop = BookFigures.find(CropBookFile.ours(), "China aster").orElseThrow();

        assertThat(fit(nets.isEmpty() ? List.of() : List.of(nets.split(",", -1)), true)
                        .fit(crop)
                        .methods())
                .filteredOn(method -> method.name().equals("tray, netted"))
                .extracting(Method::net)
                .containsExactly(new Method.NetUse(used, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "focal/warm, focal/warm",
        "focal/warm/zinnia, focal/zinnia",
        "focal/warm/dahlia, focal/warm",
        "focal/white/dahlia, focal",
        "filler/white/dill, filler"
    })
    void theNearestKindIsTheFlowersThenTheColoursThenTheRole(String kind, String nearest) {
        assertThat(fit(List.of(), true).fit(kind)).isEqualTo(nearest);
    }
}
