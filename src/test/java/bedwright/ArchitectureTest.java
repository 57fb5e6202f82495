package bedwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds what lives where, and who may know whom. */
@AnalyzeClasses(packages = "bedwright", importOptions = ArchitectureTest.ProductOnly.class)
class ArchitectureTest {

    /** Leaves out tests and benchmarks, wherever the build puts their classes. */
    static final class ProductOnly implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("/test-classes/");
        }
    }

    /** Each package, and the only ones of ours that it may know. */
    private static final Map<String, Set<String>> MAY_KNOW = new LinkedHashMap<>();

    static {
        MAY_KNOW.put("season", Set.of());
        MAY_KNOW.put("weather", Set.of());
        MAY_KNOW.put("log", Set.of("season"));
        MAY_KNOW.put("table", Set.of());
        MAY_KNOW.put("file", Set.of("season", "weather", "table"));
        MAY_KNOW.put("climate", Set.of("season"));
        MAY_KNOW.put("station", Set.of("season", "weather", "climate"));
        MAY_KNOW.put("start", Set.of("season", "file"));
        MAY_KNOW.put("growth", Set.of("season", "climate"));
        // A second opinion on plans is worth something only while it shares no formula with the first.
        MAY_KNOW.put("recheck", Set.of("season", "climate"));
        MAY_KNOW.put("plan", Set.of("season", "climate", "growth", "recheck"));
        MAY_KNOW.put("underway", Set.of("season", "log", "climate", "growth"));
        MAY_KNOW.put("compare", Set.of("season", "climate", "growth", "recheck", "plan"));
        MAY_KNOW.put("sheet", Set.of("season", "table", "file", "climate", "growth", "plan", "compare"));
        MAY_KNOW.put("calendar", Set.of("season", "growth", "sheet"));
        MAY_KNOW.put("page", Set.of("season", "file", "climate", "growth", "plan", "compare", "sheet"));
        MAY_KNOW.put(
                "command",
                Set.of(
                        "season",
                        "weather",
                        "log",
                        "table",
                        "file",
                        "climate",
                        "station",
                        "start",
                        "growth",
                        "recheck",
                        "plan",
                        "underway",
                        "compare",
                        "sheet",
                        "calendar",
                        "page"));
    }

    @ArchTest
    static final ArchRule packagesKnowOnlyThoseToTheirLeft = knowledge();

    @ArchTest
    static final ArchRule everyClassLivesInAPackageThatIsNamedHere = classes()
            .should()
            .resideInAnyPackage(
                    MAY_KNOW.keySet().stream().map(ArchitectureTest::all).toArray(String[]::new));

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().matching("bedwright.(**)").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule solverStaysInPlan = only("plan", "ai.timefold..");

    @ArchTest
    static final ArchRule jsonStaysInFile = only("file", "tools.jackson..", "com.fasterxml.jackson..");

    @ArchTest
    static final ArchRule commandLineParserStaysInCommand = only("command", "picocli..");

    @ArchTest
    static final ArchRule nobodyAsksWhatTimeItIs = noClasses()
            .should()
            .accessTargetWhere(describe(
                    "is now() of java.time",
                    (JavaAccess<?> access) -> access.getTarget().getName().equals("now")
                            && resideInAPackage("java.time..")
                                    .test(access.getTarget().getOwner())))
            .because("the date is passed in, so that the same input gives the same output");

    @ArchTest
    static void oneClassAtMostKnowsTheSolversInside(JavaClasses ours) {
        Set<String> knowing = ours.stream()
                .filter(c -> c.getDirectDependenciesFromSelf().stream()
                        .anyMatch(d -> resideInAPackage("ai.timefold.solver.core.impl..")
                                .test(d.getTargetClass().getBaseComponentType())))
                .map(ArchitectureTest::outermost)
                .collect(Collectors.toSet());
        assertThat(knowing)
                .as("classes that use types of the solver's core.impl")
                .hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void everyPackageIsNullMarked() throws IOException {
        Path product = Path.of("src/main/java");
        Path benchmarks = Path.of("benchmarks/search/java");
        Set<Path> packages = packagesUnder(product);
        assertThat(packages).contains(Path.of("bedwright/command"));
        packages.addAll(packagesUnder(benchmarks));

        // A package of the benchmarks that the product or the tests have too is marked there.
        Path tests = Path.of("src/test/java");
        assertThat(packages)
                .as("packages without a package-info.java that says @NullMarked")
                .allMatch(folder ->
                        Stream.of(product, tests, benchmarks).anyMatch(root -> isNullMarked(root.resolve(folder))));
    }

    private static Set<Path> packagesUnder(Path root) throws IOException {
        if (!Files.isDirectory(root)) {
            return new TreeSet<>();
        }
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(file -> root.relativize(file.getParent()))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static boolean isNullMarked(Path folder) {
        Path info = folder.resolve("package-info.java");
        try {
            return Files.exists(info)
                    && Files.readString(info)
                            .lines()
                            .anyMatch(line -> line.strip().equals("@NullMarked"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LayeredArchitecture knowledge() {
        LayeredArchitecture layers =
                layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (String name : MAY_KNOW.keySet()) {
            layers = layers.layer(name).definedBy(all(name));
        }
        for (Map.Entry<String, Set<String>> entry : MAY_KNOW.entrySet()) {
            layers = entry.getValue().isEmpty()
                    ? layers.whereLayer(entry.getKey()).mayNotAccessAnyLayer()
                    : layers.whereLayer(entry.getKey())
                            .mayOnlyAccessLayers(entry.getValue().toArray(String[]::new));
        }
        return layers;
    }

    private static ArchRule only(String name, String... types) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(all(name))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(types)
                .allowEmptyShould(true);
    }

    private static String all(String name) {
        return "bedwright." + name + "..";
    }

    private static String outermost(JavaClass type) {
        return type.getName().replaceFirst("\\$.*", "");
    }
}
