package bedwright.sheet;

import bedwright.season.Compass;
import bedwright.season.Pest;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Frost, damaging gusts by the side they come from, and pests. */
final class RiskBand implements Band {
    private static final double KEYS = 12;
    private static final double FROST = 20;
    private static final double STRIP = 11;
    private static final double GAP = 3;

    private final Season season;
    private final Say say;
    private final Risks risks;

    RiskBand(Season season) {
        this.season = season;
        this.say = new Say(season);
        this.risks = new Risks(season);
    }

    @Override
    public String id() {
        return "risks";
    }

    @Override
    public String heading() {
        return "Risks";
    }

    @Override
    public String caption() {
        return "Frost: the chance that a frost (" + freezing()
                + ", in the open) is still to come in spring, or has come in autumn."
                + " Gusts: the chance of at least one damaging gust from that side in the week. Pests: the share that"
                + " each takes in a week of what it loves, uncovered and beside the rough grass, in a usual year.";
    }

    private String freezing() {
        Unit temperature = season.units().temperature();
        return Say.whole(temperature.of(0)) + " " + temperature.symbol();
    }

    @Override
    public String description() {
        StringBuilder text = new StringBuilder();
        if (risks.hasFrost()) {
            text.append("Frost threatens (1 year in 10 or more) in the ");
            List<String> runs = new ArrayList<>();
            for (Run run : Run.of(season.weeks(), w -> risks.frostInWeek(w) >= 0.1 ? 1 : 0)) {
                runs.add(say.weeks(run));
            }
            text.append(runs.isEmpty() ? "no week" : String.join(" and ", runs)).append(". ");
        }
        for (Site.StormSide side : season.site().storms()) {
            text.append(peak(gustName(side), w -> risks.gust(side, w)));
        }
        for (Pest pest : season.pests()) {
            text.append(peak(pest.name(), w -> risks.pest(pest, w)));
        }
        return text.toString().strip();
    }

    private String peak(String name, IntToDoubleFunction chance) {
        int at = 0;
        for (int w = 1; w < season.weeks(); w++) {
            at = chance.applyAsDouble(w) > chance.applyAsDouble(at) ? w : at;
        }
        return name + ": at most " + Say.percent(chance.applyAsDouble(at)) + ", from the week of " + say.week(at)
                + ". ";
    }

    private static String gustName(Site.StormSide side) {
        return "gusts, " + Compass.name(side.from());
    }

    @Override
    public double height() {
        int strips = season.site().storms().size() + season.pests().size();
        return KEYS + TimeAxis.MONTHS + (risks.hasFrost() ? FROST + GAP : 0) + strips * (STRIP + GAP);
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", "Risks");
        new Keys(svg, axis.left())
                .box("frost", "chance of frost")
                .box("gust", "chance of a damaging gust")
                .box("pest", "share taken by pests");
        axis.draw(svg, KEYS, height());
        double top = KEYS + TimeAxis.MONTHS;
        if (risks.hasFrost()) {
            draw(svg, Strip.of(axis, top, FROST, 1), "frost", "frost", "", risks::frostInWeek);
            top += FROST + GAP;
        }
        for (Site.StormSide side : season.site().storms()) {
            String tail = " of a damaging gust from " + Compass.name(side.from());
            draw(
                    svg,
                    strip(axis, top, w -> risks.gust(side, w)),
                    gustName(side),
                    "gust",
                    tail,
                    w -> risks.gust(side, w));
            top += STRIP + GAP;
        }
        for (Pest pest : season.pests()) {
            String tail = " of what they love is taken";
            draw(svg, strip(axis, top, w -> risks.pest(pest, w)), pest.name(), "pest", tail, w -> risks.pest(pest, w));
            top += STRIP + GAP;
        }
    }

    private Strip strip(TimeAxis axis, double top, IntToDoubleFunction chance) {
        double most = 0;
        for (int w = 0; w < season.weeks(); w++) {
            most = Math.max(most, chance.applyAsDouble(w));
        }
        return Strip.of(axis, top, STRIP, most);
    }

    private void draw(Svg svg, Strip strip, String name, String look, String tail, IntToDoubleFunction chance) {
        strip.frame(svg, name, Say.percent(strip.most()));
        svg.path(strip.between(w -> 0, chance), look);
        for (int w = 0; w < season.weeks(); w++) {
            if (chance.applyAsDouble(w) >= 0.005) {
                strip.hover(svg, w, say.week(w) + ", " + name + ": " + Say.percent(chance.applyAsDouble(w)) + tail);
            }
        }
    }

    @Override
    public Table table() {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.text("Week"));
        if (risks.hasFrost()) {
            columns.add(Table.Column.number("Frost"));
        }
        season.site().storms().forEach(side -> columns.add(Table.Column.number(gustName(side))));
        season.pests().forEach(pest -> columns.add(Table.Column.number(pest.name())));
        List<List<String>> rows = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            List<String> row = new ArrayList<>();
            row.add(say.shortWeek(w));
            if (risks.hasFrost()) {
                row.add(Say.percent(risks.frostInWeek(w)));
            }
            for (Site.StormSide side : season.site().storms()) {
                row.add(Say.percent(risks.gust(side, w)));
            }
            for (Pest pest : season.pests()) {
                row.add(Say.percent(risks.pest(pest, w)));
            }
            rows.add(row);
        }
        return new Table("risks-table", "Frost, gusts and pests by week", columns, rows);
    }
}
