package bedwright.exact;

import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A small season's best plan, as it is kept: a line of {@code benchmarks/search/small/proven.csv}. No plan breaks a hard
 * rule, so the hard score of the best is always 0.
 *
 * @param hash of the season's text when it was solved
 * @param medium {@code must} stems missing, as the score counts them
 * @param soft money, as the score counts it
 * @param seconds that the proof took
 * @param lots each of a few numbers: entry of the pool, bed, sow week, method (from 0), lots
 */
record Proven(
        long seed,
        String hash,
        long medium,
        long soft,
        String prover,
        double seconds,
        String date,
        String commit,
        List<List<Integer>> lots) {
    static final Path FILE = Path.of("benchmarks", "search", "small", "proven.csv");
    private static final String HEAD = "seed,season,hard,medium,soft,prover,seconds,date,commit,plan\n";

    /** All that are kept, in the order of the file. */
    static List<Proven> all() {
        if (!Files.exists(FILE)) {
            return List.of();
        }
        try {
            return Files.readAllLines(FILE).stream()
                    .skip(1)
                    .filter(line -> !line.isBlank())
                    .map(Proven::parse)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Proven parse(String line) {
        String[] cells = line.split(",", -1);
        List<List<Integer>> lots = new ArrayList<>();
        for (String planting : cells[9].strip().split(" ", -1)) {
            if (!planting.isEmpty()) {
                List<Integer> numbers = new ArrayList<>();
                for (String number : planting.split("/", -1)) {
                    numbers.add(Integer.valueOf(number));
                }
                lots.add(List.copyOf(numbers));
            }
        }
        return new Proven(
                Long.parseLong(cells[0]),
                cells[1],
                Long.parseLong(cells[3]),
                Long.parseLong(cells[4]),
                cells[5],
                Double.parseDouble(cells[6]),
                cells[7],
                cells[8],
                List.copyOf(lots));
    }

    /** Adds it to the file. */
    void keep() {
        try {
            if (!Files.exists(FILE)) {
                Files.writeString(FILE, HEAD);
            }
            Files.writeString(FILE, line(), StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String line() {
        StringBuilder plan = new StringBuilder();
        for (List<Integer> planting : lots) {
            plan.append(plan.isEmpty() ? "" : " ");
            for (int i = 0; i < planting.size(); i++) {
                plan.append(i == 0 ? "" : "/").append(planting.get(i));
            }
        }
        return String.format(
                Locale.ROOT,
                "%d,%s,0,%d,%d,%s,%.1f,%s,%s,%s%n",
                seed,
                hash,
                medium,
                soft,
                prover,
                seconds,
                date,
                commit,
                plan);
    }

    /** The numbers that stand for a plan. */
    static List<List<Integer>> numbers(Season season, List<KeptPlanting> plantings) {
        List<List<Integer>> all = new ArrayList<>();
        for (KeptPlanting planting : plantings) {
            Integer pool = planting.pool();
            if (pool == null) {
                throw new IllegalArgumentException("Nothing stands in a small season, but planting " + planting);
            }
            Crop crop = crop(season, planting.crop());
            int bed = season.allBeds().stream()
                    .filter(one -> one.name().equals(planting.bed()))
                    .findFirst()
                    .orElseThrow()
                    .index();
            int method = crop.methods().stream().map(Method::name).toList().indexOf(planting.method());
            all.add(List.of(pool - 1, bed, season.weekOf(planting.sown()), method, planting.lots()));
        }
        return all;
    }

    /** Its plan as plantings of the season. */
    List<KeptPlanting> plantings(Season season) {
        List<Bed> beds = season.allBeds();
        List<KeptPlanting> plantings = new ArrayList<>();
        for (List<Integer> planting : lots) {
            int pool = planting.get(0);
            Lots from = season.pool().get(pool);
            plantings.add(new KeptPlanting(
                    plantings.size() + 1,
                    from.crop(),
                    crop(season, from.crop()).methods().get(planting.get(3)).name(),
                    beds.get(planting.get(1)).name(),
                    season.weekStart(planting.get(2)),
                    pool + 1,
                    null,
                    planting.get(4),
                    planting.get(4) * from.plants()));
        }
        return plantings;
    }

    private static Crop crop(Season season, String name) {
        return season.crops().stream()
                .filter(crop -> crop.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
