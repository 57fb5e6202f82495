package bedwright.station;

import bedwright.season.Caution;
import bedwright.season.Currency;
import bedwright.season.Labour;
import bedwright.season.Rotation;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Stock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A season of which nothing is known but its weather: no beds, no crops. */
final class BareSeason {
    private BareSeason() {}

    static Season of(Site site, LocalDate starts, int weeks) {
        Sampling.BySureness none = new Sampling.BySureness(0, 0, 0);
        return new Season(
                "Weather alone",
                null,
                starts,
                weeks,
                new Currency("", 2),
                site,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Stock(0, null, List.of(), null),
                new Labour(0, 0, List.of(), List.of(), List.of(), List.of(), Map.of()),
                List.of(),
                List.of(),
                new Rotation(0, 0),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Caution.STEADY,
                new Sampling(1, 1, new Sampling.Doubt(none, none), List.of()));
    }
}
