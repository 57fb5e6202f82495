package bedwright.problems;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.BedBlock;
import bedwright.season.Caution;
import bedwright.season.Crop;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Role;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The demo farm holds what is said of it. */
class DemoFarmTest {
    private final Season farm = ProblemFiles.season("demo-farm.json");

    @Test
    void runsFromOneAutumnsSowingToTheNextAutumnsEnd() {
        assertThat(farm.weeks()).isEqualTo(60);
        assertThat(farm.starts()).isEqualTo(LocalDate.of(2026, 9, 7));
        assertThat(farm.dateOf(farm.days() - 1)).isEqualTo(LocalDate.of(2027, 10, 31));
    }

    @Test
    void hasFiveBlocksOfBedsOneUnderATunnelAndAHedge() {
        assertThat(farm.beds()).hasSize(5);
        assertThat(farm.beds().stream()
                        .filter(b -> b.tunnel() != null)
                        .mapToInt(BedBlock::count)
                        .sum())
                .isEqualTo(4);
        assertThat(farm.allBeds()).hasSizeGreaterThanOrEqualTo(24);
        assertThat(farm.allBeds().stream().mapToDouble(b -> b.block().length()).sum())
                .isBetween(700.0, 800.0);
        assertThat(farm.windbreaks()).hasSize(1);
        assertThat(farm.roughGrass()).hasSize(1);
    }

    @Test
    void hasTwoPestsAndStormsFromTwoSides() {
        assertThat(farm.pests()).hasSize(2);
        assertThat(farm.site().storms()).hasSize(2);
    }

    @Test
    void has28CropsInFiveRolesWithSeventyMethodsOrMore() {
        assertThat(farm.crops()).hasSize(28);
        assertThat(farm.roles()).hasSize(5);
        assertThat(farm.crops().stream().mapToInt(c -> c.methods().size()).sum())
                .isGreaterThanOrEqualTo(70);
    }

    @Test
    void growsInEveryWayThereIs() {
        List<Method> methods =
                farm.crops().stream().flatMap(c -> c.methods().stream()).toList();
        assertThat(methods.stream().map(Method::start)).contains(Method.Start.values());
        assertThat(methods).anyMatch(Method::pinched).anyMatch(m -> !m.pinched());
        assertThat(methods).anyMatch(m -> m.net() != null).anyMatch(m -> m.cover() != null);
        assertThat(methods).anyMatch(m -> m.winterShare() < 1).anyMatch(m -> m.kinds() != null);
    }

    @Test
    void kindsAreThreeDeepWithAMostAWeek() {
        List<Role.Kind> palettes =
                farm.roles().stream().flatMap(r -> r.kinds().stream()).toList();
        assertThat(palettes).allMatch(p -> !p.kinds().isEmpty()).anyMatch(p -> p.mostAWeek() != null);
        assertThat(palettes.stream().flatMap(p -> p.kinds().stream())).anyMatch(k -> k.mostAWeek() != null);
    }

    @Test
    void everyCropSaysHowSureItsFiguresAreAndWhereTheyComeFrom() {
        for (Crop crop : farm.crops()) {
            assertThat(crop.figures()).as(crop.name()).containsKey("stems");
            assertThat(crop.figures().values()).as(crop.name()).allMatch(f -> f.source() != null);
        }
    }

    @Test
    void hasAboutSixHundredLotsToChooseFrom() {
        assertThat(farm.pool().stream().mapToInt(Lots::lots).sum()).isBetween(580, 620);
    }

    @Test
    void hasStandingPlantingsOfEverySort() {
        assertThat(farm.standing()).anyMatch(Standing::isWritten);
        assertThat(farm.standing()).anyMatch(s -> s.bed() != null && s.sown() != null);
        assertThat(farm.standing()).anyMatch(s -> s.bed() == null && s.method() != null);
        assertThat(farm.standing()).anyMatch(s -> s.bed() == null && s.method() == null);
    }

    @Test
    void hasSixEventsPromisedInThreeWays() {
        List<Order> events = farm.orders().stream().filter(Order::event).toList();
        assertThat(events).hasSize(6);
        List<Promise> promises =
                events.stream().map(Order::promise).filter(Objects::nonNull).toList();
        assertThat(promises).hasSize(6);
        assertThat(promises).anyMatch(p -> p.must() != null);
        assertThat(promises).anyMatch(p -> p.buyIn() != null);
        assertThat(promises).anyMatch(p -> p.must() == null && p.buyIn() == null);
    }

    @Test
    void sellsBouquetsInTwentyWeeksFortyToEightyAWeek() {
        List<Order.Ask> asks = farm.orders().stream()
                .filter(o -> !o.event())
                .flatMap(o -> o.asks().stream())
                .toList();
        assertThat(asks).allMatch(a -> a.bouquets() >= 40 && a.bouquets() <= 80);
        assertThat(asks.stream().mapToInt(this::weeks).sum()).isEqualTo(20);
    }

    private int weeks(Order.Ask ask) {
        LocalDate to = ask.to();
        return to == null ? 1 : farm.weekOf(to) - farm.weekOf(ask.from()) + 1;
    }

    @Test
    void theMarketsPricesFallWithTheAmount() {
        for (Role role : farm.roles()) {
            List<Double> prices = farm.outlets().stream()
                    .filter(o -> o.name().startsWith("Market, ") && o.kind().equals(role.name()))
                    .map(Outlet::price)
                    .toList();
            assertThat(prices).as(role.name()).hasSizeBetween(2, 3).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        }
    }

    @Test
    void isPlannedSteadilyOverSixteenPossibleSeasons() {
        assertThat(farm.possible().count()).isEqualTo(16);
        assertThat(farm.caution()).isEqualTo(Caution.STEADY);
    }
}
