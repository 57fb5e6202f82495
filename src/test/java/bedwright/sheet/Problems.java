package bedwright.sheet;

import bedwright.file.SeasonFile;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** Plans of all problems, each of no merit and made once for all tests. */
final class Problems {
    private static final Map<String, WeekFacts> MADE = new HashMap<>();

    private Problems() {}

    static Stream<String> names() {
        return Stream.of("first-bed", "tray-and-bed", "from-the-book", "farmers-problem", "demo-farm", "small");
    }

    static synchronized WeekFacts week(String problem) {
        return MADE.computeIfAbsent(
                problem,
                name -> WeekFacts.of(SmallFarm.facts(
                        name.equals("small")
                                ? SmallFarm.season()
                                : SeasonFile.read(Path.of("problems", name + ".json")))));
    }
}
