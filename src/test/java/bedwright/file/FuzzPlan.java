package bedwright.file;

/** Where the fuzzer hands in bytes as a plan file: {@code mvn -q -Dquick -Pfuzz test-compile exec:exec -Dfuzz=Plan}. */
public final class FuzzPlan {
    private FuzzPlan() {}

    /** Ends in an error if the bytes are neither read nor told to be at fault. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        FuzzTargets.plan(bytes);
    }
}
