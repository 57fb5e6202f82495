package bedwright.sheet;

import bedwright.plan.Outcome;
import bedwright.plan.Replan;
import bedwright.plan.Tried;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a plan made anew during a season changes, and what each change buys, in words. */
public final class NewPlanWords {
    private static final String FIRST = "- ";
    private static final String BEHIND = "  ";

    private final Season season;
    private final Say say;

    /** @param season what is left of the season */
    public NewPlanWords(Season season) {
        this.season = season;
        this.say = new Say(season);
    }

    /** Where the new plan breaks a rule, or none. */
    public List<String> broken(Outcome outcome) {
        return Mending.places(season, outcome, outcome.broken());
    }

    /**
     * The changes, from the largest gain, each with what it buys; then what all of them buy.
     *
     * @param bought as they come, at least one
     * @param all what all of them bring
     */
    public List<String> lines(List<Replan.Bought> bought, Tried all) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < bought.size(); i++) {
            Replan.Bought one = bought.get(i);
            if (i == 0 && one.isNeeded()) {
                lines.add("First those without which a rule that has to hold would be broken:");
            } else if (i == 0 || (!one.isNeeded() && bought.get(i - 1).isNeeded())) {
                lines.add("Changes, from the largest gain:");
            }
            for (int p = 0; p < one.parts().size(); p++) {
                lines.add((p == 0 ? FIRST : BEHIND) + part(one.parts().get(p)));
            }
            lines.add(BEHIND + (one.parts().size() > 1 ? "together: " : "buys: ") + buys(one.made()));
        }
        if (bought.size() > 1) {
            lines.add("All together: " + buys(all));
        }
        return lines;
    }

    /** How to read the lines. */
    public String key() {
        return "What a change buys was tried in the plan in force, each on top of those above it, so that the figures add"
                + " up; several stand together where one can't be made without the others. Stems are those that go"
                + " somewhere; all figures are means of the possible seasons. What changing costs, by the season file's"
                + " prices, is taken off the money"
                + (season.caution().percent() == 0 ? "." : "; as judged: with the weight of the bad seasons.");
    }

    private String buys(Tried made) {
        List<String> words = new ArrayList<>();
        words.add(more(Say.stems(made.delivered())) + " stems");
        String missing = Say.stems(made.missing());
        if (!missing.equals("0")) {
            words.add(
                    missing.startsWith("−")
                            ? missing.substring(1) + " fewer promised stems missing"
                            : missing + " more promised stems missing");
        }
        String must = Say.tenth(made.gain().medium() / 100.0 / made.before().seasons());
        if (!must.equals("0")) {
            words.add(more(must) + " stems, by weight, of what must be ours");
        }
        words.add(more(Say.hours(made.work())) + " hours");
        words.add(more(say.money(made.money()))
                + (season.caution().percent() == 0 ? "" : " (as judged " + more(say.money(made.weighed())) + ")"));
        return String.join(", ", words);
    }

    private static String more(String figure) {
        return TriedWords.signed(figure);
    }

    /** One part of a change as a line. */
    public String part(Replan.Changed part) {
        KeptPlanting before = part.before();
        KeptPlanting after = part.after();
        KeptPlanting one = Objects.requireNonNullElse(before, after);
        if (one == null) {
            return part.plants() + " plants";
        }
        String plants = Say.count(part.plants(), "plant", "plants");
        if (before == null) {
            return one.number() + " new: " + one.crop() + ", " + plants + ", " + whole(one);
        }
        boolean isAll = part.lots() == before.lots();
        String named = before.number() + " " + before.crop() + ", "
                + (isAll ? plants : plants + " of " + Say.whole(before.plants()));
        if (after == null) {
            return named + ": left out (was " + whole(before) + ")";
        }
        String number = after.number() == before.number() ? "" : ", from now on " + after.number();
        return named + number + ": " + String.join("; ", differences(before, after));
    }

    private String whole(KeptPlanting planting) {
        LocalDate out = planting.out();
        return "bed " + planting.bed() + ", " + (out == null ? "sown " : "planted out ")
                + say.date(out == null ? planting.sown() : out) + ", " + planting.method();
    }

    private List<String> differences(KeptPlanting before, KeptPlanting after) {
        List<String> differences = new ArrayList<>();
        if (!before.bed().equals(after.bed())) {
            differences.add("bed " + after.bed() + " instead of " + before.bed());
        }
        if (!before.sown().equals(after.sown())) {
            differences.add("sown " + say.date(after.sown()) + " instead of " + say.date(before.sown()));
        }
        if (!Objects.equals(before.out(), after.out()) && after.out() != null && before.out() != null) {
            differences.add("planted out " + say.date(after.out()) + " instead of " + say.date(before.out()));
        }
        if (!before.method().equals(after.method())) {
            differences.add(after.method() + " instead of " + before.method());
        }
        if (!Objects.equals(before.until(), after.until())) {
            differences.add(pulled(after.until()) + " instead of " + pulled(before.until()));
        }
        return differences;
    }

    private String pulled(@Nullable LocalDate until) {
        return until == null ? "kept to its end" : "pulled in the week of " + say.date(until);
    }

    /**
     * What of the plan in force can no longer be done, whatever is decided; nothing if all can.
     *
     * @param planned the plan in force
     * @param possible the same as it can still be done
     */
    public List<String> noLongerPossible(List<KeptPlanting> planned, List<KeptPlanting> possible) {
        List<String> lines = new ArrayList<>();
        for (KeptPlanting before : planned) {
            KeptPlanting now = possible.stream()
                    .filter(one -> one.number() == before.number())
                    .findFirst()
                    .orElse(null);
            if (now == null) {
                lines.add(before.number() + " " + before.crop() + ": can't be begun any more as planned ("
                        + whole(before) + ")");
            } else if (!Objects.equals(now.out(), before.out()) && now.out() != null && before.out() != null) {
                lines.add(before.number() + " " + before.crop() + ", bed " + before.bed()
                        + ": can't be planted out any more on " + say.date(before.out()) + "; on " + say.date(now.out())
                        + " it can");
            } else if (!now.equals(before)) {
                lines.add(before.number() + " " + before.crop() + ", bed " + before.bed() + ": "
                        + pulled(now.until()) + " instead of " + pulled(before.until())
                        + ", since its bed is needed for what follows");
            }
        }
        return lines;
    }
}
