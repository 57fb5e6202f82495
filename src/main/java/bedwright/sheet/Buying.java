package bedwright.sheet;

import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.season.Hazard;
import bedwright.season.Season;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The buying list of a plan: seed, plugs, tubers, trays, potting mix, nets and cover, by the date to order them. */
public final class Buying {
    private static final Set<Hazard> OF_SEED = EnumSet.of(Hazard.POISONOUS_SEED, Hazard.TREATED_SEED);
    private static final Set<Hazard> OF_TUBERS = EnumSet.of(Hazard.POISONOUS, Hazard.SAP, Hazard.SUN_AND_SAP);
    private static final double MILLILITRES = 1000;

    private final Season season;
    private final Say say;
    private final Outcome outcome;
    private final BuyingNeeds needs;
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
        this.needs = BuyingNeeds.of(WeekFacts.of(facts));
        this.wishes = wishes;
    }

    /** One line to order. */
    private record Line(BuyingNeeds.Need need, long wanted, long have, long bought, String packets, LocalDate by) {
        /** What is bought, at the plan's price for each. */
        double cost() {
            return need.amount() == 0 ? 0 : (double) need.cost() * bought / need.amount();
        }
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Map<String, Long> stock = new HashMap<>();
        wishes.have().forEach((crop, amount) -> stock.put(crop, (long) amount));
        for (BuyingNeeds.Need need : needs.bought()) {
            int margin = need.what() == BuyingNeeds.What.SEED ? wishes.margin() : 0;
            long wanted = Math.ceilDiv(need.amount() * (100 + margin), 100L);
            long have = Math.min(wanted, stock.getOrDefault(need.crop(), 0L));
            stock.merge(need.crop(), -have, Long::sum);
            long open = Math.max(0, wanted - have);
            Integer size = wishes.packets().get(need.crop());
            long packets = size == null ? 0 : Math.ceilDiv(open, (long) size);
            int ahead = switch (need.what()) {
                case SEED -> wishes.seedWeeks();
                case PLUGS -> wishes.plugWeeks();
                case TUBERS -> wishes.tuberWeeks();
            };
            lines.add(new Line(
                    need,
                    wanted,
                    have,
                    size == null ? open : packets * size,
                    size == null ? "" : Say.whole(packets) + " of " + Say.whole(size),
                    season.weekStart(need.firstWeek() - ahead)));
        }
        lines.sort(
                Comparator.comparing(Line::by).thenComparing(line -> line.need().crop()));
        return lines;
    }

    private String money(double smallest) {
        return say.price(smallest / season.currency().smallest());
    }

    private WeekPage page() {
        List<WeekPage.Part> parts = new ArrayList<>();
        List<Line> lines = lines();
        add(parts, "plants", "Seed, plugs, tubers", plants(lines));
        add(parts, "things", "Trays, potting mix, nets, cover", things());
        add(parts, "months", "By month", months(lines));
        double all = lines.stream().mapToDouble(Line::cost).sum();
        long planned = needs.bought().stream().mapToLong(BuyingNeeds.Need::cost).sum();
        double extra =
                outcome.stocks().stream().mapToLong(Outcome.StockUse::extra).sum();
        List<String> first = List.of(
                "To buy for the plantings: " + money(all) + "; trays, nets and cover beyond what is owned: "
                        + money(Grains.toMoney(season, extra)
                                * season.currency().smallest()) + ".",
                "The plan itself reckons " + money(planned) + " for what is sown and set, without margin, packets and"
                        + " stock, and " + money(needs.wear()) + " for the wear of nets and cover.");
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

    private Table plants(List<Line> lines) {
        List<List<String>> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(List.of(
                    say.shortDate(line.by()),
                    line.need().crop(),
                    line.need().what().words(),
                    Say.whole(line.need().amount()),
                    Say.whole(line.wanted()),
                    line.have() == 0 ? "" : Say.whole(line.have()),
                    Say.whole(line.bought()),
                    line.packets(),
                    money(line.cost()),
                    say.shortWeek(line.need().firstWeek()),
                    care(line.need())));
        }
        double all = lines.stream().mapToDouble(Line::cost).sum();
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
                List.of(List.of("Together", "", "", "", "", "", "", "", money(all), "", "")));
    }

    private static String care(BuyingNeeds.Need need) {
        Set<Hazard> told = need.what() == BuyingNeeds.What.SEED ? OF_SEED : OF_TUBERS;
        return String.join(
                "; ",
                need.hazards().stream().filter(told::contains).map(Care::brief).toList());
    }

    private Table things() {
        List<List<String>> rows = new ArrayList<>();
        for (Outcome.StockUse stock : outcome.stocks()) {
            long peak = 0;
            int first = -1;
            int over = -1;
            for (int w = 0; w < stock.use().length; w++) {
                peak = Math.max(peak, stock.use()[w]);
                first = first < 0 && stock.use()[w] > 0 ? w : first;
                over = over < 0 && stock.use()[w] > stock.owned() ? w : over;
            }
            if (stock.kind() == Outcome.StockKind.BENCH || first < 0) {
                continue;
            }
            boolean cells = stock.kind() == Outcome.StockKind.TRAYS;
            long more = Math.max(0, peak - stock.owned());
            rows.add(List.of(
                    over < 0 ? "" : say.shortWeek(over),
                    stock.name(),
                    amount(peak, cells),
                    amount(stock.owned(), cells),
                    more == 0 ? "nothing" : amount(more, cells),
                    more == 0
                            ? ""
                            : money(Grains.toMoney(season, stock.extra())
                                    * season.currency().smallest())));
        }
        long cells = 0;
        int week = season.weeks();
        for (BuyingNeeds.Tray tray : needs.trays()) {
            cells += tray.cells();
            week = Math.min(week, tray.week());
        }
        if (cells > 0) {
            rows.add(List.of(
                    say.shortWeek(week),
                    "potting mix",
                    "for " + Say.whole(cells) + " cells",
                    "",
                    Say.whole(Math.ceil(cells * wishes.mix() / MILLILITRES)) + " l",
                    ""));
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

    private String amount(long value, boolean cells) {
        return cells ? Say.whole(value) + " cells" : say.lengthWithUnit(value);
    }

    private Table months(List<Line> lines) {
        Map<LocalDate, Double> byMonth = new TreeMap<>();
        lines.forEach(line -> byMonth.merge(line.by().withDayOfMonth(1), line.cost(), Double::sum));
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
