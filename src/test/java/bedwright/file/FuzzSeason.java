package bedwright.file;

/** Where the fuzzer hands in bytes as a season file: {@code mvn -q -Dquick -Pfuzz test-compile exec:exec -Dfuzz=Season}. */
public final class FuzzSeason {
    private FuzzSeason() {}

    /** Ends in an error if the bytes are neither read nor told to be at fault. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        FuzzTargets.season(bytes);
    }
}
