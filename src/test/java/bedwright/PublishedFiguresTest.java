package bedwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The list of published figures names tests that there are, or says why there is none. */
class PublishedFiguresTest {
    private static final Pattern NAMED = Pattern.compile("`([a-z.]+\\.[A-Z]\\w+)#(\\w+)`");

    private static List<String> rows() throws IOException {
        return Files.readAllLines(Path.of("src/test/published-figures.md")).stream()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| figure"))
                .toList();
    }

    @Test
    void everyTestThatIsNamedExists() throws Exception {
        List<String> missing = new ArrayList<>();
        int named = 0;
        for (String row : rows()) {
            Matcher matcher = NAMED.matcher(row);
            while (matcher.find()) {
                named++;
                Class<?> type = Class.forName("bedwright." + matcher.group(1));
                if (Arrays.stream(type.getDeclaredMethods())
                        .noneMatch(method -> method.getName().equals(matcher.group(2)))) {
                    missing.add(matcher.group());
                }
            }
        }

        assertThat(missing).isEmpty();
        assertThat(named).isGreaterThan(30);
    }

    @Test
    void everyFigureHasATestOrAReason() throws IOException {
        assertThat(rows()).allMatch(row -> NAMED.matcher(row).find() || row.contains("No test: "));
    }
}
