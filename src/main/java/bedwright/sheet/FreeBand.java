package bedwright.sheet;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Promises;
import bedwright.season.KindTree;
import bedwright.season.Role;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What nobody was promised: stems of each role by week that are free in 9, 8 and 5 years of 10. */
final class FreeBand implements Band {
    /** Seasons that it is judged over. */
    private static final int SEASONS = 128;

    private static final double KEYS = 12;
    private static final double STRIP = 33;
    private static final double GAP = 4;
    /** In so many years of ten, and the look of each. */
    private static final int[] IN_TEN = {5, 8, 9};

    private static final String[] LOOKS = {"shade3", "shade2", "shade0"};

    private final Season season;
    private final Say say;
    private final List<String> roles;
    private final boolean areGiven;
    /** Whole stems by role, level and week. */
    private final int[][][] free;

    FreeBand(Season season, Outcome outcome) {
        this.season = season;
        this.say = new Say(season);
        this.roles = season.roles().stream().map(Role::name).toList();
        this.areGiven = !season.possible().given().isEmpty();
        List<PossibleSeason> fresh = areGiven ? PossibleSeasons.of(season) : PossibleSeasons.fresh(season, SEASONS, 1);
        PlanFacts facts = PlanFacts.ofPlan(season, fresh, outcome.plantings());
        Promises promises = Promises.of(facts, Outcomes.places(facts, outcome.plantings()));
        KindTree kinds = KindTree.of(season.roles());
        this.free = new int[roles.size()][IN_TEN.length][season.weeks()];
        for (int r = 0; r < free.length; r++) {
            for (int w = 0; w < season.weeks(); w++) {
                int[] each = promises.free(kinds.node(roles.get(r)), w);
                for (int l = 0; l < IN_TEN.length; l++) {
                    free[r][l][w] = Promises.most(each, IN_TEN[l] / 10.0);
                }
            }
        }
    }

    /** Whether anything is free in any week. */
    boolean isAnything() {
        return Arrays.stream(free).anyMatch(role -> Arrays.stream(role[0]).anyMatch(stems -> stems > 0));
    }

    @Override
    public String id() {
        return "free";
    }

    @Override
    public String heading() {
        return "Free to promise";
    }

    @Override
    public String caption() {
        return "Stems that nobody was promised, by week and role: what is there in 9 years of 10 (darkest), in 8 and in 5"
                + " (lightest), after everybody who was promised any. Those who buy without a promise may want them too."
                + (areGiven
                        ? " Judged over the seasons that the season file gives, on which the plan was made: rather hopeful."
                        : " Judged over " + SEASONS + " possible seasons that the plan was not made on.")
                + " For an order of several kinds ask: promise.";
    }

    @Override
    public String description() {
        StringBuilder text = new StringBuilder();
        for (int r = 0; r < free.length; r++) {
            int best = 0;
            for (int w = 1; w < season.weeks(); w++) {
                best = free[r][2][w] > free[r][2][best] ? w : best;
            }
            text.append(text.isEmpty() ? "" : " ").append(roles.get(r)).append(": ");
            text.append(
                    free[r][2][best] == 0
                            ? "in no week anything in 9 years of 10."
                            : "most in the " + say.week(best) + ", " + free[r][2][best] + " stems in 9 years of 10.");
        }
        return text.toString();
    }

    @Override
    public double height() {
        return KEYS + TimeAxis.MONTHS + roles.size() * (STRIP + GAP);
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", "Free to promise");
        Keys keys = new Keys(svg, axis.left());
        for (int l = IN_TEN.length - 1; l >= 0; l--) {
            keys.box(LOOKS[l], IN_TEN[l] + " years in 10");
        }
        axis.draw(svg, KEYS, height());
        for (int r = 0; r < free.length; r++) {
            int[][] levels = free[r];
            int most = Arrays.stream(levels[0]).max().orElse(0);
            double top = KEYS + TimeAxis.MONTHS + r * (STRIP + GAP);
            Strip strip = Strip.of(axis, top, STRIP, most).frame(svg, roles.get(r), String.valueOf(most));
            for (int l = 0; l < IN_TEN.length; l++) {
                int[] stems = levels[l];
                svg.path(strip.between(w -> 0, w -> stems[w]), LOOKS[l]);
                // Outlines tell the levels apart without tones.
                svg.path(strip.steps(w -> stems[w]), l == 2 ? "usual" : "edge");
            }
            for (int w = 0; w < axis.weeks(); w++) {
                if (levels[0][w] > 0) {
                    strip.hover(
                            svg,
                            w,
                            say.week(w) + ", " + roles.get(r) + ": " + levels[2][w] + " stems free in 9 years of 10, "
                                    + levels[1][w] + " in 8, " + levels[0][w] + " in 5");
                }
            }
        }
    }

    @Override
    public Table table() {
        List<Table.Column> columns = List.of(
                Table.Column.text("Week"),
                Table.Column.text("Role"),
                Table.Column.number("9 years in 10"),
                Table.Column.number("8 years in 10"),
                Table.Column.number("5 years in 10"));
        List<List<String>> rows = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            for (int r = 0; r < free.length; r++) {
                if (free[r][0][w] > 0) {
                    rows.add(List.of(
                            say.shortWeek(w),
                            roles.get(r),
                            String.valueOf(free[r][2][w]),
                            String.valueOf(free[r][1][w]),
                            String.valueOf(free[r][0][w])));
                }
            }
        }
        return new Table("free-table", "Stems free to promise", columns, rows, List.of());
    }
}
