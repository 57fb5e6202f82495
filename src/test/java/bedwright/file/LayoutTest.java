package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every record of the files, whatever is added to them. */
class LayoutTest {
    static Stream<Class<? extends Record>> records() {
        Set<Class<? extends Record>> found = new LinkedHashSet<>();
        find(Season.class, found);
        find(Plan.class, found);
        return found.stream();
    }

    private static void find(Class<? extends Record> type, Set<Class<? extends Record>> found) {
        if (found.add(type)) {
            Layout.of(type).parts().forEach(part -> find(part.shape(), found));
        }
    }

    private static void find(Shape shape, Set<Class<? extends Record>> found) {
        if (shape instanceof Shape.Group group) {
            find(group.type(), found);
        } else if (shape instanceof Shape.Many many) {
            find(many.each(), found);
        } else if (shape instanceof Shape.Named named) {
            find(named.each(), found);
        }
    }

    @Test
    void thereAreRecordsToLookAt() {
        assertThat(records()).hasSizeGreaterThan(30);
    }

    @ParameterizedTest
    @MethodSource("records")
    void everyDefaultIsAValueThatItsKeyAllows(Class<? extends Record> type) {
        assertThatCode(() -> Layout.of(type).parts().forEach(Defaults::of)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @MethodSource("records")
    void whatIsMarkedNullableMayBeLeftOut(Class<? extends Record> type) {
        for (Layout.Part part : Layout.of(type).parts()) {
            assertThat(part.nullable() && part.hasDefault())
                    .as("%s of %s is nullable and has a default", part.key(), type)
                    .isFalse();
        }
    }
}
