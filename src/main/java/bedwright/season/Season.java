package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A season: a run of whole weeks on one farm, all that grows or may grow in it and all who want stems.
 *
 * <p>Week 0 starts on {@link #starts}, and every week starts on that weekday. Days are numbered from 0 on that day.
 */
public record Season(
        @Fact(value = "Name of the season, as it stands on the sheet", least = 1)
        String name,

        @Fact("Anything to be said about the season; an invented farm says so here") @Nullable
        String about,

        @Fact(
                value =
                        "Units of this file: metres (with °C and m/s) or feet (with inches for what is small, °F and miles"
                                + " an hour)",
                byDefault = "\"metres\"")
        Units units,

        @Fact("First day of the season; its weekday is the first day of every week")
        LocalDate starts,

        @Fact(value = "Number of weeks", min = 1, max = 80) int weeks,

        @Fact(value = "The currency of all prices", byDefault = "{}")
        Currency currency,

        @Fact("Where the farm lies and what weather it has") Site site,

        @Fact(value = "Beds, one by one or in blocks", least = 1)
        List<BedBlock> beds,

        @Fact(value = "Hedges, belts and fences that break the wind", byDefault = "[]")
        List<Windbreak> windbreaks,

        @Fact(value = "Edges of rough grass, from which some pests come", byDefault = "[]")
        List<RoughGrass> roughGrass,

        @Fact(value = "What eats seed, seedlings or blooms", byDefault = "[]")
        List<Pest> pests,

        @Fact(value = "Bench, trays, nets and row cover", byDefault = "{}")
        Stock stock,

        @Fact(value = "Hands, hours and what work takes", byDefault = "{}")
        Labour labour,

        @Fact(value = "Kinds of stems: the roles, and the kinds under each", least = 1)
        List<Role> roles,

        @Fact(value = "Plant families and how long a bed rests from each", byDefault = "[]")
        List<Family> families,

        @Fact(value = "What it costs to break the rotation", byDefault = "{}")
        Rotation rotation,

        @Fact(value = "Crops and the ways each is grown", byDefault = "[]")
        List<Crop> crops,

        @Fact(value = "Plantings to choose from: equal small lots of a crop", byDefault = "[]")
        List<Lots> pool,

        @Fact(value = "What already stands, or is bought", byDefault = "[]")
        List<Standing> standing,

        @Fact(value = "Lots of the pool that are held in place, wherever else a plan might have them", byDefault = "[]")
        List<Held> held,

        @Fact(value = "Who takes single kinds of stems, and at what price", byDefault = "[]")
        List<Outlet> outlets,

        @Fact(value = "Bouquet recipes", byDefault = "[]") List<Recipe> recipes,

        @Fact(value = "Bouquets ordered: weekly ones and those of events", byDefault = "[]")
        List<Order> orders,

        @Fact(value = "Weight of the bad seasons: bold, steady, careful or whole per cent", byDefault = "\"steady\"")
        Caution caution,

        @Fact(value = "Possible seasons over which a plan is judged", byDefault = "{}")
        Sampling possible,

        @Fact(value = "What it costs to change the plan during the season", byDefault = "{}")
        ChangePrices changes,

        @Fact("How far the season has come; left out: it has not begun") @Nullable
        UnderWay underWay) {

    public Season {
        if (weeks < 1 || weeks > 80) {
            throw new IllegalArgumentException("A season has 1 to 80 weeks, not " + weeks);
        }
        beds = List.copyOf(beds);
        windbreaks = List.copyOf(windbreaks);
        roughGrass = List.copyOf(roughGrass);
        pests = List.copyOf(pests);
        roles = List.copyOf(roles);
        families = List.copyOf(families);
        crops = List.copyOf(crops);
        pool = List.copyOf(pool);
        standing = List.copyOf(standing);
        held = List.copyOf(held);
        outlets = List.copyOf(outlets);
        recipes = List.copyOf(recipes);
        orders = List.copyOf(orders);
    }

    /** A season written in metres that has not begun, with nothing held in place and the usual prices of changes. */
    public Season(
            String name,
            @Nullable String about,
            LocalDate starts,
            int weeks,
            Currency currency,
            Site site,
            List<BedBlock> beds,
            List<Windbreak> windbreaks,
            List<RoughGrass> roughGrass,
            List<Pest> pests,
            Stock stock,
            Labour labour,
            List<Role> roles,
            List<Family> families,
            Rotation rotation,
            List<Crop> crops,
            List<Lots> pool,
            List<Standing> standing,
            List<Outlet> outlets,
            List<Recipe> recipes,
            List<Order> orders,
            Caution caution,
            Sampling possible) {
        this(
                name,
                about,
                Units.METRES,
                starts,
                weeks,
                currency,
                site,
                beds,
                windbreaks,
                roughGrass,
                pests,
                stock,
                labour,
                roles,
                families,
                rotation,
                crops,
                pool,
                standing,
                List.of(),
                outlets,
                recipes,
                orders,
                caution,
                possible,
                ChangePrices.USUAL,
                null);
    }

    /** Week in which it is: that which holds the day it is, or 0 if it has not begun. */
    public int firstWeek() {
        return underWay == null ? 0 : Math.clamp(weekOf(underWay.on()), 0, weeks);
    }

    /** Number of days, 7 a week. */
    public int days() {
        return 7 * weeks;
    }

    /** The date of a day; negative days lie before the season. */
    public LocalDate dateOf(int day) {
        return starts.plusDays(day);
    }

    /** The first day of a week, as a date; negative weeks lie before the season. */
    public LocalDate weekStart(int week) {
        return starts.plusWeeks(week);
    }

    /** The day of a date, counted from the season's first; negative before it. */
    public int dayOf(LocalDate date) {
        return Math.toIntExact(date.toEpochDay() - starts.toEpochDay());
    }

    /** The week in which a date falls; negative before the season. */
    public int weekOf(LocalDate date) {
        return Math.floorDiv(dayOf(date), 7);
    }

    /** All beds one by one, in the order of the blocks; a bed's index in this list is its number everywhere. */
    public List<Bed> allBeds() {
        return Bed.of(beds);
    }

    /** What is left of the season once it is under way. */
    public Season begun(
            UnderWay how,
            List<BedBlock> itsBeds,
            Labour itsLabour,
            List<Lots> itsPool,
            List<Standing> itsStanding,
            List<Outlet> itsOutlets,
            List<Order> itsOrders) {
        return new Season(
                name,
                about,
                units,
                starts,
                weeks,
                currency,
                site,
                itsBeds,
                windbreaks,
                roughGrass,
                pests,
                stock,
                itsLabour,
                roles,
                families,
                rotation,
                crops,
                itsPool,
                itsStanding,
                held,
                itsOutlets,
                recipes,
                itsOrders,
                caution,
                possible,
                changes,
                how);
    }

    /** The same season, otherwise under way. */
    public Season with(UnderWay how) {
        return begun(how, beds, labour, pool, standing, outlets, orders);
    }

    /** The same season with another caution. */
    public Season with(Caution other) {
        return with(units, site, other, possible, pool);
    }

    /** The same season judged over other possible seasons. */
    public Season with(Sampling other) {
        return with(units, site, caution, other, pool);
    }

    /** The same season at another site, or with another climate. */
    public Season with(Site other) {
        return with(units, other, caution, possible, pool);
    }

    /** The same season written in other units. */
    public Season with(Units other) {
        return with(other, site, caution, possible, pool);
    }

    /** The same season with other lots to choose from. */
    public Season withPool(List<Lots> other) {
        return with(units, site, caution, possible, other);
    }

    /** The same season with other lots held in place. */
    public Season withHeld(List<Held> other) {
        return with(units, site, caution, possible, pool, other);
    }

    /** The same season with other prices of changes. */
    public Season with(ChangePrices other) {
        return new Season(
                name,
                about,
                units,
                starts,
                weeks,
                currency,
                site,
                beds,
                windbreaks,
                roughGrass,
                pests,
                stock,
                labour,
                roles,
                families,
                rotation,
                crops,
                pool,
                standing,
                held,
                outlets,
                recipes,
                orders,
                caution,
                possible,
                other,
                underWay);
    }

    private Season with(
            Units otherUnits, Site otherSite, Caution otherCaution, Sampling otherSampling, List<Lots> otherPool) {
        return with(otherUnits, otherSite, otherCaution, otherSampling, otherPool, held);
    }

    private Season with(
            Units otherUnits,
            Site otherSite,
            Caution otherCaution,
            Sampling otherSampling,
            List<Lots> otherPool,
            List<Held> otherHeld) {
        return new Season(
                name,
                about,
                otherUnits,
                starts,
                weeks,
                currency,
                otherSite,
                beds,
                windbreaks,
                roughGrass,
                pests,
                stock,
                labour,
                roles,
                families,
                rotation,
                crops,
                otherPool,
                standing,
                otherHeld,
                outlets,
                recipes,
                orders,
                otherCaution,
                otherSampling,
                changes,
                underWay);
    }

    /** What stands already of a stock of equal plantings: the pool's entries are numbered first; null for one of those. */
    public @Nullable Standing standingOf(int stock) {
        return stock < pool.size() ? null : standing.get(stock - pool.size());
    }

    /** The crop of a stock, so numbered. */
    public Crop cropOf(int stock) {
        Standing stood = standingOf(stock);
        String name = stood == null ? pool.get(stock).crop() : stood.crop();
        return crops.stream()
                .filter(crop -> crop.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
