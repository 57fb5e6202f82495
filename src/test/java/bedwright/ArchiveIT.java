package bedwright;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The archive that the build makes, unpacked on a machine that has a Java and nothing else. */
@DisabledOnOs(OS.WINDOWS)
class ArchiveIT {
    @TempDir
    private static Path temporary;

    private static Path home;

    private record Run(int code, String out, String err) {}

    @BeforeAll
    static void unpack() throws Exception {
        Path folder = Files.createDirectories(temporary.resolve("Größe, 花 farm"));
        Path archive = Path.of(System.getProperty("bedwright.archive"));
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            Enumeration<? extends ZipEntry> entries = zip.entries();
            while (entries.hasMoreElements()) {
                ZipEntry entry = entries.nextElement();
                Path file = folder.resolve(entry.getName()).normalize();
                assertThat(file.startsWith(folder)).as(entry.getName()).isTrue();
                if (entry.isDirectory()) {
                    Files.createDirectories(file);
                } else {
                    Files.createDirectories(file.getParent());
                    try (InputStream in = zip.getInputStream(entry)) {
                        Files.copy(in, file);
                    }
                }
            }
        }
        try (Stream<Path> roots = Files.list(folder)) {
            home = roots.findFirst().orElseThrow();
        }
        home.resolve("bedwright").toFile().setExecutable(true);
    }

    /** In the archive's folder, with a bare environment: no Maven, no locale, a Java by name only. */
    private static Run run(String... arguments) throws Exception {
        List<String> line = new ArrayList<>(List.of("./bedwright"));
        line.addAll(List.of(arguments));
        Path err = temporary.resolve("err");
        ProcessBuilder builder =
                new ProcessBuilder(line).directory(home.toFile()).redirectError(err.toFile());
        Map<String, String> environment = builder.environment();
        environment.clear();
        environment.put("PATH", "/usr/bin:/bin");
        environment.put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), out, Files.readString(err));
    }

    @Test
    void aSeasonIsPlannedAsItsReadmeSays() throws Exception {
        Run plan = run("plan", "problems/first-bed.json", "--moves", "200");

        assertThat(plan.code()).as(plan.err()).isZero();
        assertThat(home.resolve("plans/first-bed/season.html")).isNotEmptyFile();
        assertThat(Files.readString(home.resolve("README.txt"))).contains("./bedwright plan problems/first-bed.json");
    }

    @Test
    void namesOfFilesMayHaveLettersOfAnyAlphabet() throws Exception {
        Files.copy(home.resolve("problems/first-bed.json"), home.resolve("Frühling 花.json"));

        Run check = run("check", "Frühling 花.json");

        assertThat(check.code()).as(check.err()).isZero();
        assertThat(check.out()).contains("no fault");
    }

    @Test
    void examplesAreTypedAsTheyStandInHelp() throws Exception {
        assertThat(run("plan", "--help").out()).contains("  ./bedwright plan ").doesNotContain("target/bedwright");
    }

    @Test
    void theLauncherForUnixMayBeRun() throws Exception {
        try (FileSystem zip = FileSystems.newFileSystem(
                Path.of(System.getProperty("bedwright.archive")), Map.of("enablePosixFileAttributes", true))) {
            Path root = zip.getPath("/");
            try (Stream<Path> files = Files.walk(root)) {
                List<String> executable = files.filter(Files::isRegularFile)
                        .filter(ArchiveIT::isExecutable)
                        .map(file -> file.getFileName().toString())
                        .toList();
                assertThat(executable).containsExactly("bedwright");
            }
        }
    }

    private static boolean isExecutable(Path file) {
        try {
            return Files.getPosixFilePermissions(file).contains(PosixFilePermission.OTHERS_EXECUTE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theLauncherForWindowsHasItsEndsOfLines() throws IOException {
        String launcher = Files.readString(home.resolve("bedwright.bat"));

        assertThat(launcher.replace("\r\n", "")).doesNotContain("\n").isNotEmpty();
        assertThat(launcher).startsWith("@echo off\r\n");
    }

    @Test
    void cropBookAndProblemsAreThere() {
        assertThat(home.resolve("crop-book.json")).isNotEmptyFile();
        assertThat(home.resolve("problems/demo-farm.json")).isNotEmptyFile();
        assertThat(home.resolve("LICENSE")).isNotEmptyFile();
    }

    private static boolean holdsAnything(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.anyMatch(Files::isRegularFile);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What came without a licence of its own has one whose text is there. */
    @Test
    void ofAllThatIsCarriedTheLicenceIsThere() throws IOException {
        Path sbom = home.resolve("licences/sbom.json");
        assumeTrue(
                !System.getProperty("bedwright.offline", "").endsWith("true") || Files.exists(sbom),
                "made by a build with -o");
        JsonNode bom = JsonMapper.shared().readTree(Files.readString(sbom));
        List<String> folders;
        try (Stream<Path> files = Files.list(home.resolve("licences"))) {
            // A folder of nothing would be no licence.
            folders = files.filter(folder -> Files.isDirectory(folder) && holdsAnything(folder))
                    .map(folder -> folder.getFileName().toString())
                    .toList();
        }
        Map<String, String> without = new TreeMap<>();
        int components = 0;
        for (JsonNode component : bom.get("components")) {
            components++;
            String name = component.get("name").asString();
            String folder = name + "-" + component.get("version").asString();
            String licence = String.valueOf(component.get("licenses"));
            boolean hasItsText = licence.contains("Apache-2.0")
                    || licence.contains("CC0")
                    || licence.contains("GPL-2.0-with-classpath-exception")
                    || licence.contains("EDL")
                    || licence.contains("BSD-3-Clause");
            if (folders.stream().noneMatch(each -> each.startsWith(folder)) && !hasItsText) {
                without.put(name, licence);
            }
        }
        assertThat(components).isGreaterThan(20);
        assertThat(without).isEmpty();
    }
}
