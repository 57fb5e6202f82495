package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Season files in which something was changed, from seeds: the answer is a check without fault, a plan, or faults with
 * their places; never a stack trace, and never after long. 2,000 files in every build; {@code -Pmany} has 1,000,000 and
 * half a gigabyte of memory; {@link #main} runs them in parts.
 */
class MutatedFilesTest {
    private static final int FILES = Integer.getInteger("bedwright.mutants", 2000);
    private static final int FILES_A_SEED = 500;
    /** Of the files without a fault every so many is planned, too. */
    private static final int PLANNED = 20;
    /** The large file is read for one in so many. */
    private static final int LARGE = 20;

    private static final Duration LONGEST = Duration.ofSeconds(10);
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Path temporary;
    private int faultless;

    MutatedFilesTest(@TempDir Path temporary) {
        this.temporary = temporary;
    }

    /**
     * Runs the files of so many seeds, {@value #FILES_A_SEED} each, and tells each that was answered wrongly.
     *
     * @param args the first seed, and how many
     */
    public static void main(String[] args) throws IOException {
        long first = Long.parseLong(args[0]);
        int count = Integer.parseInt(args[1]);
        Path folder = Files.createTempDirectory("mutants");
        int wrong = 0;
        for (int n = 1; n <= count; n++) {
            long seed = first + n - 1;
            try {
                new MutatedFilesTest(folder).theAnswerIsNeverAStackTrace(seed);
            } catch (AssertionError e) {
                wrong++;
                System.out.println("WRONG: " + e.getMessage());
            }
            if (n % 20 == 0 || n == count) {
                System.out.printf(
                        Locale.ROOT,
                        "Seeds %d to %d: %d files, %d seeds with a wrong answer, %.0f s of processor time.%n",
                        first,
                        seed,
                        (long) n * FILES_A_SEED,
                        wrong,
                        THREADS.getCurrentThreadCpuTime() / 1e9);
            }
        }
        System.exit(wrong == 0 ? 0 : 1);
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, FILES / FILES_A_SEED);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theAnswerIsNeverAStackTrace(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        Mutants small = new Mutants(random, files(0, 20_000));
        Mutants large = new Mutants(random, files(20_000, Long.MAX_VALUE));
        Path file = temporary.resolve("mutant.json");
        for (int i = 0; i < FILES_A_SEED; i++) {
            boolean isLarge = random.nextInt(LARGE) == 0;
            Files.write(file, isLarge ? large.next() : small.next());
            Ran check = soon(seed, i, "check", file);
            assertAnswered(seed, i, check, Exit.DONE, Exit.FAULTY_FILE);
            if (check.code() == Exit.DONE && !isLarge && ++faultless % PLANNED == 0) {
                Ran plan =
                        soon(seed, i, "plan", file, "--moves", 1, "--seasons", 2, "--out", temporary.resolve("plan"));
                assertAnswered(seed, i, plan, Exit.DONE, Exit.RULE_BROKEN);
            }
        }
        // Else too much would break at once for the checks behind to be tried.
        assertThat(faultless).isGreaterThan(FILES_A_SEED / 20);
    }

    private static List<String> files(long from, long to) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("problems"))) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file ->
                            file.toFile().length() >= from && file.toFile().length() < to)
                    .sorted()
                    .map(file -> {
                        try {
                            return Mutants.text(Files.readAllBytes(file));
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    })
                    .toList();
        }
    }

    /** What came of it, within the time allowed: the thread's own, so that a busy machine makes no difference. */
    private static Ran soon(long seed, int i, Object... args) {
        long before = THREADS.getCurrentThreadCpuTime();
        Ran ran = Ran.of(args);
        assertThat(Duration.ofNanos(THREADS.getCurrentThreadCpuTime() - before))
                .as("time for file %d of seed %d", i, seed)
                .isLessThan(LONGEST);
        return ran;
    }

    private static void assertAnswered(long seed, int i, Ran ran, Integer... codes) {
        assertThat(ran.code()).as("file %d of seed %d: %s", i, seed, ran.err()).isIn((Object[]) codes);
        assertThat(ran.err()).doesNotContain("Exception", "\tat ");
        if (ran.code() == Exit.FAULTY_FILE) {
            assertThat(ran.err()).matches("(?s).*:[1-9]\\d*:[1-9]\\d*: .*nothing was written\\.\\s*");
        }
    }
}
