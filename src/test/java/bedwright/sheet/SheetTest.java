package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Season;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** The page as a whole. */
class SheetTest {
    private static final SheetFacts SMALL = SmallFarm.facts();
    private static final String HTML = Sheet.html(SMALL);
    private static final Page PAGE = Page.parse(HTML);

    @Test
    void theSmallFarmHasPlantingsToShow() {
        assertThat(SMALL.outcome().plantings()).hasSizeGreaterThan(3);
    }

    @Test
    void namesTheSeasonAndSaysThatItIsInvented() {
        assertThat(PAGE.all("h1").getFirst().getTextContent()).isEqualTo("Small farm");
        assertThat(PAGE.text()).contains("Invented: no such farm exists.");
    }

    @Test
    void theSameFactsGiveTheSameText() {
        assertThat(Sheet.html(SmallFarm.facts())).isEqualTo(HTML);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG-u-nu-arab", "tr-TR", "th-TH-u-ca-buddhist-nu-thai", "hi-IN-u-nu-deva"})
    void readsTheSameInEveryLocale(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(Sheet.html(SMALL)).isEqualTo(HTML);
            assertThat(Summary.text(SMALL, 80)).isEqualTo(summaryIn(Locale.ROOT));
            assertThat(PlantingsCsv.of(SMALL)).doesNotContain("٠", "๐", "०");
        } finally {
            Locale.setDefault(before);
        }
    }

    private static String summaryIn(Locale locale) {
        Locale.setDefault(locale);
        return Summary.text(SMALL, 80);
    }

    @Test
    void refersToNothingOutside() {
        assertThat(PAGE.attributes())
                .allSatisfy(a -> assertThat(a.name()).isNotIn("src", "srcset", "data", "action", "xlink:href"));
        assertThat(PAGE.attributes().stream().filter(a -> a.name().equals("href")))
                .isNotEmpty()
                .allSatisfy(a -> assertThat(a.value()).startsWith("#"));
        assertThat(HTML).doesNotContain("http:", "https:", "@import", "url(", "//");
        assertThat(PAGE.all("*").stream().map(Element::getTagName))
                .doesNotContain("script", "link", "iframe", "img", "image", "use", "object", "embed", "base");
    }

    @Test
    void everyLinkAndLabelLeadsSomewhere() {
        Set<String> ids = new HashSet<>();
        List<String> twice = new ArrayList<>();
        for (Page.Attribute attribute : PAGE.attributes()) {
            if (attribute.name().equals("id") && !ids.add(attribute.value())) {
                twice.add(attribute.value());
            }
        }
        assertThat(twice).isEmpty();
        for (Page.Attribute attribute : PAGE.attributes()) {
            if (attribute.name().equals("href")) {
                assertThat(ids).contains(attribute.value().substring(1));
            } else if (attribute.name().equals("aria-labelledby")) {
                assertThat(ids).contains(attribute.value().split(" "));
            }
        }
    }

    @Test
    void everyPictureHasATitleAndADescription() {
        assertThat(PAGE.all("svg")).hasSizeGreaterThanOrEqualTo(7).allSatisfy(svg -> {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(svg.getAttribute("aria-labelledby"))
                    .isEqualTo(svg.getAttribute("id") + "-title " + svg.getAttribute("id") + "-desc");
            assertThat(Page.within(svg, "desc").getFirst().getTextContent()).isNotBlank();
        });
    }

    @Test
    void headingsSkipNoLevel() {
        int before = 0;
        for (Element element : PAGE.all("*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int level = element.getTagName().charAt(1) - '0';
                assertThat(level).isBetween(1, before + 1);
                before = level;
            }
        }
        assertThat(before).isPositive();
    }

    @Test
    void everyCellThatHeadsARowOrColumnSaysWhich() {
        assertThat(PAGE.all("th"))
                .isNotEmpty()
                .allSatisfy(th -> assertThat(th.getAttribute("scope")).isIn("row", "col"));
        assertThat(PAGE.all("table"))
                .hasSizeGreaterThanOrEqualTo(8)
                .allSatisfy(table -> assertThat(Page.within(table, "caption")).hasSize(1));
    }

    @Test
    void namesDoNoHarmWhereverTheyStand() {
        Season season = SmallFarm.hostileSeason();
        SheetFacts facts = SmallFarm.facts(season);
        String html = Sheet.html(facts);
        Page page = Page.parse(html);

        assertThat(html).doesNotContain("<script").doesNotContain("<img");
        assertThat(page.all("*").stream().map(Element::getTagName)).doesNotContain("script", "img");
        assertThat(page.attributes().stream().map(Page.Attribute::name)).noneMatch(name -> name.startsWith("on"));
        assertThat(page.all("style"))
                .allSatisfy(style -> assertThat(style.getTextContent()).doesNotContain("alert"));
        assertThat(page.attributes().stream()
                        .filter(a -> a.name().equals("href") || a.name().equals("style")))
                .noneMatch(a -> a.value().contains("alert"));
    }

    @Test
    void namesAreShownAsTheyWereWritten() {
        Page page = Page.parse(Sheet.html(SmallFarm.facts(SmallFarm.hostileSeason())));

        for (String name :
                List.of("Small farm", "sunflower", "Fence1", "Boards", "hoppers", "mesh", "Stall", "Porch")) {
            assertThat(page.text()).contains(SmallFarm.HOSTILE + name);
        }
        assertThat(page.text()).contains(SmallFarm.HOSTILE_ROLE + "focal");
    }

    @Test
    void thePageSaysTheSameAsTheTerminal() {
        List<String> items =
                PAGE.all("li").stream().map(Element::getTextContent).toList();
        for (Summary.Part part : Summary.of(SMALL)) {
            assertThat(part.lines()).isNotEmpty();
            assertThat(items).containsAll(part.lines());
        }
    }

    @Test
    void demoFarmsSheetIsWellFormedAndShowsEveryPlanting() {
        SheetFacts demo = SmallFarm.demo();
        Page page = Page.parse(Sheet.html(demo));
        int plantings = demo.outcome().plantings().size();

        assertThat(plantings).isGreaterThan(100);
        assertThat(Page.marks(page.byId("band-beds"), "mark planting")).isEqualTo(plantings);
        long closely = page.all("svg").stream()
                .filter(svg -> svg.getAttribute("id").startsWith("closely-"))
                .mapToLong(svg -> Page.marks(svg, "mark planting"))
                .sum();
        assertThat(closely).isEqualTo(plantings);
        assertThat(page.rows("plantings-table", "tbody")).hasSize(plantings);
    }
}
