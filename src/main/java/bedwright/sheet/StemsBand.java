package bedwright.sheet;

import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Stems that can be cut against stems asked for, a strip for each role. */
final class StemsBand implements Band {
    private static final double KEYS = 12;
    private static final double STRIP = 33;
    private static final double GAP = 4;
    private static final double MARK = 3.2;

    private final Say say;
    private final List<RoleWeeks> roles;

    StemsBand(Season season, List<RoleWeeks> roles) {
        this.say = new Say(season);
        this.roles = roles;
    }

    @Override
    public String id() {
        return "stems";
    }

    @Override
    public String heading() {
        return "Stems";
    }

    @Override
    public String caption() {
        return "What is ready to cut against what is asked for, week by week, each role on its own scale. The coloured"
                + " band holds what comes in 8 years of 10, the line in it a usual year. The broken line is all that is"
                + " asked for, the thick black one what of it is promised. A black square marks a week in which"
                + " something promised is short in a usual year, an open one a week in which it is short in one year"
                + " of ten.";
    }

    @Override
    public String description() {
        StringBuilder text = new StringBuilder();
        for (RoleWeeks role : roles) {
            double ready = Arrays.stream(role.ready()).mapToDouble(Spread::mean).sum();
            text.append(text.isEmpty() ? "" : " ")
                    .append(role.name())
                    .append(": ")
                    .append(Say.stems(ready))
                    .append(" stems in the season, ")
                    .append(Say.stems(Arrays.stream(role.asked()).sum()))
                    .append(" asked for at the most, ")
                    .append(Say.stems(Arrays.stream(role.promised()).sum()))
                    .append(" promised.");
        }
        return text.toString();
    }

    @Override
    public double height() {
        return KEYS + TimeAxis.MONTHS + roles.size() * (STRIP + GAP);
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", "Stems a week");
        Keys keys = new Keys(svg, axis.left());
        keys.box("tint0", "8 years in 10").line("usual", "usual year");
        keys.line("promised", "promised").line("asked", "all asked for");
        keys.box("missing", "promised ones short in a usual year").box("rest", "short in one year of ten");
        axis.draw(svg, KEYS, height());
        for (int r = 0; r < roles.size(); r++) {
            RoleWeeks role = roles.get(r);
            double top = KEYS + TimeAxis.MONTHS + r * (STRIP + GAP);
            Strip strip = Strip.of(axis, top, STRIP, role.most());
            drawRole(svg, axis, strip.frame(svg, role.name(), Say.stems(role.most())), role, r);
        }
    }

    private void drawRole(Svg svg, TimeAxis axis, Strip strip, RoleWeeks role, int number) {
        svg.path(strip.between(w -> role.ready()[w].low(), w -> role.ready()[w].high()), "tint" + Look.role(number));
        svg.path(strip.steps(w -> role.ready()[w].middle()), "usual");
        svg.path(strip.steps(w -> role.asked()[w]), "asked");
        svg.path(strip.steps(w -> role.promised()[w]), "promised");
        for (int w = 0; w < axis.weeks(); w++) {
            Spread missing = role.missing()[w];
            if (missing.high() > RoleWeeks.NOTICED) {
                String look = missing.middle() > RoleWeeks.NOTICED ? "missing" : "rest";
                svg.rect(axis.x(w) + axis.week() / 2 - MARK / 2, strip.top(), MARK, MARK, look);
            }
            if (!role.isQuiet(w)) {
                strip.hover(svg, w, figures(role, w));
            }
        }
    }

    private String figures(RoleWeeks role, int w) {
        Spread ready = role.ready()[w];
        Spread missing = role.missing()[w];
        return say.week(w) + ", " + role.name() + ": " + Say.stems(ready.middle()) + " stems in a usual year, "
                + Say.stems(ready.low()) + " to " + Say.stems(ready.high()) + " in 8 years of 10; asked for "
                + Say.stems(role.asked()[w]) + ", promised " + Say.stems(role.promised()[w])
                + (missing.high() > RoleWeeks.NOTICED
                        ? "; promised ones missing: " + Say.stems(missing.middle()) + " in a usual year, "
                                + Say.stems(missing.high()) + " in one of ten"
                        : "");
    }

    @Override
    public Table table() {
        List<Table.Column> columns = List.of(
                Table.Column.text("Week"),
                Table.Column.text("Role"),
                Table.Column.number("Asked for"),
                Table.Column.number("of it promised"),
                Table.Column.number("Ready, 1 year in 10"),
                Table.Column.number("usual year"),
                Table.Column.number("9 years in 10"),
                Table.Column.number("mean"),
                Table.Column.number("Promised, missing (mean)"),
                Table.Column.number("Left over (mean)"));
        List<List<String>> rows = new ArrayList<>();
        int weeks = roles.isEmpty() ? 0 : roles.getFirst().asked().length;
        for (int w = 0; w < weeks; w++) {
            for (RoleWeeks role : roles) {
                if (!role.isQuiet(w)) {
                    Spread ready = role.ready()[w];
                    rows.add(List.of(
                            say.shortWeek(w),
                            role.name(),
                            Say.stems(role.asked()[w]),
                            Say.stems(role.promised()[w]),
                            Say.stems(ready.low()),
                            Say.stems(ready.middle()),
                            Say.stems(ready.high()),
                            Say.stems(ready.mean()),
                            Say.stems(role.missing()[w].mean()),
                            Say.stems(role.left()[w].mean())));
                }
            }
        }
        List<List<String>> totals = new ArrayList<>();
        for (RoleWeeks role : roles) {
            totals.add(List.of(
                    "Season",
                    role.name(),
                    Say.stems(Arrays.stream(role.asked()).sum()),
                    Say.stems(Arrays.stream(role.promised()).sum()),
                    "",
                    "",
                    "",
                    Say.stems(mean(role.ready())),
                    Say.stems(mean(role.missing())),
                    Say.stems(mean(role.left()))));
        }
        return new Table("stems-table", "Stems a week by role", columns, rows, totals);
    }

    private static double mean(Spread[] weeks) {
        return Arrays.stream(weeks).mapToDouble(Spread::mean).sum();
    }
}
