package bedwright.file;

import bedwright.season.Site;
import java.util.List;
import java.util.Map;

/** The site of a season file by itself, to be pasted into one. */
public final class SitePart {
    private static final String LATITUDE = "latitude";

    private SitePart() {}

    /**
     * JSON of one group whose only key is {@code site}.
     *
     * @param hasLatitude whether the site's latitude is known; it is left out if not, and has to be added
     */
    public static String json(Site site, boolean hasLatitude) {
        Node.Group part = new Node.Group(Place.START, List.of(Unbinder.member("site", node(site, hasLatitude))), false);
        return JsonText.of(part);
    }

    /**
     * JSON of an answer with the site behind it.
     *
     * @param answer as for {@link PlainJson#text}
     */
    public static String json(Map<String, ?> answer, Site site, boolean hasLatitude) {
        return JsonText.of(PlainJson.group(answer, List.of(Unbinder.member("site", node(site, hasLatitude)))));
    }

    private static Node.Group node(Site site, boolean hasLatitude) {
        Node.Group group = Unbinder.group(site);
        return new Node.Group(
                Place.START,
                group.members().stream()
                        .filter(member -> hasLatitude || !member.key().equals(LATITUDE))
                        .toList(),
                false);
    }
}
