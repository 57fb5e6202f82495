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
        return Document.read(name, bytes, Plan.class, PlanCheck::of).record();
    }

    /**
     * Writes a plan, keeping the file's former version beside it as NAME~.
     *
     * @throws FileTrouble if the file can't be written
     * @throws IllegalArgumentException if a value is out of its range, so that it could not be read back
     */
    public static void write(Plan plan, Path file) {
        Writing.save(file, bytes(plan));
    }

    /**
     * What stands in the file of a plan: the same bytes for equal plans, everywhere.
     *
     * @throws IllegalArgumentException if a value is out of its range, so that it could not be read back
     */
    public static byte[] bytes(Plan plan) {
        return Document.bytes(plan);
    }
}
