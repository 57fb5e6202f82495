package bedwright.file;

/** Where the fuzzer hands in bytes as a weather file: {@code mvn -q -Dquick -Pfuzz test-compile exec:exec -Dfuzz=Weather}. */
public final class FuzzWeather {
    private FuzzWeather() {}

    /** Ends in an error if the bytes are neither read nor told to be at fault. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        FuzzTargets.weather(bytes);
    }
}
