package bedwright;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher, with folders that look like JDKs and a java in them that only says how it was called. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    private static final Path SOURCE = Path.of("src/main/launcher/bedwright");

    @TempDir
    private Path temporary;

    private Path launcher;
    private Path jar;

    @BeforeEach
    void installInAFolderWithSpaces() throws IOException {
        // As the launcher sees it: on some systems the temporary folder is behind a link.
        Path installed = Files.createDirectories(temporary.toRealPath().resolve("my  farm/target"));
        launcher = Files.copy(SOURCE, installed.resolve("bedwright"));
        jar = Files.createFile(installed.resolve("bedwright.jar"));
        makeExecutable(launcher);
    }

    @Test
    void argumentsArriveAsTheyWereTyped() throws Exception {
        Path jdk = jdk("new jdk", "21.0.2");

        Run run = run(launcher, Map.of("BEDWRIGHT_JAVA", jdk.toString()), "plan", "two words", "", "*");

        assertThat(run.out()).endsWith("<-jar><" + jar + "><plan><two words><><*>");
    }

    /** What answers within seconds does without the slower of the two compilers, what searches does not. */
    @Test
    void onlyQuickCommandsGoWithoutTheSecondCompiler() throws Exception {
        Map<String, String> java = Map.of("BEDWRIGHT_JAVA", jdk("jdk", "21").toString());

        assertThat(run(launcher, java, "why", "plans/demo-farm", "14").out()).contains("<-XX:TieredStopAtLevel=1>");
        assertThat(run(launcher, java, "plan", "why").out()).doesNotContain("Tiered");
        assertThat(run(launcher, java, "promise", "plans/demo-farm").out()).contains("<-XX:TieredStopAtLevel=1>");
        assertThat(run(launcher, java, "promise", "plans/demo-farm", "--again", "5")
                        .out())
                .doesNotContain("Tiered");
        assertThat(run(launcher, java).out()).doesNotContain("Tiered");
    }

    @Test
    void theExitCodeIsTheProgramsOwn() throws Exception {
        assertThat(run(launcher, Map.of("BEDWRIGHT_JAVA", jdk("jdk", "21").toString()))
                        .exitCode())
                .isEqualTo(3);
    }

    @Test
    void javaTakesThePlaceOfTheLauncherSoThatSignalsReachIt() throws Exception {
        Run run = run(launcher, Map.of("BEDWRIGHT_JAVA", jdk("jdk", "21").toString()));

        assertThat(run.out()).startsWith("pid " + run.pid() + " ");
    }

    @Test
    void theJarIsFoundThroughLinks() throws Exception {
        Path bin = Files.createDirectories(temporary.resolve("home/bin"));
        Files.createSymbolicLink(bin.resolve("relative"), bin.toRealPath().relativize(launcher));
        Path link = Files.createSymbolicLink(bin.resolve("bw"), bin.resolve("relative"));

        Run run = run(link, Map.of("BEDWRIGHT_JAVA", jdk("jdk", "21").toString()));

        assertThat(run.out()).endsWith("<-jar><" + jar + ">");
    }

    @Test
    void anOwnJavaComesBeforeJavaHome() throws Exception {
        Run run = run(
                launcher,
                Map.of(
                        "BEDWRIGHT_JAVA",
                                jdk("own", "25.0.1").resolve("bin/java").toString(),
                        "JAVA_HOME", jdk("home", "25.0.1").toString()));

        assertThat(run.out()).contains(" own ");
    }

    @Test
    void anOwnJavaThatIsTooOldIsSaidAndLeftOut() throws Exception {
        Run run = run(
                launcher,
                Map.of(
                        "BEDWRIGHT_JAVA", jdk("own", "17.0.9").toString(),
                        "JAVA_HOME", jdk("home", "25.0.1").toString()));

        assertThat(run.out()).contains(" home ");
        assertThat(run.err()).contains("BEDWRIGHT_JAVA").contains("own").contains("21 or newer");
    }

    @Test
    void aJavaHomeThatIsTooOldIsLeftOutSilently() throws Exception {
        Path bin = Files.createDirectories(temporary.resolve("somewhere"));
        Files.createSymbolicLink(bin.resolve("java"), jdk("path", "22").resolve("bin/java"));

        Run run =
                run(launcher, Map.of("JAVA_HOME", jdk("home", "1.8.0_402").toString(), "PATH", bin + ":/usr/bin:/bin"));

        assertThat(run.out()).contains(" path ");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void aJavaWithoutAReleaseFileIsAsked() throws Exception {
        Path jdk = jdk("jdk", "21");
        Files.delete(jdk.resolve("release"));

        assertThat(run(launcher, Map.of("BEDWRIGHT_JAVA", jdk.toString())).out())
                .contains(" jdk ");
    }

    @Test
    void furtherOptionsGoToJava() throws Exception {
        Run run = run(
                launcher, Map.of("BEDWRIGHT_JAVA", jdk("jdk", "21").toString(), "BEDWRIGHT_OPTS", "-Xmx1g -Dstar=*"));

        assertThat(run.out()).contains("<-Xmx1g><-Dstar=*><-jar>");
    }

    @Test
    void withoutItsJarItSaysWhereItLookedAndHowToBuildOne() throws Exception {
        Files.delete(jar);

        Run run = run(launcher, Map.of("BEDWRIGHT_JAVA", jdk("jdk", "21").toString()));

        assertThat(run.exitCode()).isEqualTo(70);
        assertThat(run.err()).contains(jar.getParent().toString()).contains("mvn package");
        assertThat(run.out()).isEmpty();
    }

    /** A folder like a JDK's; its java says its process, its name and its arguments, and ends with 3. */
    private Path jdk(String name, String version) throws IOException {
        Path jdk = temporary.resolve(name);
        Path java = Files.createDirectories(jdk.resolve("bin")).resolve("java");
        Files.writeString(java, """
                #!/bin/sh
                if [ "$1" = -XshowSettings:properties ]; then
                    echo '    java.specification.version = 21' >&2
                    exit 0
                fi
                printf 'pid %s NAME ' $$
                printf '<%s>' "$@"
                exit 3
                """.replace("NAME", name));
        makeExecutable(java);
        Files.writeString(jdk.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\n");
        return jdk;
    }

    private Run run(Path program, Map<String, String> variables, String... arguments) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(program.toString());
        command.addAll(List.of(arguments));
        Path out = temporary.resolve("out");
        Path err = temporary.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(
                        Files.createDirectories(temporary.resolve("elsewhere")).toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        Map<String, String> environment = new HashMap<>(Map.of("PATH", "/usr/bin:/bin", "HOME", temporary.toString()));
        environment.putAll(variables);
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        int exitCode = process.waitFor();
        return new Run(process.pid(), exitCode, Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    }

    private static void makeExecutable(Path file) {
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private record Run(long pid, int exitCode, String out, String err) {}
}
