package bedwright.recheck;

import bedwright.season.ChangePrices;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What it costs to change the plan in force during a season (season model, sections 8 and 9). */
final class Changed {
    private final Facts facts;
    private final Season season;
    private final ChangePrices prices;

    Changed(Facts facts) {
        this.facts = facts;
        this.season = facts.season;
        this.prices = season.changes();
    }

    /** A lot's place, as far as a change of it can be told. */
    private record Spot(KeptPlanting kept, int firstWeek, int lastHeld) {}

    /**
     * All changes, in grains.
     *
     * @param kept the plan
     * @param plantings those of it that the season offers
     * @param calendars of these, in their order
     */
    long price(List<KeptPlanting> kept, List<Placed> plantings, List<Calendar> calendars) {
        UnderWay underWay = season.underWay();
        if (underWay == null || underWay.inForce().isEmpty()) {
            return 0;
        }
        Map<Integer, KeptPlanting> byNumber = new HashMap<>();
        kept.forEach(one -> byNumber.put(one.number(), one));
        List<Placed> formerly = new Offer(facts).accept(underWay.inForce());
        Map<Integer, Spot> before = new HashMap<>();
        Map<Integer, Integer> lotsLeft = new HashMap<>();
        for (KeptPlanting one : underWay.inForce()) {
            for (Placed placed : formerly) {
                if (placed.number() == one.number()) {
                    before.put(one.number(), spot(one, placed, new Calendar(facts, placed)));
                    lotsLeft.put(one.number(), one.lots());
                }
            }
        }
        long sum = 0;
        for (int i = 0; i < plantings.size(); i++) {
            KeptPlanting now =
                    Objects.requireNonNull(byNumber.get(plantings.get(i).number()));
            Spot spot = spot(now, plantings.get(i), calendars.get(i));
            Integer was = now.was();
            Spot former = was == null ? null : before.get(was);
            if (was != null && former != null) {
                lotsLeft.merge(was, -now.lots(), Integer::sum);
            }
            sum += now.lots() * (former == null ? grains(prices.putIn(), spot.firstWeek) : between(former, spot));
        }
        for (Map.Entry<Integer, Integer> left : lotsLeft.entrySet()) {
            Spot former = Objects.requireNonNull(before.get(left.getKey()));
            sum += left.getValue() * grains(prices.leftOut(), former.firstWeek);
        }
        return sum;
    }

    private @Nullable Standing standing(KeptPlanting kept) {
        return kept.standing() == null ? null : season.standing().get(kept.standing() - 1);
    }

    /** The week in which it is sown, or planted out of its trays, or cleared where it stands. */
    private Spot spot(KeptPlanting kept, Placed placed, Calendar calendar) {
        Standing standing = standing(kept);
        int first = placed.sowWeek();
        if (standing != null && standing.past() != null) {
            first = standing.isInTray() ? calendar.groundWeek : cleared(calendar);
        }
        return new Spot(kept, first, cleared(calendar));
    }

    private int cleared(Calendar calendar) {
        return Math.max(calendar.lastHeld, facts.now() - 1);
    }

    private long between(Spot former, Spot now) {
        KeptPlanting one = former.kept;
        KeptPlanting other = now.kept;
        boolean sameBed = one.bed().equals(other.bed());
        boolean sameWeek = one.sown().equals(other.sown()) && Objects.equals(one.out(), other.out());
        boolean sameMethod = one.method().equals(other.method());
        boolean sameEnd = Objects.equals(one.until(), other.until());
        if (sameBed && sameWeek && sameMethod && sameEnd) {
            return 0;
        }
        double price = (sameBed ? 0 : prices.bed())
                + (sameWeek ? 0 : prices.week())
                + (sameMethod ? 0 : prices.method())
                + (sameEnd ? 0 : prices.pulled());
        Standing standing = standing(one);
        boolean stands = standing != null && standing.past() != null && !standing.isInTray();
        // What stands and is grown otherwise from now on is changed at once.
        boolean isNow = stands && !(sameBed && sameWeek && sameMethod);
        int first = isNow ? facts.now() : Math.min(former.firstWeek, now.firstWeek);
        return grains(price, first);
    }

    private long grains(double price, int week) {
        return facts.units.material(price * prices.times(week - facts.now()));
    }
}
