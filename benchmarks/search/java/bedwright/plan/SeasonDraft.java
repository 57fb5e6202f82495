package bedwright.plan;

import bedwright.season.BedBlock;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Role;
import bedwright.season.RoughGrass;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Stock;
import bedwright.season.Windbreak;
import java.util.List;
import java.util.function.UnaryOperator;

/** A season on its way to another: what a family of problems changes, each part by itself. */
final class SeasonDraft {
    private final Season from;
    String name;
    List<BedBlock> beds;
    List<Windbreak> windbreaks;
    List<RoughGrass> roughGrass;
    Stock stock;
    Labour labour;
    List<Role> roles;
    List<Lots> pool;
    List<Standing> standing;
    List<Outlet> outlets;
    List<Order> orders;
    Sampling possible;

    SeasonDraft(Season from) {
        this.from = from;
        this.name = from.name();
        this.beds = from.beds();
        this.windbreaks = from.windbreaks();
        this.roughGrass = from.roughGrass();
        this.stock = from.stock();
        this.labour = from.labour();
        this.roles = from.roles();
        this.pool = from.pool();
        this.standing = from.standing();
        this.outlets = from.outlets();
        this.orders = from.orders();
        this.possible = from.possible();
    }

    void eachOutlet(UnaryOperator<Outlet> change) {
        outlets = outlets.stream().map(change).toList();
    }

    void eachOrder(UnaryOperator<Order> change) {
        orders = orders.stream().map(change).toList();
    }

    Season season() {
        return new Season(
                name,
                from.about(),
                from.starts(),
                from.weeks(),
                from.currency(),
                from.site(),
                beds,
                windbreaks,
                roughGrass,
                from.pests(),
                stock,
                labour,
                roles,
                from.families(),
                from.rotation(),
                from.crops(),
                pool,
                standing,
                outlets,
                from.recipes(),
                orders,
                from.caution(),
                possible);
    }
}
