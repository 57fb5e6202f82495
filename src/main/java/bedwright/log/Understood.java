package bedwright.log;

import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a note was understood to say, as a sentence. */
public final class Understood {
    private Understood() {}

    /**
     * The note as a sentence, beginning with its number and day.
     *
     * @param plan the plan that it is about
     */
    public static String sentence(Plan plan, Entry entry) {
        return "Note " + entry.number() + ", " + entry.on() + ": " + said(plan, entry);
    }

    private static String said(Plan plan, Entry entry) {
        return switch (entry.note()) {
            case Note.Seen seen ->
                named(plan, seen.planting()) + " " + seen.stage().sentence() + ".";
            case Note.CameUp up ->
                named(plan, up.planting()) + " is up: " + up.share().said() + " of what was sown came up.";
            case Note.Counted counted ->
                named(plan, counted.planting()) + ": "
                        + counted.stands().said() + " stand"
                        + (counted.stands().isShare() ? " of all that were planted." : ".");
            case Note.Lost lost ->
                named(plan, lost.planting()) + ": lost " + lost.lost().said()
                        + (lost.lost().isShare() ? " of what stood" : "")
                        + (lost.cause() == Note.Cause.OTHER
                                ? "."
                                : " to " + lost.cause().name().toLowerCase(Locale.ROOT) + ".");
            case Note.Cut cut -> named(plan, cut.planting()) + ": " + cut.stems() + " stems cut, " + left(cut) + ".";
            case Note.Moved moved -> named(plan, moved.planting()) + ": moved to " + moved.to() + ".";
            case Note.InBed other -> named(plan, other.planting()) + ": in bed " + other.bed() + ".";
            case Note.OfPlants many -> named(plan, many.planting()) + ": of " + many.plants() + " plants.";
            case Note.NotDone none -> named(plan, none.planting()) + ": left out, never sown or set.";
            case Note.Pulled pulled -> named(plan, pulled.planting()) + ": pulled; its bed is free.";
            case Note.WeekDone week ->
                "the week of " + week.week() + " was done as planned"
                        + (week.except().isEmpty()
                                ? "."
                                : week.except().stream()
                                        .map(number -> named(plan, number))
                                        .collect(Collectors.joining("; ", ", but for: ", ".")));
            case Note.Weather day -> FarmWords.said(plan.season(), day);
            case Note.Ordered order -> FarmWords.said(plan.season(), order);
            case Note.OrderGone gone ->
                "the order \"" + gone.name() + "\" is gone "
                        + (gone.weeks() == null
                                ? "from " + entry.on() + " on."
                                : "in the weeks of " + gone.weeks().said() + ".");
            case Note.BedGone gone ->
                "nothing can be planted in bed " + gone.bed() + " on "
                        + gone.time().said() + "; what stands there is taken to stay until it is noted as pulled.";
            case Note.HelperGone helper -> FarmWords.said(helper);
            case Note.StockGone gone -> FarmWords.said(plan.season(), gone);
            case Note.TakenBack back -> "note " + back.number() + " no longer counts.";
            case Note.Said words -> words.words();
        };
    }

    private static String left(Note.Cut cut) {
        Integer left = cut.left();
        if (left == null) {
            return "nothing said of what was left";
        }
        return left == 0 ? "all that was ready" : left + " left that were ready";
    }

    /** A figure without needless noughts. */
    static String plain(double figure) {
        return String.format(Locale.ROOT, "%.2f", figure).replaceFirst("\\.?0+$", "");
    }

    private static String named(Plan plan, int number) {
        return plan.everyPlanting().stream()
                .filter(planting -> planting.number() == number)
                .map(Understood::named)
                .findFirst()
                .orElse("planting " + number);
    }

    private static String named(KeptPlanting planting) {
        return "planting " + planting.number() + " (" + planting.crop() + ", bed " + planting.bed() + ", sown "
                + planting.sown() + ")";
    }
}
