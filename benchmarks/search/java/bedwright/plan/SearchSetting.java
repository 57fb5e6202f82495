package bedwright.plan;

import java.util.Locale;

/**
 * What searches were measured on. Only what was measured on the same may be held against each other: a faster machine tries
 * more moves in the same seconds.
 *
 * @param machine its name, operating system and processors
 * @param jdk version and build
 */
public record SearchSetting(String machine, String jdk) {

    /** This machine, called what {@code -Dbench.machine} calls it, and this JVM. */
    static SearchSetting here() {
        return new SearchSetting(
                String.format(
                        Locale.ROOT,
                        "%s, %s %s, %d processors",
                        System.getProperty("bench.machine", "machine not named"),
                        System.getProperty("os.name"),
                        System.getProperty("os.arch"),
                        Runtime.getRuntime().availableProcessors()),
                System.getProperty("java.version") + " (" + System.getProperty("java.vendor.version", "vendor unknown")
                        + ")");
    }
}
