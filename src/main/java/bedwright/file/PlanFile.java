package bedwright.file;

import bedwright.season.Plan;
import java.nio.file.Path;

/** Plan files: a plan with the whole season that it was made for. */
public final class PlanFile {
    private PlanFile() {}

    /**
     * Reads a plan.
     *
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with all faults
     */
    public static Plan read(Path file) {
        return parse(file.toString(), Reading.bytes(file));
    }

    /**
     * The plan that these bytes hold.
     *
     * @param name what faults call the file
     * @throws FaultyFile if they are at fault, with all faults
     */
    public static Plan parse(String name, byte[] bytes) {
        return Document.read(name, bytes, Plan.class);
    }
}
