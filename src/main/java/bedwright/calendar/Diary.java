package bedwright.calendar;

import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.Crop;
import bedwright.season.Hazard;
import bedwright.season.Job;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Order;
import bedwright.season.Past;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Unit;
import bedwright.season.Units;
import bedwright.sheet.Care;
import bedwright.sheet.Say;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The entries of a plan. A job lies on the first day of its week, for it has the week's time; an event on all days of
 * its week, since on which of them it falls no season file says.
 */
final class Diary {
    private final Season season;
    private final Map<Integer, LocalDate> gone;
    private final Prospects prospects;
    private final List<Entry> entries = new ArrayList<>();
    private final Map<Integer, Subject> subjects = new HashMap<>();
    private final Map<Subject, Integer> twins = new HashMap<>();

    private Diary(Season season, Map<Integer, LocalDate> gone) {
        this.season = season;
        this.gone = gone;
        // The calendar is the normal season's: no possible seasons are needed.
        prospects = Prospects.of(season, List.of());
    }

    /**
     * All entries, by day.
     *
     * @param began the season as it began, which knows the events of the weeks that are over
     * @param gone days on which plantings were pulled or the last of them was lost, by number
     */
    static List<Entry> of(Plan plan, Season began, Map<Integer, LocalDate> gone) {
        Diary diary = new Diary(plan.season(), gone);
        plan.plantings().forEach(diary::planting);
        diary.events(began);
        diary.entries.sort(Comparator.comparing(Entry::from));
        return List.copyOf(diary.entries);
    }

    private void planting(KeptPlanting planting) {
        int twin = twins.merge(Subject.of(planting, 1), 1, Integer::sum);
        subjects.put(planting.number(), Subject.of(planting, twin));
        Integer entry = planting.standing();
        Standing standing = entry == null ? null : season.standing().get(entry - 1);
        Crop crop = crop(planting);
        if (standing != null && standing.isWritten()) {
            LocalDate first = standing.stems().stream()
                    .filter(stems -> stems.stems() > 0)
                    .map(Standing.WrittenStems::week)
                    .min(Comparator.naturalOrder())
                    .orElse(null);
            if (first != null) {
                firstStems(planting, crop, season.weekOf(first));
            }
            return;
        }
        Method method = crop.methods().stream()
                .filter(m -> m.name().equals(planting.method()))
                .findFirst()
                .orElseThrow();
        Prospect prospect = prospects.expect(planting);
        Map<Doing, Integer> times = new EnumMap<>(Doing.class);
        Past past = standing == null ? null : standing.past();
        LocalDate told = gone.get(planting.number());
        LocalDate pulled = told != null ? told : past == null ? null : past.pulled();
        int hardened = Math.floorDiv(prospect.groundDay(), 7) - method.hardeningWeeks();
        if (method.start() == Method.Start.TRAY
                && method.hardeningWeeks() > 0
                && isWithin(hardened)
                && (pulled == null || season.weekStart(hardened).isBefore(pulled))) {
            add(planting, Doing.HARDEN, 1, hardened, List.of(Say.whole(planting.plants()) + " plants, off the bench"));
        }
        for (Prospect.Task task : prospect.tasks()) {
            boolean isTooLate =
                    pulled != null && !season.weekStart(task.week()).isBefore(pulled) && task.job() != Job.CLEAR;
            if (isTooLate) {
                continue;
            }
            Doing doing = Doing.of(task.job());
            int time = times.merge(doing, 1, Integer::sum);
            List<String> details = new ArrayList<>();
            details.add(amount(planting, method, task) + "; about "
                    + hours(planting.lots() * task.minutes() + task.setUp()));
            details.add("Way of growing: " + method.name());
            details.addAll(cautions(doing, crop));
            add(
                    planting,
                    doing,
                    time,
                    task.job() == Job.CLEAR && told != null ? season.weekOf(told) : task.week(),
                    details);
        }
        int cut = prospect.firstCut() == Prospect.NONE ? -1 : Math.floorDiv(prospect.firstCut(), 7);
        if (isWithin(cut) && (pulled == null || season.weekStart(cut).isBefore(pulled))) {
            firstStems(planting, crop, cut);
        }
    }

    private boolean isWithin(int week) {
        return week >= 0 && week < season.weeks();
    }

    private void firstStems(KeptPlanting planting, Crop crop, int week) {
        List<String> details = new ArrayList<>();
        details.add("In a usual season; look some days before, and cut in the cool hours");
        if (crop.harvest() != null) {
            details.add("Stage: " + crop.harvest().stage());
        }
        details.addAll(cautions(Doing.FIRST_STEMS, crop));
        add(planting, Doing.FIRST_STEMS, 1, week, details);
    }

    private void events(Season began) {
        List<Order> before = began.orders().stream().filter(Order::event).toList();
        List<Order> now = season.orders().stream().filter(Order::event).toList();
        for (Order order : before) {
            event(order, named(now, order.name()));
        }
        for (Order order : now) {
            if (named(before, order.name()) == null) {
                event(order, order);
            }
        }
    }

    private static @Nullable Order named(List<Order> orders, String name) {
        return orders.stream()
                .filter(order -> order.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static long asked(@Nullable Order order, LocalDate week) {
        return order == null
                ? 0
                : order.asks().stream()
                        .filter(ask ->
                                !week.isBefore(ask.from()) && !week.isAfter(ask.to() == null ? ask.from() : ask.to()))
                        .mapToLong(Order.Ask::bouquets)
                        .sum();
    }

    /** @param left what is left of it to come; null if nothing is */
    private void event(Order order, @Nullable Order left) {
        Subject subject = Subject.of(order);
        List<LocalDate> weeks = new ArrayList<>();
        List<Long> bouquets = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            LocalDate week = season.weekStart(w);
            long asked = asked(w < season.firstWeek() ? order : left, week);
            if (asked > 0) {
                weeks.add(week);
                bouquets.add(asked);
            }
        }
        for (int i = 0; i < weeks.size(); i++) {
            LocalDate week = weeks.get(i);
            String many = Say.count(bouquets.get(i), "bouquet", "bouquets");
            entries.add(new Entry(
                    subject,
                    Doing.EVENT,
                    i + 1,
                    week,
                    week.plusWeeks(1),
                    order.name() + ": " + many,
                    List.of("Recipe: " + order.recipe(), "Its day lies in this week"),
                    ""));
        }
    }

    private void add(KeptPlanting planting, Doing doing, int time, int week, List<String> details) {
        LocalDate day = season.weekStart(week);
        String what = planting.crop() + " (" + planting.number() + "), " + planting.bed();
        entries.add(new Entry(
                Objects.requireNonNull(subjects.get(planting.number())),
                doing,
                time,
                day,
                day.plusDays(1),
                started(doing, planting) + " " + what,
                details,
                planting.bed()));
    }

    private String started(Doing doing, KeptPlanting planting) {
        return switch (doing) {
            case PREPARE -> "Prepare the bed for";
            case SOW -> "Sow";
            case FILL_TRAYS -> "Sow in trays";
            case HARDEN -> "Harden off";
            case PLANT_OUT -> isRaised(planting) ? "Plant out" : "Set";
            case NET_UP -> "Net up:";
            case NET_DOWN -> "Net down:";
            case COVER_ON -> "Cover";
            case COVER_OFF -> "Uncover";
            case PINCH -> "Pinch";
            case WEED -> "Weed";
            case FIRST_STEMS -> "First stems:";
            case CLEAR -> "Clear";
            case EVENT -> throw new IllegalArgumentException("An event is no job of a planting");
        };
    }

    private boolean isRaised(KeptPlanting planting) {
        return crop(planting).methods().stream()
                .anyMatch(m -> m.name().equals(planting.method())
                        && (m.start() == Method.Start.TRAY || m.start() == Method.Start.PLUGS));
    }

    private Crop crop(KeptPlanting planting) {
        return season.crops().stream()
                .filter(c -> c.name().equals(planting.crop()))
                .findFirst()
                .orElseThrow();
    }

    private String amount(KeptPlanting planting, Method method, Prospect.Task task) {
        double units = planting.lots() * task.units();
        return switch (task.job()) {
            case PREPARE, WEED, CLEAR, COVER_ON, COVER_OFF -> length(units) + " of bed";
            case SOW -> length(units) + " of bed, " + rows(method) + ", " + seeds(planting, method);
            case FILL_TRAYS -> Say.whole(100 * units) + " cells";
            case PLANT_OUT -> Say.whole(planting.plants()) + " plants, " + rows(method);
            case PINCH -> Say.whole(planting.plants()) + " plants";
            case NET_UP, NET_DOWN -> length(units) + " of net" + net(method);
        };
    }

    private String rows(Method method) {
        return Say.count(method.rows(), "row", "rows") + ", " + spacing(method.spacing()) + " apart in the row";
    }

    private String length(double metres) {
        Unit unit = season.units().length();
        return Say.tenth(unit.of(metres)) + " " + unit.symbol();
    }

    /** Nobody who measures in metres speaks of 0.15 m. */
    private String spacing(double metres) {
        Unit unit = season.units().smallLength();
        return season.units() == Units.METRES
                ? Say.tenth(100 * metres) + " cm"
                : Say.tenth(unit.of(metres)) + " " + unit.symbol();
    }

    private static String seeds(KeptPlanting planting, Method method) {
        long seeds = (long) planting.plants() * method.seedsAPlace();
        return Say.count(seeds, "seed", "seeds")
                + (method.seedsAPlace() == 1 ? "" : " (" + method.seedsAPlace() + " a place)");
    }

    private static String net(Method method) {
        Method.NetUse net = method.net();
        return net == null ? "" : " (" + net.net() + ", " + Say.count(net.layers(), "layer", "layers") + ")";
    }

    private static String hours(double minutes) {
        return minutes < 55 ? Say.whole(minutes) + " min" : Say.tenth(minutes / 60) + " hours";
    }

    /** What can hurt in a job. */
    private static List<String> cautions(Doing doing, Crop crop) {
        List<String> cautions = new ArrayList<>();
        for (Hazard hazard : crop.hazards()) {
            boolean matters = switch (hazard) {
                case SAP, SUN_AND_SAP, PRICKLY ->
                    doing == Doing.PINCH || doing == Doing.FIRST_STEMS || doing == Doing.CLEAR;
                case POISONOUS, ALLERGY -> doing == Doing.FIRST_STEMS || doing == Doing.CLEAR;
                case POISONOUS_SEED, TREATED_SEED -> doing == Doing.SOW || doing == Doing.FILL_TRAYS;
            };
            if (matters) {
                cautions.add(Care.sentence(hazard));
            }
        }
        switch (doing) {
            case NET_UP, NET_DOWN, COVER_ON, COVER_OFF -> cautions.add("Not in strong wind");
            default -> {}
        }
        return cautions;
    }
}
