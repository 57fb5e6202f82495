package bedwright.command;

import bedwright.file.PlanFile;
import bedwright.file.Writing;
import bedwright.plan.Outcome;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.sheet.PlantingsCsv;
import bedwright.sheet.SeasonSheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * The folder that a plan lives in.
 *
 * @param folder the folder
 */
record PlanFolder(Path folder) {

    Path plan() {
        return folder.resolve("plan.json");
    }

    Path sheet() {
        return folder.resolve("season.html");
    }

    private Path plantings() {
        return folder.resolve("plantings.csv");
    }

    /** Reads the plan. */
    Plan read() {
        return PlanFile.read(plan());
    }

    /** Writes the plan with its sheet and table. */
    void write(Plan plan, PlanFacts facts, Outcome outcome) {
        write(plan(), PlanFile.text(plan));
        writePictures(plan, facts, outcome);
    }

    /** Writes sheet and table alone. */
    void writePictures(Plan plan, PlanFacts facts, Outcome outcome) {
        write(sheet(), SeasonSheet.html(facts, outcome, plan.making()));
        write(plantings(), PlantingsCsv.text(facts, outcome));
    }

    private static void write(Path file, String text) {
        Writing.write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
