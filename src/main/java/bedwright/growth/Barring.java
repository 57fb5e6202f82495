package bedwright.growth;

import bedwright.climate.PossibleSeason;
import bedwright.season.Season;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tells why a season does not offer some spot, by the same tests by which the {@link ProspectTable} leaves it out. */
public final class Barring {
    private final Offers offers;

    private Barring(Offers offers) {
        this.offers = offers;
    }

    /** For the spots of a season over these possible seasons. */
    public static Barring of(Season season, List<PossibleSeason> seasons) {
        return new Barring(new Offers(season, seasons, Set.of()));
    }

    /**
     * The first reason for which a spot is not offered; empty if it is.
     *
     * @param spot whose stock, bed and method the season has
     */
    public Optional<Barred> why(Spot spot) {
        return Optional.ofNullable(offers.whyNot(spot));
    }
}
