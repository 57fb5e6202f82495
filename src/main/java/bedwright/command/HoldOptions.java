package bedwright.command;

import bedwright.file.FaultyFile;
import bedwright.file.HeldEdit;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the grower wants held in place from now on. */
final class HoldOptions {
    private static final Pattern SOME_LOTS = Pattern.compile("([0-9]{1,4}) (.+)");

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--hold",
            paramLabel = "N[=BED[,DATE[,METHOD]]]",
            description = {
                "Hold a planting in place: No. 14 of the plan in --from, or else of the one in the plan's folder, as it"
                        + " stands there (14) or in another bed, week or way (14=Bed 3,2027-05-10; what is left out stays"
                        + " as it is). Or lots more of a crop: \"zinnia=Bed 3,2027-05-10,sown\", \"2 zinnia=…\". It is kept"
                        + " in the season file, under \"held\", until it is taken out there. May be given several times."
            })
    private List<String> holds = List.of();

    /**
     * What is held with what was said.
     *
     * @param edit the season file with it; null if nothing was said
     * @param season of the file, with it
     * @param plan whose plantings were spoken of; null if none were
     * @param begin its plantings, those that are held where they are held
     */
    record Holding(
            HeldEdit.@Nullable Edited edit,
            Season season,
            @Nullable Path plan,
            List<KeptPlanting> begin) {
        Holding {
            begin = List.copyOf(begin);
        }
    }

    /**
     * What is held in a season with what was said.
     *
     * @param plan folder of the plan whose plantings may be spoken of
     * @throws ParameterException if what was said can't be understood, or can't be so
     */
    Holding in(Path file, Season season, PlanFolder plan) {
        if (holds.isEmpty()) {
            return new Holding(null, season, null, List.of());
        }
        List<Held> held = new ArrayList<>(season.held());
        List<KeptPlanting> plantings = new ArrayList<>();
        for (String hold : holds) {
            int sign = hold.indexOf('=');
            String what = (sign < 0 ? hold : hold.substring(0, sign)).strip();
            String where = sign < 0 ? "" : hold.substring(sign + 1).strip();
            if (what.matches("[0-9]{1,6}")) {
                if (plantings.isEmpty()) {
                    plantings.addAll(plantings(hold, plan));
                }
                ofPlanting(hold, season, plantings, Integer.parseInt(what), where, held);
            } else {
                add(held, ofCrop(hold, season, what, where), season);
            }
        }
        try {
            HeldEdit.Edited edit = HeldEdit.of(file, held);
            return new Holding(edit, edit.season(), plantings.isEmpty() ? null : plan.plan(), plantings);
        } catch (FaultyFile e) {
            List<String> wrong = e.faults().stream()
                    .filter(fault -> fault.path().startsWith("/held/"))
                    .map(fault -> "--hold: " + fault.message())
                    .toList();
            if (wrong.size() < e.count()) {
                throw e;
            }
            throw usage(String.join(System.lineSeparator(), wrong));
        }
    }

    private List<KeptPlanting> plantings(String hold, PlanFolder folder) {
        if (!Files.exists(folder.plan())) {
            throw usage("--hold " + hold + " speaks of a planting of a plan, but there is none at " + folder.plan()
                    + ". Name its folder with --from, or plan once without --hold.");
        }
        Plan plan = folder.read();
        if (plan.plantings().isEmpty()) {
            throw usage("--hold " + hold + ": the plan in " + folder.folder() + " has no plantings");
        }
        return plan.plantings();
    }

    private void ofPlanting(
            String hold, Season season, List<KeptPlanting> plantings, int number, String where, List<Held> held) {
        KeptPlanting kept = plantings.stream()
                .filter(planting -> planting.number() == number)
                .findFirst()
                .orElseThrow(() -> usage("--hold " + hold + ": the plan has no planting No. " + number
                        + "; its plantings have the numbers "
                        + plantings.getFirst().number() + " to "
                        + plantings.getLast().number()));
        Integer pool = kept.pool();
        if (pool == null || kept.standing() != null) {
            throw usage("--hold " + hold + ": No. " + number + " (" + kept.crop()
                    + ") stands already or is bought, so it is in its place without being held; where that is still open,"
                    + " say it under \"standing\" in the season file");
        }
        if (pool > season.pool().size() || !season.pool().get(pool - 1).crop().equals(kept.crop())) {
            throw usage("--hold " + hold + ": No. " + number + " comes from entry " + pool + " (" + kept.crop()
                    + ") of the pool of the plan's season, which the season file has no more or of another crop. Make the"
                    + " plan anew without --hold first.");
        }
        Where place = where(hold, season, where);
        LocalDate sown = place.sown == null ? kept.sown() : place.sown;
        String bed = place.bed == null ? kept.bed() : place.bed;
        String method = place.method == null ? kept.method() : place.method;
        takeAway(held, kept, season);
        add(held, held(season, pool, kept.lots(), bed, sown, method), season);
        plantings.set(
                plantings.indexOf(kept),
                new KeptPlanting(number, kept.crop(), method, bed, sown, pool, null, kept.lots(), kept.plants()));
    }

    /** A planting that is held already is held otherwise from now on, not twice. */
    private static void takeAway(List<Held> held, KeptPlanting kept, Season season) {
        int lots = kept.lots();
        for (int i = held.size() - 1; i >= 0; i--) {
            Held one = held.get(i);
            if (one.isAt(kept, season)) {
                int less = Math.min(lots, one.lots());
                lots -= less;
                if (less == one.lots()) {
                    held.remove(i);
                } else {
                    held.set(i, one.with(one.lots() - less));
                }
            }
        }
    }

    private static void add(List<Held> held, Held more, Season season) {
        for (int i = 0; i < held.size(); i++) {
            if (held.get(i).isBeside(more, season)) {
                held.set(i, held.get(i).with(held.get(i).lots() + more.lots()));
                return;
            }
        }
        held.add(more);
    }

    /** The entry of the pool is named only where the crop has several. */
    private static Held held(Season season, int pool, int lots, String bed, LocalDate sown, String method) {
        String crop = season.pool().get(pool - 1).crop();
        boolean isFirst = season.pool().stream().map(Lots::crop).toList().indexOf(crop) == pool - 1;
        return new Held(crop, lots, bed, sown, method, isFirst ? null : pool);
    }

    private Held ofCrop(String hold, Season season, String what, String where) {
        List<String> crops = season.pool().stream().map(Lots::crop).distinct().toList();
        int lots = 1;
        String name = what;
        Matcher some = SOME_LOTS.matcher(what);
        if (!crops.contains(what) && some.matches()) {
            lots = Integer.parseInt(some.group(1));
            name = some.group(2).strip();
        }
        int entry = season.pool().stream().map(Lots::crop).toList().indexOf(name);
        if (entry < 0) {
            throw usage("--hold " + hold + ": \"" + name + "\" is neither the number of a planting nor a crop of the"
                    + " season's pool; there are: \"" + String.join("\", \"", crops) + "\"");
        }
        if (lots < 1) {
            throw usage("--hold " + hold + ": no lots would be held; say 1 or more");
        }
        String crop = name;
        List<String> methods = methods(season, crop);
        Where place = where(hold, season, where);
        Supplier<ParameterException> lacking =
                () -> usage("--hold " + hold + ": for lots of a crop say where, when and how: \"" + crop
                        + "=BED,DATE,METHOD\", by one of the methods \"" + String.join("\", \"", methods) + "\"");
        String method = place.method == null && methods.size() == 1 ? methods.getFirst() : place.method;
        if (place.bed == null || place.sown == null || method == null) {
            throw lacking.get();
        }
        return held(season, entry + 1, lots, place.bed, place.sown, method);
    }

    private static List<String> methods(Season season, String crop) {
        return season.crops().stream()
                .filter(one -> one.name().equals(crop))
                .map(Crop::methods)
                .flatMap(List::stream)
                .map(Method::name)
                .toList();
    }

    private record Where(
            @Nullable String bed,
            @Nullable LocalDate sown,
            @Nullable String method) {}

    /** Reads bed, date and method; a bed's name may hold commas, a method's too. */
    private Where where(String hold, Season season, String text) {
        String rest = text;
        String bed = null;
        if (!rest.isEmpty() && !rest.startsWith(",")) {
            String all = rest;
            bed = season.allBeds().stream()
                    .map(Bed::name)
                    .filter(name -> all.equals(name) || all.startsWith(name + ","))
                    .max(Comparator.comparingInt(String::length))
                    .orElseThrow(() -> noBed(hold, season, all));
            rest = rest.substring(bed.length());
        }
        rest = rest.startsWith(",") ? rest.substring(1).strip() : rest;
        int comma = rest.indexOf(',');
        String date = (comma < 0 ? rest : rest.substring(0, comma)).strip();
        String method = comma < 0 ? "" : rest.substring(comma + 1).strip();
        return new Where(bed, date.isEmpty() ? null : week(hold, season, date), method.isEmpty() ? null : method);
    }

    private ParameterException noBed(String hold, Season season, String rest) {
        String said = rest.contains(",") ? rest.substring(0, rest.indexOf(',')) : rest;
        return usage("--hold " + hold + ": no bed is named \"" + said + "\"; there are: \""
                + String.join("\", \"", season.allBeds().stream().map(Bed::name).toList())
                + "\""
                + (said.matches("[0-9]{4}-.*") ? ". To leave the bed as it is write a comma first: N=,DATE" : ""));
    }

    /** The first day of the week that a day lies in. */
    private LocalDate week(String hold, Season season, String date) {
        LocalDate day;
        try {
            day = LocalDate.parse(date);
        } catch (DateTimeParseException e) {
            throw usage("--hold " + hold + ": \"" + date
                    + "\" is not a day of the calendar, written year-month-day as 2027-04-19");
        }
        int week = season.weekOf(day);
        if (week < 0 || week >= season.weeks()) {
            throw usage("--hold " + hold + ": " + day + " lies outside the season, which runs from " + season.starts()
                    + " to " + season.dateOf(season.days() - 1));
        }
        return season.weekStart(week);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
