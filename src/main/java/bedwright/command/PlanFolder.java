package bedwright.command;

import bedwright.file.HeldFolder;
import bedwright.file.PlanFile;
import bedwright.file.PriceFile;
import bedwright.file.Writing;
import bedwright.season.Plan;
import bedwright.season.PriceList;
import bedwright.sheet.PlantingsCsv;
import bedwright.sheet.Sheet;
import bedwright.sheet.SheetFacts;
import bedwright.sheet.StemsPicture;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The folder that a plan lives in.
 *
 * @param folder the folder
 */
record PlanFolder(Path folder) {

    private static final String PLAN = "plan.json";
    private static final String PRICES = "prices.json";
    private static final String SHEET = "season.html";
    private static final String LOG = "season.log";

    /** The folder that is named, or in which the named plan.json lies. */
    static PlanFolder at(Path named) {
        if (!Files.isRegularFile(named) || !named.endsWith(PLAN)) {
            return new PlanFolder(named);
        }
        Path parent = named.getParent();
        return new PlanFolder(parent == null ? Path.of("") : parent);
    }

    /**
     * Looks before a long search whether the plan could be written at its end; makes nothing.
     *
     * @throws Refusal if the folder, or the nearest one above it that exists, is none or can't be written to; or if notes
     *     lie in it, which would speak of other plantings afterwards
     */
    void mustBeWritable() {
        if (Files.exists(log())) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    log() + ": Notes were made of the plan in this folder, and a new plan would number its plantings"
                            + " otherwise. Name another folder with --out.");
        }
        Path there = folder.toAbsolutePath().normalize();
        while (Files.notExists(there) && there.getParent() != null) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there)) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    folder + ": The plan needs a folder, but " + there + " is a file. Name another folder with --out.");
        }
        if (!Files.isWritable(there)) {
            throw new Refusal(
                    Exit.FILE_TROUBLE,
                    folder + ": You may not write to " + there + ". Name another folder with --out.");
        }
    }

    Path plan() {
        return folder.resolve(PLAN);
    }

    Path prices() {
        return folder.resolve(PRICES);
    }

    /** What happened, in notes that speak of the plan's plantings by number. */
    Path log() {
        return folder.resolve(LOG);
    }

    Path sheet() {
        return folder.resolve(SHEET);
    }

    /** Reads the plan; if one was being written when a command was cut off, it is brought to an end first. */
    Plan read() {
        HeldFolder.settle(folder);
        return PlanFile.read(plan());
    }

    /**
     * Keeps other commands from writing in this folder, and brings to an end what one that was cut off left there.
     *
     * @throws bedwright.file.FileTrouble if another command holds it, or it can't be written in
     */
    HeldFolder hold() {
        return HeldFolder.of(folder);
    }

    /** Writes the plan with its sheet and table, and with prices if they were looked for. */
    void write(Plan plan, SheetFacts facts, @Nullable PriceList prices) {
        try (HeldFolder held = hold()) {
            write(held, plan, facts, prices);
        }
    }

    /**
     * Likewise, in a folder that is held already.
     *
     * @param held this folder
     */
    void write(HeldFolder held, Plan plan, SheetFacts facts, @Nullable PriceList prices) {
        Map<String, byte[]> files = pictures(facts);
        if (prices != null) {
            files.put(PRICES, PriceFile.bytes(prices));
        }
        files.put(PLAN, PlanFile.bytes(plan));
        held.save(files, prices == null ? List.of(PRICES) : List.of());
    }

    /**
     * Makes another plan that of this folder, with its sheet and table.
     *
     * @param held this folder
     * @param beside files that are kept beside it, by name
     * @param retired names of files that are of the plan before
     */
    void write(HeldFolder held, Plan plan, SheetFacts facts, Map<String, byte[]> beside, List<String> retired) {
        Map<String, byte[]> files = new LinkedHashMap<>(beside);
        files.putAll(pictures(facts));
        files.put(PLAN, PlanFile.bytes(plan));
        List<String> gone = new ArrayList<>(retired);
        gone.add(PRICES);
        held.save(files, gone);
    }

    /** Writes sheet and table alone. */
    void writePictures(SheetFacts facts) {
        Writing.saveAll(folder, pictures(facts));
    }

    /**
     * Writes a page beside the plan.
     *
     * @return where it lies
     */
    Path writePage(String name, String html) {
        Writing.saveAll(folder, Map.of(name, html.getBytes(StandardCharsets.UTF_8)));
        return folder.resolve(name);
    }

    private static Map<String, byte[]> pictures(SheetFacts facts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(SHEET, Sheet.html(facts).getBytes(StandardCharsets.UTF_8));
        files.put("plantings.csv", PlantingsCsv.of(facts).getBytes(StandardCharsets.UTF_8));
        files.put("stems.svg", StemsPicture.svg(facts).getBytes(StandardCharsets.UTF_8));
        return files;
    }
}
