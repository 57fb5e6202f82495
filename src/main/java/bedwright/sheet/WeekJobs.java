package bedwright.sheet;

import bedwright.growth.Course;
import bedwright.plan.Delays;
import bedwright.plan.Rule;
import bedwright.season.Job;
import bedwright.season.Method;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What is to be done on the plantings of a week, dearest to leave first. */
final class WeekJobs {
    /** What is said of jobs of which the plan does not know what leaving them does. */
    static final String NO_FIGURE = "no figure";

    private final WeekFacts facts;
    private final Season season;
    private final Say say;
    private final Delays delays;

    WeekJobs(WeekFacts facts, Delays delays) {
        this.facts = facts;
        this.season = facts.season();
        this.say = new Say(season);
        this.delays = delays;
    }

    /**
     * Everything to be done on one planting in a week.
     *
     * @param lines its jobs; empty where it is only put out to harden
     * @param delay what it costs to leave it a week, or null where the plan has no figure for that
     * @param alone what it costs to leave for a week only what goes over it, where it begins this week
     * @param by the last day for it, or null where there is none
     */
    record Entry(
            Shown planting,
            List<WorkLine> lines,
            boolean isHardened,
            Delays.@Nullable Delay delay,
            Map<Job, Delays.Delay> alone,
            @Nullable LocalDate by) {

        Entry {
            alone = Collections.unmodifiableMap(new LinkedHashMap<>(alone));
        }

        long minutes() {
            return lines.stream().mapToLong(WorkLine::minutes).sum();
        }

        Set<Job> jobs() {
            EnumSet<Job> jobs = EnumSet.noneOf(Job.class);
            lines.forEach(line -> jobs.add(line.job()));
            return jobs;
        }

        /** Whether leaving it loses nothing that the plan knows of. */
        boolean canWait() {
            return standing() > 0;
        }

        /**
         * First what loses something, then what loses nothing up to a last day, then what the plan has no figure for, then
         * what loses nothing.
         */
        private int standing() {
            if (delay == null) {
                return 2;
            }
            return delay.mustStems() > 0 || delay.grains() > 0 ? 0 : by != null ? 1 : 3;
        }

        private double must() {
            return delay == null ? 0 : delay.mustStems();
        }

        private double grains() {
            return delay == null ? 0 : delay.grains();
        }
    }

    /** All entries of a week. */
    List<Entry> of(int week) {
        Map<Integer, List<WorkLine>> together = new LinkedHashMap<>();
        for (WorkLine line : facts.work()) {
            if (line.week() == week) {
                together.computeIfAbsent(line.planting().number(), n -> new ArrayList<>())
                        .add(line);
            }
        }
        List<Entry> entries = new ArrayList<>();
        for (Shown planting : facts.plantings()) {
            boolean hardened = facts.course(planting).hardenWeek() == week && planting.trayTo() > week;
            List<WorkLine> lines = together.getOrDefault(planting.number(), List.of());
            if (hardened || !lines.isEmpty()) {
                entries.add(entry(planting, lines, hardened, week));
            }
        }
        entries.sort(Comparator.comparingInt(Entry::standing)
                .thenComparing(Comparator.comparingDouble(Entry::must).reversed())
                .thenComparing(Comparator.comparingDouble(Entry::grains).reversed()));
        return List.copyOf(entries);
    }

    private Entry entry(Shown planting, List<WorkLine> lines, boolean hardened, int week) {
        Delays.Delay delay = null;
        LocalDate by = null;
        Course course = facts.course(planting);
        Set<Job> jobs = EnumSet.noneOf(Job.class);
        lines.forEach(line -> jobs.add(line.job()));
        Map<Job, Delays.Delay> alone = new TreeMap<>();
        boolean begins = jobs.stream().anyMatch(Delays.STARTS::contains);
        for (Set<Job> some : Delays.alone(jobs)) {
            Delays.Delay left = delays.left(planting.kept(), some);
            if (begins) {
                some.forEach(job -> alone.put(job, left));
            } else {
                delay = left;
            }
        }
        // Hardening is left by planting out a week later, since it takes the weeks it takes.
        boolean isOnlyHardened = hardened && delay == null && !jobs.contains(Job.CLEAR);
        if (begins || isOnlyHardened) {
            boolean waits = isOnlyHardened || isPlantedOut(planting, jobs);
            delay = !waits || course.method().holds() > 0
                    ? delays.later(List.of(planting.kept()))
                    : delays.leftOut(List.of(planting.kept()));
            int more = delays.lastWeek(planting.kept())
                    - season.weekOf(planting.kept().sown());
            if (waits) {
                more = Math.min(more, course.method().holds());
            }
            by = lastDay(week + (delay.isLeftOut() ? 0 : more));
        } else if (jobs.contains(Job.CLEAR)) {
            int wanted = wantedFrom(planting, week + 1);
            List<Shown> followers = facts.plantings().stream()
                    .filter(next -> next.bed() == planting.bed() && next.heldFrom() == week + 1)
                    .toList();
            if (wanted == week + 1 && !followers.isEmpty()) {
                delay = delays.later(followers.stream().map(Shown::kept).toList());
            } else {
                delay = new Delays.Delay(0, 0, false, null);
            }
            by = wanted < season.weeks() ? lastDay(wanted - 1) : null;
        }
        return new Entry(planting, lines, hardened, delay, alone, by);
    }

    private static boolean isPlantedOut(Shown planting, Set<Job> jobs) {
        return planting.method().start() == Method.Start.TRAY && jobs.contains(Job.PLANT_OUT);
    }

    /** The first week, from one on, in which a bed is too full for a planting that is not cleared. */
    private int wantedFrom(Shown planting, int from) {
        long length = facts.length(planting.bed());
        int week = from;
        while (week < season.weeks()
                && facts.facts().outcome().bedUse()[planting.bed()][week] + planting.millimetres() <= length) {
            week++;
        }
        return week;
    }

    private LocalDate lastDay(int week) {
        return season.weekStart(Math.min(week, season.weeks() - 1)).plusDays(6);
    }

    /** What leaving it a week would cost, in words. */
    String left(Entry entry) {
        Delays.Delay delay = entry.delay();
        List<String> alone = new ArrayList<>();
        entry.alone().forEach((job, left) -> {
            if (left.mustStems() > 0 || !isNothing(left)) {
                alone.add(JobWords.alone(job) + " " + amount(left));
            }
        });
        return (delay == null ? NO_FIGURE : cost(delay))
                + (alone.isEmpty() ? "" : " (" + String.join(", ", alone) + ")");
    }

    private boolean isNothing(Delays.Delay delay) {
        return say.money(Math.abs(delay.grains())).equals(say.money(0));
    }

    private String cost(Delays.Delay delay) {
        String why = delay.stopped() != null ? ", " + why(delay.stopped()) : delay.isLeftOut() ? ", too late" : "";
        return amount(delay) + why;
    }

    private String amount(Delays.Delay delay) {
        String must = delay.mustStems() >= 0.5
                ? Say.count(Math.round(delay.mustStems()), "stem", "stems") + " we must have; "
                : delay.mustStems() > 0 ? "less than a stem we must have; " : "";
        String money = say.money(Math.abs(delay.grains()));
        return must + (isNothing(delay) ? "loses nothing" : delay.grains() > 0 ? "loses " + money : "gains " + money);
    }

    /** What there is too little of a week later. */
    private static String why(Rule rule) {
        return switch (rule) {
            case BED_ROOM -> "no bed";
            case HOURS -> "no hours";
            case CUTTING_HOURS -> "no cutting hours";
            case BENCH_ROOM -> "no bench";
            default -> "no net, cover, trays";
        };
    }

    String by(Entry entry) {
        return entry.by() == null ? "" : Say.shortDay(Objects.requireNonNull(entry.by()));
    }
}
