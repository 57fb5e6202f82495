package bedwright.sheet;

import bedwright.growth.Barred;
import bedwright.growth.Spot;
import bedwright.plan.NotThere;
import bedwright.plan.Step;
import bedwright.plan.Tried;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** Why a crop does not stand in a bed from a week on, in a grower's words. */
public final class WhyNotThere {
    private WhyNotThere() {}

    /**
     * All of it as lines of text.
     *
     * @param crop index of the crop in the season
     * @param bed number of the bed
     * @param week week of sowing, setting or starting in trays
     * @param ways what one lot there would come to, by method
     * @param width most characters a line of a sentence
     */
    public static String text(Season season, int crop, int bed, int week, List<NotThere> ways, int width) {
        TriedWords words = new TriedWords(season);
        StringBuilder text = new StringBuilder();
        String name = season.crops().get(crop).name();
        text.append("One more lot of ").append(name).append(" in bed ");
        text.append(season.allBeds().get(bed).name()).append(", ").append(new Say(season).weeks(week, week));
        text.append(" (sown, set or started), really tried on the whole plan\n");
        if (ways.isEmpty()) {
            Summary.wrap(text, "The season has no lots of " + name + " that could be planted.", width);
            return text.toString();
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (NotThere way : ways) {
            String method = words.method(way.spot()).name();
            Barred barred = way.barred();
            Tried tried = way.tried();
            if (barred != null) {
                notes.add("By \"" + method + "\" it is not offered: " + words.barred(barred, way.spot()) + ".");
            } else if (tried == null) {
                notes.add("By \"" + method + "\": no lot of it is left out, or stands where it could be taken from.");
            } else {
                rows.add(words.row(method, tried));
                notes.addAll(sources(words, method, tried));
                notes.addAll(words.stops("By \"" + method + "\" it", tried));
                Tried instead = way.inPlaceOfOthers();
                if (instead != null) {
                    rows.add(words.row("  with room made for it", instead));
                    notes.add("By \"" + method + "\" with room made for it: " + others(words, instead) + " left out.");
                } else if (tried.isStopped()) {
                    notes.add(
                            "By \"" + method + "\": leaving out lots of up to three plantings in that bed does not make"
                                    + " it possible.");
                }
            }
        }
        if (!rows.isEmpty()) {
            TextTable.lines(new Table("there", "There", TriedWords.columns("Method"), rows, List.of()))
                    .forEach(line -> text.append("  ").append(line).append('\n'));
            Summary.wrap(text, words.key(), width);
        }
        notes.forEach(note -> Summary.wrap(text, note, width));
        return text.toString();
    }

    private static List<String> sources(TriedWords words, String method, Tried tried) {
        Spot from = tried.steps().getFirst().from();
        return from == null
                ? List.of()
                : List.of(
                        "By \"" + method + "\": all lots are planted, so the one that is missed least would come from "
                                + words.spot(from) + ".");
    }

    private static String others(TriedWords words, Tried tried) {
        List<String> others = new ArrayList<>();
        for (Step step : tried.steps()) {
            Spot from = step.from();
            if (step.to() == null && from != null) {
                others.add(Say.count(step.lots(), "lot", "lots") + " of " + words.name(step.stock()) + " ("
                        + words.spot(from) + ")");
            }
        }
        return String.join(", ", others);
    }
}
