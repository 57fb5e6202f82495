package bedwright.problems;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.ProspectTable;
import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.KindTree;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Pest;
import bedwright.season.Recipe;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Stock;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every season file has to hold to. */
class ProblemsTest {
    static List<String> names() {
        return ProblemFiles.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void opensWithoutFaults(String name) {
        assertThat(ProblemFiles.season(name).name()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("names")
    void saysThatNothingInItIsReal(String name) {
        assertThat(ProblemFiles.season(name).about()).containsIgnoringCase("invented");
    }

    @ParameterizedTest
    @MethodSource("names")
    void namesTheSchema(String name) {
        assertThat(ProblemFiles.text(name))
                .contains("\"$schema\": \"../src/main/resources/bedwright/season.schema.json\"");
    }

    @ParameterizedTest
    @MethodSource("names")
    void hasOneLineOfItsOwnInTheReadme(String name) {
        assertThat(ProblemFiles.text("README.md").lines().filter(line -> line.startsWith("| `" + name + "` |")))
                .hasSize(1);
    }

    @Test
    void theReadmeNamesNoFileThatIsNotThere() {
        List<String> named = ProblemFiles.text("README.md")
                .lines()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(3, line.indexOf('`', 3)))
                .sorted()
                .toList();
        assertThat(named).isEqualTo(names());
    }

    @ParameterizedTest
    @MethodSource("names")
    void asksOnlyForWeeksAndThingsThatItHas(String name) {
        assertThat(strays(ProblemFiles.season(name))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("names")
    void mixesOfKindsAndCutSharesAddUpToOne(String name) {
        for (Crop crop : ProblemFiles.season(name).crops()) {
            assertThat(share(crop.kinds())).as(crop.name()).isCloseTo(1, within());
            for (Method method : crop.methods()) {
                List<Crop.KindShare> own = method.kinds();
                if (own != null) {
                    assertThat(share(own))
                            .as(crop.name() + ", " + method.name())
                            .isCloseTo(1, within());
                }
                assertThat(method.cutShares().stream().mapToDouble(s -> s).sum())
                        .as(crop.name() + ", " + method.name())
                        .isCloseTo(1, within());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyMethodOfThePoolComesIntoCutSomewhere(String name) {
        Season season = ProblemFiles.season(name);
        ProspectTable table = ProspectTable.of(season, List.of(PossibleSeasons.normal(season)));
        Set<String> missing = new LinkedHashSet<>();
        for (int stock = 0; stock < season.pool().size(); stock++) {
            Lots lots = season.pool().get(stock);
            Crop crop = crop(season, lots.crop());
            for (int m = 0; m < crop.methods().size(); m++) {
                if (mostStems(table, stock, m) < 25L * lots.plants()) {
                    missing.add(crop.name() + ", " + crop.methods().get(m).name());
                }
            }
        }
        assertThat(missing)
                .as("methods that nowhere give a quarter of a stem a plant")
                .isEmpty();
    }

    private static long mostStems(ProspectTable table, int stock, int method) {
        long most = 0;
        for (int place = table.firstPlace(stock); place < table.firstPlace(stock + 1); place++) {
            if (table.method(place) == method) {
                long stems = 0;
                for (int hundredths : table.stems(table.row(place))) {
                    stems += hundredths;
                }
                most = Math.max(most, stems);
            }
        }
        return most;
    }

    private static Offset<Double> within() {
        return Offset.offset(1e-9);
    }

    private static double share(List<Crop.KindShare> kinds) {
        return kinds.stream().mapToDouble(Crop.KindShare::share).sum();
    }

    static Crop crop(Season season, String name) {
        return season.crops().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** All names in a season that name nothing, and weeks that lie outside of it. */
    private static Set<String> strays(Season season) {
        Set<String> strays = new TreeSet<>();
        Set<String> families = names(season.families().stream().map(Family::name));
        Set<String> pests = names(season.pests().stream().map(Pest::name));
        Set<String> nets = names(season.stock().nets().stream().map(Stock.Net::name));
        Set<String> recipes = names(season.recipes().stream().map(Recipe::name));
        Set<String> crops = names(season.crops().stream().map(Crop::name));
        Set<String> beds = names(season.allBeds().stream().map(Bed::name));
        Set<String> kinds = new TreeSet<>();
        KindTree tree = KindTree.of(season.roles());
        for (int node = 0; node < tree.size(); node++) {
            kinds.add(tree.path(node));
        }
        for (Crop crop : season.crops()) {
            if (crop.family() != null && !families.contains(crop.family())) {
                strays.add("family " + crop.family());
            }
            addStrays(strays, "pest ", crop.appeal().keySet(), pests);
            addStrays(strays, "kind ", names(crop.kinds().stream().map(Crop.KindShare::kind)), kinds);
            for (Method method : crop.methods()) {
                List<Crop.KindShare> own = method.kinds();
                if (own != null) {
                    addStrays(strays, "kind ", names(own.stream().map(Crop.KindShare::kind)), kinds);
                }
                Method.NetUse net = method.net();
                if (net != null && !nets.contains(net.net())) {
                    strays.add("net " + net.net());
                }
            }
        }
        for (BedBlock block : season.beds()) {
            addStrays(strays, "family ", names(block.history().stream().map(BedBlock.Grown::family)), families);
        }
        addStrays(strays, "crop ", names(season.pool().stream().map(Lots::crop)), crops);
        addStrays(strays, "crop ", names(season.standing().stream().map(Standing::crop)), crops);
        for (Standing standing : season.standing()) {
            if (standing.bed() != null && !beds.contains(standing.bed())) {
                strays.add("bed " + standing.bed());
            }
            if (standing.method() != null
                    && crop(season, standing.crop()).methods().stream()
                            .noneMatch(m -> m.name().equals(standing.method()))) {
                strays.add("method " + standing.method());
            }
        }
        for (Outlet outlet : season.outlets()) {
            addStrays(strays, "kind ", Set.of(outlet.kind()), kinds);
            outlet.asks().forEach(ask -> addStrayWeek(strays, season, ask.from(), ask.to()));
        }
        for (Order order : season.orders()) {
            addStrays(strays, "recipe ", Set.of(order.recipe()), recipes);
            order.asks().forEach(ask -> addStrayWeek(strays, season, ask.from(), ask.to()));
        }
        for (Recipe recipe : season.recipes()) {
            addStrays(strays, "kind ", names(recipe.lines().stream().map(Recipe.Line::kind)), kinds);
        }
        return strays;
    }

    private static Set<String> names(Stream<String> names) {
        return new TreeSet<>(names.toList());
    }

    private static void addStrays(Set<String> strays, String what, Set<String> used, Set<String> known) {
        used.stream().filter(name -> !known.contains(name)).forEach(name -> strays.add(what + name));
    }

    private static void addStrayWeek(Set<String> strays, Season season, LocalDate from, @Nullable LocalDate to) {
        for (LocalDate day : to == null ? List.of(from) : List.of(from, to)) {
            if (season.dayOf(day) % 7 != 0 || season.weekOf(day) < 0 || season.weekOf(day) >= season.weeks()) {
                strays.add("week of " + day);
            }
        }
    }
}
