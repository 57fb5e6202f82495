package bedwright.sheet;

import bedwright.season.Bed;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where along their beds the plantings lie, by number: the same stretches as on the season sheet. */
final class Whereabouts {
    private final Map<Integer, List<Stretches.Stretch>> stretches = new HashMap<>();

    private final Say say;

    private Whereabouts(Say say) {
        this.say = say;
    }

    static Whereabouts of(Season season, List<Shown> plantings) {
        Whereabouts all = new Whereabouts(new Say(season));
        for (Bed bed : season.allBeds()) {
            for (Stretches.Stretch stretch : BedRow.of(season, bed, plantings).stretches()) {
                all.stretches
                        .computeIfAbsent(stretch.planting().number(), n -> new ArrayList<>())
                        .add(stretch);
            }
        }
        return all;
    }

    /** The stretches of a planting; none for one that never holds its bed. */
    List<Stretches.Stretch> of(Shown planting) {
        return stretches.getOrDefault(planting.number(), List.of());
    }

    /** "Bed 3, 4.2–7.4 m", metres counted from the bed's start. */
    String words(Shown planting) {
        List<String> parts = of(planting).stream().map(this::fromTo).toList();
        String bed = planting.kept().bed();
        return parts.isEmpty() ? bed : bed + ", " + String.join(" and ", parts);
    }

    /** "Bed 3 4.2–7.4", for a sheet that says once what the figures are. */
    String brief(Shown planting) {
        List<String> parts = of(planting).stream()
                .map(stretch -> say.length(stretch.start()) + "–" + say.length(stretch.end()))
                .toList();
        String bed = planting.kept().bed();
        return parts.isEmpty() ? bed : bed + "\u00a0" + String.join("\u00a0+\u00a0", parts);
    }

    /** "4.2–7.4 m". */
    String fromTo(Stretches.Stretch stretch) {
        return say.length(stretch.start()) + "–"
                + say.lengthWithUnit(stretch.end()).replace(' ', '\u00a0');
    }
}
