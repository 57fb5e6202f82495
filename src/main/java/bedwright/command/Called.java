package bedwright.command;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;

/** How this program is called where it lies: in examples, and in what to do next. */
final class Called {
    /** From the folder of the source, after a build. */
    static final String FROM_SOURCE = "target/bedwright";

    private static final String JAR = "bedwright.jar";

    private Called() {}

    /** As typed in the folder from which the examples work as pasted. */
    static String name() {
        CodeSource source = Called.class.getProtectionDomain().getCodeSource();
        try {
            return source == null || source.getLocation() == null
                    ? FROM_SOURCE
                    : name(
                            Path.of(source.getLocation().toURI()),
                            System.getProperty("os.name", "").startsWith("Windows"));
        } catch (URISyntaxException | IllegalArgumentException e) {
            return FROM_SOURCE;
        }
    }

    /** @param code where the program's classes lie */
    static String name(Path code, boolean isWindows) {
        Path folder = code.getParent();
        boolean isUnpacked = code.endsWith(JAR) && (folder == null || !folder.endsWith("target"));
        return !isUnpacked ? FROM_SOURCE : isWindows ? "bedwright" : "./bedwright";
    }

    /** A text with examples, as they are typed here. */
    static String in(String text) {
        return text.replace(FROM_SOURCE, name());
    }
}
