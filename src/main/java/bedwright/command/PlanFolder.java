package bedwright.command;

import bedwright.file.PlanFile;
import bedwright.file.Writing;
import bedwright.season.Plan;
import bedwright.sheet.PlantingsCsv;
import bedwright.sheet.Sheet;
import bedwright.sheet.SheetFacts;
import bedwright.sheet.StemsPicture;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The folder that a plan lives in.
 *
 * @param folder the folder
 */
record PlanFolder(Path folder) {

    private static final String PLAN = "plan.json";
    private static final String SHEET = "season.html";

    Path plan() {
        return folder.resolve(PLAN);
    }

    Path sheet() {
        return folder.resolve(SHEET);
    }

    /** Reads the plan. */
    Plan read() {
        return PlanFile.read(plan());
    }

    /** Writes the plan with its sheet and table. */
    void write(Plan plan, SheetFacts facts) {
        Map<String, byte[]> files = pictures(facts);
        files.put(PLAN, PlanFile.bytes(plan));
        Writing.saveAll(folder, files);
    }

    /** Writes sheet and table alone. */
    void writePictures(SheetFacts facts) {
        Writing.saveAll(folder, pictures(facts));
    }

    private static Map<String, byte[]> pictures(SheetFacts facts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(SHEET, Sheet.html(facts).getBytes(StandardCharsets.UTF_8));
        files.put("plantings.csv", PlantingsCsv.of(facts).getBytes(StandardCharsets.UTF_8));
        files.put("stems.svg", StemsPicture.svg(facts).getBytes(StandardCharsets.UTF_8));
        return files;
    }
}
