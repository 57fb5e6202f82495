package bedwright.file;

import bedwright.season.Season;
import java.util.List;

/** What does not hold together in a season although each of its values is right alone. */
final class SeasonCheck {
    private SeasonCheck() {}

    /** All flaws, in no particular order. */
    static List<Flaw> of(Season season) {
        Flaws flaws = new Flaws();
        Known known = new Known(season);
        Days days = new Days(season, flaws);
        new SiteCheck(season, known, days, flaws).run();
        new CropCheck(season, known, flaws).run();
        new DemandCheck(season, known, days, flaws).run();
        new StandingCheck(season, known, days, flaws).run();
        new StandingRoom(season, flaws).run();
        new SumsCheck(season, flaws).run();
        new HeldCheck(season, known, days, flaws).run();
        return flaws.found();
    }
}
