package bedwright.sheet;

import bedwright.season.Method;
import bedwright.season.Season;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Tags for trays and for the stretches of beds, in the order in which they are needed. */
public final class Tags {
    private final List<Tag> trays = new ArrayList<>();
    private final List<Tag> beds = new ArrayList<>();

    /**
     * One tag.
     *
     * @param number number of the planting
     * @param crop crop, or the name of what stands
     * @param method how it is grown
     * @param lines dates and places
     */
    public record Tag(int number, String crop, String method, List<String> lines) {
        public Tag {
            lines = List.copyOf(lines);
        }
    }

    /** The tags of a plan. */
    public Tags(SheetFacts facts) {
        Season season = facts.season();
        Say say = new Say(season);
        List<Shown> plantings = new ArrayList<>(Shown.of(facts));
        Whereabouts where = Whereabouts.of(season, plantings);
        plantings.removeIf(planting -> isGone(season, planting));
        plantings.stream()
                .filter(planting -> planting.trayFrom() < planting.trayTo())
                .sorted(Comparator.comparingInt(Shown::trayFrom).thenComparingInt(Shown::number))
                .forEach(planting -> trays.add(tag(
                        planting,
                        List.of(
                                "Sown " + say.date(planting.kept().sown()) + ", " + Say.whole(planting.cells())
                                        + " cells",
                                "To " + planting.kept().bed() + " " + say.week(planting.heldFrom())))));
        plantings.stream()
                .sorted(Comparator.comparingInt(Shown::heldFrom).thenComparingInt(Shown::number))
                .forEach(planting -> {
                    for (Stretches.Stretch stretch : where.of(planting)) {
                        beds.add(tag(
                                planting,
                                List.of(planting.kept().bed() + ", " + where.fromTo(stretch), began(say, planting))));
                    }
                });
    }

    private static boolean isGone(Season season, Shown planting) {
        Integer standing = planting.kept().standing();
        return standing != null && season.standing().get(standing - 1).isPulled();
    }

    private static Tag tag(Shown planting, List<String> lines) {
        return new Tag(planting.number(), planting.name(), planting.kept().method(), lines);
    }

    private static String began(Say say, Shown planting) {
        if (planting.isWritten()) {
            return "Stands";
        }
        LocalDate out = planting.kept().out();
        String date = planting.method().start() != Method.Start.TRAY
                ? say.date(planting.kept().sown())
                : out == null ? say.week(planting.heldFrom()) : say.date(out);
        return switch (planting.method().start()) {
            case SOWN -> "Sown " + date;
            case TRAY -> "Planted out " + date;
            case PLUGS, SET -> "Set " + date;
        };
    }

    /** Tags for trays. */
    public List<Tag> trays() {
        return List.copyOf(trays);
    }

    /** Tags for beds, one for each stretch. */
    public List<Tag> beds() {
        return List.copyOf(beds);
    }

    /** All tags on a page to print and cut out. */
    public String html() {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render("tags.jte", Map.<String, Object>of("trays", trays(), "beds", beds()), out);
        return out.toString();
    }
}
