package bedwright.file;

import bedwright.season.Site;
import bedwright.season.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/** The site of a season file by itself, to be pasted into one. */
public final class SitePart {
    private static final String LATITUDE = "latitude";
    /** Digits behind the point of what was reckoned in other units. */
    private static final int DIGITS = 3;

    private SitePart() {}

    /**
     * JSON of one group whose only key is {@code site}.
     *
     * @param units of the season file that it is meant for
     * @param hasLatitude whether the site's latitude is known; it is left out if not, and has to be added
     */
    public static String json(Site site, Units units, boolean hasLatitude) {
        return JsonText.of(group(List.of(Unbinder.member("site", node(site, units, hasLatitude)))));
    }

    /**
     * JSON of an answer with the site behind it.
     *
     * @param answer as for {@link PlainJson#text}
     */
    public static String json(Map<String, ?> answer, Site site, Units units, boolean hasLatitude) {
        return JsonText.of(PlainJson.group(answer, List.of(Unbinder.member("site", node(site, units, hasLatitude)))));
    }

    /**
     * A site that was reckoned, with figures that are short where they are written: in other units than metric ones they
     * would have more digits than anyone knows.
     */
    public static Site rounded(Site site, Units units) {
        if (units == Units.METRES) {
            return site;
        }
        Binder binder = new Binder("site", units);
        Site rounded = binder.bind(rounded(Unbinder.group(site, units)), Site.class);
        if (!binder.faults().isEmpty()) {
            throw new IllegalStateException("A rounded site is at fault: " + binder.faults());
        }
        return rounded;
    }

    private static Node rounded(Node node) {
        return switch (node) {
            case Node.Group keys ->
                group(keys.members().stream()
                        .map(member -> Unbinder.member(member.key(), rounded(member.value())))
                        .toList());
            case Node.Many many ->
                new Node.Many(
                        many.place(),
                        many.entries().stream().map(SitePart::rounded).toList(),
                        false);
            case Node.Number number ->
                Unbinder.number(Words.number(new BigDecimal(number.text()).setScale(DIGITS, RoundingMode.HALF_EVEN)));
            default -> node;
        };
    }

    private static Node.Group node(Site site, Units units, boolean hasLatitude) {
        return group(Unbinder.group(site, units).members().stream()
                .filter(member -> hasLatitude || !member.key().equals(LATITUDE))
                .toList());
    }

    private static Node.Group group(List<Node.Member> members) {
        return new Node.Group(Place.START, members, false);
    }
}
