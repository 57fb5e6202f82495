package bedwright.sheet;

import bedwright.season.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is to be done in a week as a table, dearest to leave first; what is to be done alike shares a line. */
final class WeekWork {
    private static final String HARDEN = "out to harden";

    private final WeekFacts facts;
    private final WeekJobs jobs;
    private final Cautions cautions;
    private final JobWords words;

    WeekWork(WeekFacts facts, WeekJobs jobs) {
        this.facts = facts;
        this.jobs = jobs;
        this.cautions = new Cautions(facts.season());
        this.words = new JobWords(facts.season());
    }

    /** @param seen takes in the cautions that stand on the lines */
    Table table(int week, Set<Cautions.Mark> seen) {
        List<WeekJobs.Entry> entries = jobs.of(week);
        List<List<String>> rows = new ArrayList<>();
        Map<List<Object>, List<WeekJobs.Entry>> alike = new LinkedHashMap<>();
        for (WeekJobs.Entry entry : entries) {
            alike.computeIfAbsent(key(entry), k -> new ArrayList<>()).add(entry);
        }
        alike.values().forEach(same -> rows.add(row(same, seen)));
        long minutes = entries.stream().mapToLong(WeekJobs.Entry::minutes).sum();
        return new Table(
                "do-" + week,
                "What to do",
                List.of(
                        Table.Column.text("No. and planting"),
                        Table.Column.text("Where"),
                        Table.Column.number("Hours"),
                        Table.Column.text("Left a week"),
                        Table.Column.text("Last day"),
                        Table.Column.text("What to do")),
                rows,
                List.of(List.of("Together", "", Say.clock(minutes), "", "", "")));
    }

    /** Entries with equal keys share a line: what can wait and needs the same jobs, and else what reads the same. */
    private List<Object> key(WeekJobs.Entry entry) {
        String left = jobs.left(entry);
        boolean isSimple = entry.jobs().stream().noneMatch(job -> STARTS.contains(job));
        return entry.canWait() && isSimple
                ? List.of(entry.jobs(), entry.isHardened(), left)
                : List.of(
                        left,
                        jobs.by(entry),
                        what(entry),
                        isSimple ? "" : entry.planting().name());
    }

    private static final Set<Job> STARTS =
            Set.of(Job.PREPARE, Job.SOW, Job.FILL_TRAYS, Job.PLANT_OUT, Job.NET_UP, Job.COVER_ON);

    private String what(WeekJobs.Entry entry) {
        List<String> what = new ArrayList<>();
        if (entry.isHardened()) {
            what.add(HARDEN + ": " + words.harden(entry.planting()));
        }
        entry.lines().forEach(line -> what.add(words.of(entry.planting(), line.job())));
        return String.join("; ", what);
    }

    private List<String> row(List<WeekJobs.Entry> same, Set<Cautions.Mark> seen) {
        WeekJobs.Entry first = same.getFirst();
        Map<Cautions.Mark, List<String>> cares = new LinkedHashMap<>();
        for (WeekJobs.Entry entry : same) {
            for (Cautions.Mark care : cautions.of(entry.planting(), entry.jobs(), entry.isHardened())) {
                cares.computeIfAbsent(care, c -> new ArrayList<>())
                        .add(Integer.toString(entry.planting().number()));
            }
        }
        seen.addAll(cares.keySet());
        List<String> careful = new ArrayList<>();
        cares.forEach((care, numbers) -> careful.add(
                numbers.size() == same.size() ? care.word() : care.word() + " (" + String.join(", ", numbers) + ")"));
        boolean isOneCrop = same.stream()
                .allMatch(
                        entry -> entry.planting().name().equals(first.planting().name()));
        boolean readsAlike = same.stream()
                .allMatch(entry ->
                        what(entry).equals(what(first)) && jobs.by(entry).equals(jobs.by(first)));
        boolean areTogether = isOneCrop && readsAlike;
        return List.of(
                areTogether
                        ? String.join(
                                        ", ",
                                        same.stream()
                                                .map(entry -> Integer.toString(
                                                        entry.planting().number()))
                                                .toList())
                                + " " + first.planting().name()
                        : same.size() + " plantings",
                areTogether
                        ? String.join(
                                ", ",
                                same.stream()
                                        .map(entry -> facts.where().brief(entry.planting()))
                                        .toList())
                        : "",
                time(same.stream().mapToLong(WeekJobs.Entry::minutes).sum()),
                jobs.left(first),
                areTogether ? jobs.by(first) : "",
                (areTogether
                                ? sentence(what(first) + (same.size() > 1 && hasAmounts(first) ? ", each" : ""))
                                : ofSeveral(same))
                        + Cautions.words(careful));
    }

    private static boolean hasAmounts(WeekJobs.Entry entry) {
        return entry.isHardened()
                || entry.jobs().contains(Job.FILL_TRAYS)
                || entry.jobs().contains(Job.SOW)
                || entry.jobs().contains(Job.PLANT_OUT)
                || entry.jobs().contains(Job.PINCH);
    }

    /** The same jobs on several plantings, by crop. */
    private String ofSeveral(List<WeekJobs.Entry> same) {
        WeekJobs.Entry first = same.getFirst();
        List<String> what = new ArrayList<>();
        if (first.isHardened()) {
            what.add(HARDEN);
        }
        first.lines().forEach(line -> what.add(JobWords.ofAll(line.job())));
        Map<String, List<String>> byCrop = new LinkedHashMap<>();
        for (WeekJobs.Entry entry : same) {
            Shown planting = entry.planting();
            String more = entry.isHardened()
                    ? ", " + words.harden(planting)
                    : entry.jobs().contains(Job.PINCH)
                            ? ", " + Say.whole(planting.kept().plants()) + " plants"
                            : "";
            String by = jobs.by(entry);
            byCrop.computeIfAbsent(planting.name(), name -> new ArrayList<>())
                    .add(planting.number() + " " + facts.where().brief(planting) + more
                            + (by.isEmpty() ? "" : ", by " + by));
        }
        List<String> each = new ArrayList<>();
        byCrop.forEach((name, plantings) -> each.add(name + " " + String.join(", ", plantings)));
        return sentence(String.join("; ", what)).replaceAll("\\.$", ": ") + String.join("; ", each) + ".";
    }

    /** Hours and minutes; nothing for hardening, of which the plan counts none. */
    private static String time(long minutes) {
        return minutes == 0 ? "" : Say.clock(minutes);
    }

    private static String sentence(String words) {
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
