package bedwright.sheet;

import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.season.Hazard;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The buying list of a plan: seed, plugs, tubers, trays, potting mix, nets and cover, by the date to order them. */
public final class Buying {
    private static final Set<Hazard> OF_SEED = EnumSet.of(Hazard.POISONOUS_SEED, Hazard.TREATED_SEED);
    private static final Set<Hazard> OF_TUBERS = EnumSet.of(Hazard.POISONOUS, Hazard.SAP, Hazard.SUN_AND_SAP);

    private final Season season;
    private final Say say;
    private final Outcome outcome;
    private final BuyingList list;
    private final Wishes wishes;

    /**
     * What the plan does not know of buying.
     *
     * @param margin seed to buy beyond what is sown, per cent
     * @param have what is in stock, by crop
     * @param packets how many are in a packet, by crop
     * @param seedWeeks weeks from ordering seed to sowing
     * @param plugWeeks the same for plugs
     * @param tuberWeeks the same for tubers, corms and bulbs
     * @param mix potting mix for a tray cell, ml
     */
    public record Wishes(
            int margin,
            Map<String, Integer> have,
            Map<String, Integer> packets,
            int seedWeeks,
            int plugWeeks,
            int tuberWeeks,
            int mix) {
        /** What stands where nothing is said: assumed. */
        public static final Wishes USUAL = new Wishes(10, Map.of(), Map.of(), 6, 16, 20, 40);

        public Wishes {
            have = Map.copyOf(have);
            packets = Map.copyOf(packets);
        }
    }

    /** The list of a plan. */
    public Buying(SheetFacts facts, Wishes wishes) {
        this.season = facts.season();
        this.say = new Say(season);
        this.outcome = facts.outcome();
        this.list = BuyingList.of(facts, wishes);
        this.wishes = wishes;
    }

    private String money(double smallest) {
        return say.price(smallest / season.currency().smallest());
    }

    private WeekPage page() {
        List<WeekPage.Part> parts = new ArrayList<>();
        add(parts, "plants", "Seed, plugs, tubers", plants());
        add(parts, "things", "Trays, potting mix, nets, cover", things());
        add(parts, "months", "By month", months());
        double extra =
                outcome.stocks().stream().mapToLong(Outcome.StockUse::extra).sum();
        List<String> first = new ArrayList<>();
        UnderWay underWay = season.underWay();
        if (underWay != null) {
            first.add("On " + say.date(underWay.on())
                    + ": for what is still to be sown and set. What was begun is not bought"
                    + " again; of what was bought ahead tell what there is with --have.");
        }
        first.add("To buy for the plantings: " + money(list.cost()) + "; trays, nets and cover beyond what is owned: "
                + money(Grains.toMoney(season, extra) * season.currency().smallest()) + ".");
        first.add("The plan itself reckons " + money(list.planned())
                + " for what is sown and set, without margin, packets and" + " stock, and " + money(list.wear())
                + " for the wear of nets and cover.");
        List<String> last = List.of(
                "Order by: " + wishes.seedWeeks() + " weeks before the first use for seed, " + wishes.plugWeeks()
                        + " for plugs, " + wishes.tuberWeeks()
                        + " for tubers, corms and bulbs (assumed; your merchants know better).",
                "Seed has a margin of " + wishes.margin() + " % beyond what is sown; what does not come up in trays is"
                        + " in the number of cells already. Potting mix is reckoned at " + wishes.mix()
                        + " ml a cell (assumed).",
                "Care: the label decides, local rules come first. Keep treated and poisonous seed locked away from"
                        + " children, animals and food.");
        return new WeekPage(0, "Buying", season.name(), first, parts, last, 0);
    }

    private static void add(List<WeekPage.Part> parts, String id, String heading, Table table) {
        if (!table.rows().isEmpty()) {
            parts.add(new WeekPage.Part(id, heading, "", table));
        }
    }

    private Table plants() {
        List<List<String>> rows = new ArrayList<>();
        for (BuyingList.Plants line : list.plants()) {
            rows.add(List.of(
                    line.isDue() ? "at once" : say.shortDate(line.by()),
                    line.need().crop(),
                    line.need().what().words(),
                    Say.whole(line.need().amount()),
                    Say.whole(line.wanted()),
                    line.have() == 0 ? "" : Say.whole(line.have()),
                    Say.whole(line.bought()),
                    line.packet() == null ? "" : Say.whole(line.packets()) + " of " + Say.whole(line.packet()),
                    money(line.cost()),
                    say.shortWeek(line.need().firstWeek()),
                    care(line.need())));
        }
        return new Table(
                "buying-plants",
                "Seed, plugs and tubers to order",
                List.of(
                        Table.Column.text("Order by"),
                        Table.Column.text("Crop"),
                        Table.Column.text("What"),
                        Table.Column.number("Planned"),
                        Table.Column.number("With margin"),
                        Table.Column.number("In stock"),
                        Table.Column.number("To buy"),
                        Table.Column.text("Packets"),
                        Table.Column.number("Cost"),
                        Table.Column.text("First used"),
                        Table.Column.text("Care")),
                rows,
                List.of(List.of("Together", "", "", "", "", "", "", "", money(list.cost()), "", "")));
    }

    static String care(BuyingNeeds.Need need) {
        Set<Hazard> told = need.what() == BuyingNeeds.What.SEED ? OF_SEED : OF_TUBERS;
        return String.join(
                "; ",
                need.hazards().stream().filter(told::contains).map(Care::brief).toList());
    }

    private Table things() {
        List<List<String>> rows = new ArrayList<>();
        for (BuyingList.Thing thing : list.things()) {
            boolean isMix = thing.in() == BuyingList.In.LITRES;
            rows.add(List.of(
                    thing.week() < 0 ? "" : say.shortWeek(thing.week()),
                    thing.name(),
                    isMix ? "for " + Say.whole(thing.most()) + " cells" : amount(thing.most(), thing.in()),
                    isMix ? "" : amount(thing.owned(), thing.in()),
                    thing.more() == 0 ? "nothing" : amount(thing.more(), thing.in()),
                    thing.more() == 0 || isMix ? "" : money(thing.cost())));
        }
        return new Table(
                "buying-things",
                "Trays, potting mix, nets and cover",
                List.of(
                        Table.Column.text("Needed by"),
                        Table.Column.text("What"),
                        Table.Column.text("Most at once"),
                        Table.Column.text("Owned"),
                        Table.Column.text("To buy"),
                        Table.Column.number("Cost")),
                rows);
    }

    private String amount(long value, BuyingList.In in) {
        return switch (in) {
            case CELLS -> Say.whole(value) + " cells";
            case MILLIMETRES -> say.lengthWithUnit(value);
            case LITRES -> Say.whole(value) + " l";
        };
    }

    private Table months() {
        Map<LocalDate, Double> byMonth = new TreeMap<>();
        list.plants().forEach(line -> byMonth.merge(line.by().withDayOfMonth(1), line.cost(), Double::sum));
        List<List<String>> rows = new ArrayList<>();
        byMonth.forEach((month, cost) ->
                rows.add(List.of(Say.month(month.getMonthValue() - 1) + " " + month.getYear(), money(cost))));
        return new Table(
                "buying-months",
                "What is ordered in each month",
                List.of(Table.Column.text("Order in"), Table.Column.number("Cost")),
                rows);
    }

    /** The list as a page to print. */
    public String html() {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("weeks.jte", List.of(page()), out);
        return out.toString();
    }

    /** The list as plain text. */
    public String text(int width) {
        return WeekText.of(page(), width);
    }
}
