package bedwright.file;

import bedwright.season.PriceList;
import bedwright.season.Season;
import java.util.List;

/** Where prices don't fit the season that they are said to be of. */
final class PriceCheck {
    private final Season season;
    private final int possible;
    private final Flaws flaws = new Flaws();

    private PriceCheck(Season season, int possible) {
        this.season = season;
        this.possible = possible;
    }

    /** All flaws. */
    static List<Flaw> of(PriceList prices, Season season, int possible) {
        PriceCheck check = new PriceCheck(season, possible);
        check.all(prices);
        return check.flaws.found();
    }

    private void all(PriceList prices) {
        if (prices.weights().size() != possible) {
            wrongCount("/weights", "weights", prices.weights().size(), possible, "possible season");
        }
        byWeek("/hours", "hours", prices.hours());
        byWeek("/cutting", "cutting", prices.cutting());
        byWeek("/hired", "hired", prices.hired());
        for (int w = 0; w < prices.hired().size(); w++) {
            bySeason("/hired/" + w, "hired", prices.hired().get(w));
        }
        byWeek("/bench", "bench", prices.bench());
        byWeek("/trays", "trays", prices.trays());
        fits("/nets", "nets", prices.nets(), season.stock().nets().size(), "net");
        for (int n = 0; n < prices.nets().size(); n++) {
            byWeek("/nets/" + n, "nets", prices.nets().get(n));
        }
        byWeek("/cover", "cover", prices.cover());
        int stocks = season.pool().size() + season.standing().size();
        fits("/lots", "lots", prices.lots(), stocks, "entry of its pool and standing plantings");
        fits("/standing", "standing", prices.standing(), season.standing().size(), "standing planting");
        List<PriceList.Stems> stems = prices.stems();
        flaws.unlessDifferent(
                "price of stems for",
                stems.stream()
                        .map(s -> s.kind() + " in the week of " + s.week())
                        .toList(),
                i -> "/stems/" + i + "/kind");
        Known known = new Known(season);
        Days days = new Days(season, flaws);
        for (int i = 0; i < stems.size(); i++) {
            String path = "/stems/" + i;
            known.checkKind(flaws, path + "/kind", stems.get(i).kind());
            days.firstOfAWeek(path + "/week", "week", stems.get(i).week());
            days.inside(path + "/week", "week", stems.get(i).week());
            bySeason(path + "/asked", "asked", stems.get(i).asked());
            bySeason(path + "/most", "most", stems.get(i).most());
        }
    }

    private void byWeek(String path, String key, List<?> some) {
        fits(path, key, some, season.weeks(), "week");
    }

    private void bySeason(String path, String key, List<?> some) {
        fits(path, key, some, possible, "possible season");
    }

    private void fits(String path, String key, List<?> some, int expected, String what) {
        if (!some.isEmpty() && some.size() != expected) {
            wrongCount(path, key, some.size(), expected, what);
        }
    }

    private void wrongCount(String path, String key, int found, int expected, String what) {
        flaws.add(
                path,
                Words.quoted(key) + " has " + Words.count(found, "entry", "entries") + ", but this season needs "
                        + expected + ", one for each " + what
                        + ". Are these the prices of another season? Look for them anew with plan --bound.");
    }
}
