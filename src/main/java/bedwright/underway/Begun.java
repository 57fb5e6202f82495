package bedwright.underway;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.growth.Weathered;
import bedwright.log.Entry;
import bedwright.log.SeasonLog;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.underway.PlantingState.Stage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes what is left of a season from the plan in force and what happened. */
final class Begun {
    private final Plan plan;
    /** The season before it began. */
    private final Season whole;

    private final List<Entry> notes;
    private final LocalDate on;
    private final int day;
    private final Circumstances circumstances;
    private final Map<String, Integer> beds = new HashMap<>();
    private final List<Standing> standing;
    private final int[] lots;
    private final List<KeptPlanting> inForce = new ArrayList<>();
    private final List<PlantingState> states = new ArrayList<>();
    private final Map<Integer, LocalDate> gone = new HashMap<>();
    private final Prospects prospects;
    /** The same for questions of the normal season only. */
    private final Prospects calendars;

    private final boolean isBrief;

    /**
     * @param isHeld whether what is asked for and undecided counts as promised
     * @param isBrief whether nobody asks what each planting has become: what that alone needs is not worked out
     */
    Begun(Plan plan, SeasonLog log, LocalDate on, boolean isHeld, boolean isBrief) {
        this.isBrief = isBrief;
        this.plan = plan;
        this.whole = plan.began();
        this.on = on;
        this.day = whole.dayOf(on);
        this.notes =
                log.inForce().stream().filter(entry -> !entry.on().isAfter(on)).toList();
        this.circumstances = new Circumstances(whole, notes, on, isHeld);
        this.standing = new ArrayList<>(whole.standing());
        this.lots = whole.pool().stream().mapToInt(Lots::lots).toArray();
        whole.allBeds().forEach(bed -> beds.put(bed.name(), bed.index()));
        Season today = circumstances.season(whole.pool(), whole.standing(), List.of(), 1);
        this.prospects = Prospects.of(today, PossibleSeasons.of(today));
        this.calendars =
                isBrief ? Prospects.of(today, List.of(PossibleSeasons.usualWith(today, List.of()))) : prospects;
    }

    Remaining remaining() {
        for (KeptPlanting kept : plan.plantingsThroughout()) {
            Planted planted = Planted.of(whole, kept);
            Told told = Told.of(planted, planted.stoodBefore(whole), notes, plan.notesTakenIn());
            LocalDate last = told.pulled == null ? told.gone : told.pulled;
            if (last != null) {
                gone.put(kept.number(), last);
            }
            take(planted, told);
        }
        List<Lots> pool = new ArrayList<>();
        for (int i = 0; i < lots.length; i++) {
            Lots entry = whole.pool().get(i);
            pool.add(new Lots(entry.crop(), entry.plants(), lots[i]));
        }
        Season left = circumstances.season(pool, standing, inForce, plan.nextNumber());
        return new Remaining(left.withHeld(stillHeld()), isBrief ? List.of() : states, gone, circumstances.undecided());
    }

    /** What is held in place and still to come as it is held; what is begun or was put elsewhere holds itself. */
    private List<Held> stillHeld() {
        List<Held> all = new ArrayList<>();
        for (Held held : Held.together(whole)) {
            int there = inForce.stream()
                    .filter(kept -> held.isAt(kept, whole))
                    .mapToInt(KeptPlanting::lots)
                    .sum();
            if (there > 0) {
                all.add(held.with(Math.min(there, held.lots())));
            }
        }
        return all;
    }

    private void take(Planted planted, Told told) {
        boolean stoodBefore = planted.stoodBefore(whole);
        if (told.isNotDone) {
            states.add(state(planted, told, Stage.LEFT_OUT, null, List.of(), null, 1));
        } else if (planted.before() != null && planted.before().isWritten()) {
            writtenOut(planted, told);
        } else if (stoodBefore || told.sown.isBefore(on)) {
            begun(planted, told, stoodBefore);
        } else {
            toCome(planted, told);
        }
    }

    private void writtenOut(Planted planted, Told told) {
        int entry = entry(planted);
        Standing before = standing.get(entry);
        LocalDate until = told.pulled == null ? before.until() : told.pulled.minusDays(1);
        Standing now = new Standing(
                before.name(),
                before.crop(),
                before.plants(),
                before.method(),
                before.bed(),
                before.sown(),
                before.clock(),
                told.pulled == null
                        ? before.stems()
                        : before.stems().stream()
                                .filter(stems -> stems.week().isBefore(told.pulled))
                                .toList(),
                until);
        if (now.isWritten()) {
            standing.set(entry, now);
            inForce.add(planted.kept());
        }
        boolean isOver = until != null && until.isBefore(on);
        states.add(state(planted, told, isOver ? Stage.OVER : Stage.CUTTING, now, List.of(), null, 1));
    }

    private int entry(Planted planted) {
        Integer entry = planted.kept().standing();
        if (entry == null) {
            throw new IllegalArgumentException("Planting " + planted.number() + " stands nowhere");
        }
        return entry - 1;
    }

    private void toCome(Planted planted, Told told) {
        KeptPlanting kept = planted.kept();
        LocalDate week = whole.weekStart(whole.weekOf(told.sown));
        // What is begun later in a week than on its first day is the next week's.
        LocalDate sown = week.isBefore(on) ? week.plusWeeks(1) : week;
        KeptPlanting now = new KeptPlanting(
                kept.number(),
                kept.crop(),
                kept.method(),
                told.bed,
                sown,
                kept.pool(),
                kept.standing(),
                kept.lots(),
                kept.plants());
        inForce.add(now);
        if (isBrief) {
            return;
        }
        Prospect expected = expect(planted, told, null, planted.method(), told.bed, whole.weekOf(sown));
        states.add(state(planted, told, Stage.TO_COME, null, List.of(), expected, 1));
    }

    private void begun(Planted planted, Told told, boolean stoodBefore) {
        KeptPlanting kept = planted.kept();
        boolean isTray = planted.method().start() == Method.Start.TRAY && !stoodBefore;
        LocalDate out = told.out;
        LocalDate until = kept.until();
        LocalDate pulled = told.pulled;
        if (pulled == null && until != null && until.plusWeeks(1).isBefore(on.plusDays(1))) {
            pulled = until.plusDays(6);
        }
        if (pulled == null && told.left <= 0) {
            pulled = told.counted == null ? on : told.counted;
        }
        boolean isInTray = isTray && out != null && !out.isBefore(on) && pulled == null;
        int week = Math.floorDiv(whole.dayOf(told.sown), 7);
        Past past = new Past(
                stoodBefore && !told.isMoved ? null : told.sown,
                isTray && out != null && out.isBefore(on) ? out : null,
                List.of(),
                told.stages,
                told.counted,
                Math.clamp(told.left, 0, 1),
                told.storms,
                told.pests,
                told.alive,
                1,
                pulled,
                kept.pool(),
                kept.pool() == null ? 1 : kept.lots());
        Standing bare = bare(planted, told, isInTray, week, past);
        int place = isInTray
                ? whole.weekOf(out == null ? on : out) - planted.method().trayWeeks()
                : week;
        List<String> ways = pulled != null
                ? List.of(planted.method().name())
                : Ways.of(
                        planted,
                        day,
                        isInTray,
                        method -> expect(calendars, planted, told, bare, method, told.bed, place));
        boolean isFactorKnown = isInTray || told.cuts.isEmpty();
        Prospect expected =
                isBrief && isFactorKnown ? null : expect(planted, told, bare, planted.method(), told.bed, place);
        // What is in trays can't have been cut.
        double factor = isFactorKnown || expected == null ? 1 : new Cuts(whole, expected).factor(told.cuts);
        Standing now = bare(planted, told, isInTray, week, with(past, ways, factor));
        int entry = planted.before() == null ? standing.size() : entry(planted);
        if (planted.before() == null) {
            standing.add(now);
            Integer pool = kept.pool();
            if (pool != null) {
                lots[pool - 1] -= past.lots();
            }
        } else {
            standing.set(entry, now);
        }
        inForce.add(new KeptPlanting(
                kept.number(),
                kept.crop(),
                kept.method(),
                told.bed,
                whole.weekStart(week),
                kept.pool(),
                entry + 1,
                1,
                now.plants(),
                isInTray ? planned(out) : past.out(),
                pulled == null ? until : null,
                null));
        if (expected != null) {
            boolean stands = !isInTray && pulled == null;
            List<Weathered> weathered = stands && !isBrief ? weathered(planted, told, now, place) : List.of();
            states.add(
                    state(planted, told, stage(expected, isInTray, pulled != null), now, weathered, expected, factor));
        }
    }

    /** First day of the week in which it is planted out as planned, or as soon as it still can be. */
    private @Nullable LocalDate planned(@Nullable LocalDate out) {
        if (out == null) {
            return null;
        }
        LocalDate week = whole.weekStart(whole.weekOf(out));
        return week.isBefore(on) ? week.plusWeeks(1) : week;
    }

    private Standing bare(Planted planted, Told told, boolean isInTray, int week, Past past) {
        Standing before = planted.before();
        boolean isOnlyWay = past.ways().size() <= 1;
        return new Standing(
                before == null ? null : before.name(),
                planted.kept().crop(),
                told.plants,
                isOnlyWay ? planted.method().name() : null,
                isInTray ? null : told.bed,
                before != null && before.sown() == null && before.clock() != null ? null : whole.weekStart(week),
                before == null ? null : before.clock(),
                List.of(),
                null,
                past);
    }

    private static Past with(Past past, List<String> ways, double factor) {
        return new Past(
                past.sown(),
                past.out(),
                ways.size() == 1 ? List.of() : ways,
                past.stages(),
                past.counted(),
                past.left(),
                past.storms(),
                past.pests(),
                past.alive(),
                Math.clamp(factor, 0, 1000),
                past.pulled(),
                past.pool(),
                past.lots());
    }

    private Prospect expect(
            Planted planted, Told told, @Nullable Standing now, Method method, String bed, int sowWeek) {
        return expect(prospects, planted, told, now, method, bed, sowWeek);
    }

    private Prospect expect(
            Prospects of, Planted planted, Told told, @Nullable Standing now, Method method, String bed, int sowWeek) {
        int crop = whole.crops().indexOf(planted.crop());
        int way = planted.crop().methods().indexOf(method);
        return now == null
                ? of.expect(crop, way, told.plants, bed(bed), sowWeek)
                : of.expect(now, crop, way, bed(bed), sowWeek);
    }

    private List<Weathered> weathered(Planted planted, Told told, Standing now, int sowWeek) {
        int way = planted.crop().methods().indexOf(planted.method());
        return prospects.weathered(now, whole.crops().indexOf(planted.crop()), way, bed(told.bed), sowWeek);
    }

    private int bed(String name) {
        Integer index = beds.get(name);
        if (index == null) {
            throw new IllegalArgumentException("No bed named " + name);
        }
        return index;
    }

    private Stage stage(Prospect expected, boolean isInTray, boolean isPulled) {
        if (isPulled) {
            return Stage.OVER;
        }
        if (isInTray) {
            return Stage.RAISING;
        }
        if (expected.emergence() == Prospect.NONE || expected.emergence() >= day) {
            return Stage.SOWN;
        }
        if (expected.firstCut() == Prospect.NONE || expected.firstCut() >= day) {
            return Stage.GROWING;
        }
        return expected.lastCutWeek() != Prospect.NONE && 7 * expected.heldTo() <= day ? Stage.OVER : Stage.CUTTING;
    }

    private static PlantingState state(
            Planted planted,
            Told told,
            Stage stage,
            @Nullable Standing now,
            List<Weathered> weathered,
            @Nullable Prospect expected,
            double factor) {
        int cut = told.cuts.stream().mapToInt(Told.CutNoted::stems).sum();
        return new PlantingState(
                planted.kept(),
                stage,
                now,
                told.plants,
                told.left,
                told.counted != null,
                cut,
                factor,
                weathered,
                expected);
    }
}
