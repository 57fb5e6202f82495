package bedwright.recheck;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Family;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which places the season offers (season model, sections 3, 5 and 8: barred and never offered). A planting that is in
 * the ground already, or of which everything is decided, is where it is and asks nobody.
 */
final class Offer {
    private final Facts facts;
    private final Season season;
    private final List<String> faults = new ArrayList<>();
    private final int[] lotsUsed;
    private final int[] standingUsed;
    private int refused;

    Offer(Facts facts) {
        this.facts = facts;
        season = facts.season;
        lotsUsed = new int[season.pool().size()];
        standingUsed = new int[season.standing().size()];
    }

    List<String> faults() {
        return faults;
    }

    /** How many plantings were refused. */
    int refused() {
        return refused;
    }

    /** The plantings at places that are offered; of the others {@link #faults} tells. */
    List<Placed> accept(List<KeptPlanting> plantings) {
        List<Placed> accepted = new ArrayList<>();
        for (KeptPlanting kept : plantings) {
            int before = faults.size();
            Optional<Placed> placed = resolve(kept);
            if (placed.isPresent() && !isFixed(placed.get())) {
                checkPlace(placed.get());
            }
            if (faults.size() == before) {
                accepted.add(placed.orElseThrow());
            } else {
                refused++;
            }
        }
        for (int s = 0; s < standingUsed.length; s++) {
            if (standingUsed[s] == 0 && isFixed(season.standing().get(s))) {
                faults.add("Standing planting " + (s + 1) + " ("
                        + season.standing().get(s).crop() + ") is in the ground, but the plan lacks it");
            }
        }
        season.held().forEach(held -> checkHeld(held, accepted));
        return accepted;
    }

    /** So many lots as are held at a place must stand there, if the season offers it. */
    private void checkHeld(Held held, List<Placed> accepted) {
        int entry = held.entry(season);
        int wanted = 0;
        for (Held other : season.held()) {
            wanted += other.isBeside(held, season) ? other.lots() : 0;
        }
        int there = 0;
        for (Placed placed : accepted) {
            there += placed.standing() == null
                            && entry >= 0
                            && placed.crop().name().equals(held.crop())
                            && placed.plants() == season.pool().get(entry).plants()
                            && placed.bed().name().equals(held.bed())
                            && placed.method().name().equals(held.method())
                            && season.weekStart(placed.sowWeek()).equals(held.sown())
                    ? placed.lots()
                    : 0;
        }
        if (there < wanted && isOffered(held, entry)) {
            faults.add("Of " + held.crop() + " " + wanted + " lots are held in " + held.bed() + " from " + held.sown()
                    + " on (" + held.method() + "), but the plan has " + there + " there");
        }
    }

    private boolean isOffered(Held held, int entry) {
        if (entry < 0) {
            return false;
        }
        Offer other = new Offer(facts);
        int plants = season.pool().get(entry).plants();
        Optional<Placed> placed = other.resolve(
                new KeptPlanting(1, held.crop(), held.method(), held.bed(), held.sown(), entry + 1, null, 1, plants));
        placed.ifPresent(other::checkPlace);
        return placed.isPresent() && other.faults.isEmpty();
    }

    private void fault(KeptPlanting kept, String what) {
        faults.add("Planting " + kept.number() + " (" + kept.crop() + "): " + what);
    }

    private void fault(Placed placed, String what) {
        faults.add("Planting " + placed.number() + " (" + placed.crop().name() + "): " + what);
    }

    /** The planting with the records that its names mean, if all of them exist. */
    private Optional<Placed> resolve(KeptPlanting kept) {
        int crop = facts.cropIndex(kept.crop());
        if (crop < 0) {
            fault(kept, "the season has no such crop");
            return Optional.empty();
        }
        Optional<Method> method = season.crops().get(crop).methods().stream()
                .filter(m -> m.name().equals(kept.method()))
                .findFirst();
        Optional<Bed> bed =
                facts.beds.stream().filter(b -> b.name().equals(kept.bed())).findFirst();
        if (method.isEmpty()) {
            fault(kept, "the crop has no method " + kept.method());
        } else if (method.get().net() != null
                && facts.net(method.get().net().net()).isEmpty()) {
            fault(kept, "the stock has no net " + method.get().net().net());
        } else if (method.get().cover() != null && season.stock().cover() == null) {
            fault(kept, "the stock has no row cover");
        }
        if (bed.isEmpty()) {
            fault(kept, "the season has no bed " + kept.bed());
        }
        if (kept.lots() < 1 || kept.plants() % kept.lots() != 0) {
            fault(kept, kept.plants() + " plants are not " + kept.lots() + " equal lots");
        }
        Standing standing = source(kept);
        if (method.isEmpty() || bed.isEmpty() || kept.lots() < 1) {
            return Optional.empty();
        }
        if (standing != null) {
            agree(kept, standing);
        }
        boolean decided =
                standing != null && (standing.sown() != null || standing.clock() != null || standing.isWritten());
        if (!decided && (season.dayOf(kept.sown()) % 7 != 0 || !inSeason(season.weekOf(kept.sown())))) {
            fault(kept, kept.sown() + " is not the first day of a week of the season");
        }
        return Optional.of(new Placed(
                kept.number(),
                crop,
                season.crops().get(crop),
                method.get(),
                bed.get(),
                sowWeek(kept, method.get(), standing),
                standing,
                kept.until() == null ? Facts.NEVER : season.weekOf(kept.until()),
                kept.lots(),
                kept.plants() / kept.lots()));
    }

    /** What is in trays counts from the week of planting out that the plan gives it. */
    private int sowWeek(KeptPlanting kept, Method method, @Nullable Standing standing) {
        if (standing != null && standing.isInTray() && kept.out() != null) {
            return season.weekOf(kept.out()) - method.trayWeeks();
        }
        return season.weekOf(standing == null || standing.sown() == null ? kept.sown() : standing.sown());
    }

    private boolean inSeason(int week) {
        return week >= 0 && week < season.weeks();
    }

    /** The standing planting that is meant, or none; notes what is taken from the pool. */
    private @Nullable Standing source(KeptPlanting kept) {
        if (kept.standing() != null) {
            int s = kept.standing() - 1;
            if (s < 0 || s >= standingUsed.length) {
                fault(kept, "the season has no standing planting " + kept.standing());
                return null;
            }
            if (++standingUsed[s] > 1) {
                fault(kept, "standing planting " + kept.standing() + " is in the plan already");
            }
            return season.standing().get(s);
        }
        if (kept.pool() == null || kept.pool() < 1 || kept.pool() > lotsUsed.length) {
            fault(kept, "the season has no entry " + kept.pool() + " of plantings to choose from");
            return null;
        }
        Lots entry = season.pool().get(kept.pool() - 1);
        if (!entry.crop().equals(kept.crop()) || (long) entry.plants() * kept.lots() != kept.plants()) {
            fault(
                    kept,
                    kept.lots() + " lots of entry " + kept.pool() + " are " + (long) entry.plants() * kept.lots()
                            + " plants of " + entry.crop() + ", not " + kept.plants());
        }
        lotsUsed[kept.pool() - 1] += kept.lots();
        if (lotsUsed[kept.pool() - 1] > entry.lots()) {
            fault(kept, "entry " + kept.pool() + " has only " + entry.lots() + " lots");
        }
        return null;
    }

    /** What is decided of a standing planting must be so in the plan. */
    private void agree(KeptPlanting kept, Standing standing) {
        if (!standing.crop().equals(kept.crop()) || standing.plants() != kept.plants() || kept.lots() != 1) {
            fault(
                    kept,
                    "standing planting " + kept.standing() + " is one lot of " + standing.plants() + " plants of "
                            + standing.crop());
        }
        if (standing.method() != null && !standing.method().equals(kept.method())) {
            fault(kept, "its method is " + standing.method() + ", not " + kept.method());
        }
        Past past = standing.past();
        if (past != null && !past.ways().isEmpty() && !past.ways().contains(kept.method())) {
            fault(kept, "it can no longer be grown by " + kept.method());
        }
        if (kept.until() != null && season.weekOf(kept.until()) < facts.now()) {
            fault(kept, "it can't be pulled in the week of " + kept.until() + ", which is over");
        }
        if (past != null && standing.isInTray()) {
            checkPlantingOut(kept, standing);
        }
        if (standing.bed() != null && !standing.bed().equals(kept.bed())) {
            fault(kept, "its bed is " + standing.bed() + ", not " + kept.bed());
        }
        if (standing.sown() != null && !standing.sown().equals(kept.sown())) {
            fault(kept, "it is sown on " + standing.sown() + ", not on " + kept.sown());
        }
    }

    /** Trays are planted out when they are due, or as long after it as they may wait, or at once if that is over. */
    private void checkPlantingOut(KeptPlanting kept, Standing standing) {
        Optional<Method> method = season.crops().get(facts.cropIndex(kept.crop())).methods().stream()
                .filter(one -> one.name().equals(kept.method()))
                .findFirst();
        if (method.isEmpty() || kept.out() == null || standing.sown() == null) {
            fault(kept, "it is in trays, but nobody says when it is planted out");
            return;
        }
        int due = season.weekOf(standing.sown()) + method.get().trayWeeks();
        int first = Math.max(due, firstOpen());
        int out = season.weekOf(kept.out());
        if (out < first || out > Math.max(first, due + method.get().holds())) {
            fault(kept, "it can't be planted out on " + kept.out());
        }
    }

    /** The first week on whose first day something can still be begun. */
    private int firstOpen() {
        UnderWay underWay = season.underWay();
        if (underWay == null) {
            return 0;
        }
        int week = season.weekOf(underWay.on());
        return Math.max(0, season.weekStart(week).isBefore(underWay.on()) ? week + 1 : week);
    }

    private static boolean isFixed(Placed placed) {
        return placed.standing() != null && isFixed(placed.standing());
    }

    /** Whether bed, method and time are all given; of written-out stems nobody asks for the method. */
    private static boolean isFixed(Standing standing) {
        boolean timed = standing.sown() != null || standing.clock() != null;
        return standing.bed() != null
                && (standing.past() != null || standing.isWritten() || standing.method() != null && timed);
    }

    /** What stands in a bed that is taken later stays there until it is pulled. */
    private static boolean isUnderWayInItsBed(Placed placed) {
        Standing standing = placed.standing();
        return standing != null && standing.past() != null && standing.bed() != null;
    }

    private void checkPlace(Placed placed) {
        if (placed.standing() == null || !(placed.standing().sown() != null || !placed.knowsSowWeek())) {
            checkSowWeek(placed);
        }
        Calendar calendar = new Calendar(facts, placed);
        for (BedBlock.Taken taken : isUnderWayInItsBed(placed)
                ? List.<BedBlock.Taken>of()
                : placed.bed().taken()) {
            int first = Math.max(calendar.firstHeld, season.weekOf(taken.from()));
            if (first <= Math.min(calendar.lastHeld, season.weekOf(taken.to()))) {
                fault(placed, "bed " + placed.bed().name() + " is taken in the week of " + season.weekStart(first));
            }
        }
        BedBlock block = placed.bed().block();
        if (block.workableFrom() != null
                && season.weekStart(calendar.groundWeek).isBefore(block.workableFrom())) {
            fault(placed, "bed " + placed.bed().name() + " can be worked from " + block.workableFrom() + " only");
        }
        Families families = new Families(facts);
        Optional<Family> family = families.family(placed);
        boolean bedIsGiven = placed.standing() != null && placed.standing().bed() != null;
        if (!bedIsGiven && family.isPresent() && family.get().never() && families.breaksRest(placed, calendar)) {
            fault(
                    placed,
                    family.get().name() + " must not come back into bed "
                            + placed.bed().name() + " so soon");
        }
    }

    private void checkSowWeek(Placed placed) {
        Method method = placed.method();
        int week = placed.sowWeek();
        if (week < firstOpen()) {
            fault(placed, "the week of " + season.weekStart(week) + " is over");
        }
        int dayOfYear = Facts.dayOfYear(MonthDay.from(season.weekStart(week)));
        if ((method.sowFrom() != null || method.sowTo() != null)
                && !Facts.inSpan(dayOfYear, method.sowFrom(), method.sowTo())) {
            fault(placed, "it is not started on " + season.weekStart(week) + " by method " + method.name());
        }
        Method.SeedTemperature bears = method.seedTemperature();
        if (bears != null && method.start() == Method.Start.SOWN) {
            double mean = facts.mean(facts.normal(), placed.bed(), week);
            boolean tooCold = bears.coldest() != null && mean < bears.coldest();
            boolean tooWarm = bears.warmest() != null && mean > bears.warmest();
            if (tooCold || tooWarm) {
                fault(
                        placed,
                        String.format(
                                Locale.ROOT,
                                "its seed does not bear the %.1f °C of the week of %s",
                                mean,
                                season.weekStart(week)));
            }
        }
    }
}
