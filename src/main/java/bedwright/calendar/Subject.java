package bedwright.calendar;

import bedwright.season.KeptPlanting;
import bedwright.season.Order;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What an entry speaks of: a planting or an event, by what tells it from others.
 *
 * @param sort {@link #PLANTING} or {@link #EVENT}
 * @param name crop, or name of the order
 * @param method method; empty for an event
 * @param bed bed; empty for an event
 * @param from day of sowing or setting, or first day of the event's week
 * @param twin its number among those that are equal but for that, from 1
 */
record Subject(String sort, String name, String method, String bed, LocalDate from, int twin) {
    static final String PLANTING = "planting";
    static final String EVENT = "event";
    /** Days that another bed or another way of growing weighs, when a planting is looked for in a later plan. */
    private static final long OTHER_BED = 5;

    private static final long OTHER_METHOD = 10;

    static Subject of(KeptPlanting planting, int twin) {
        return new Subject(PLANTING, planting.crop(), planting.method(), planting.bed(), planting.sown(), twin);
    }

    static Subject of(Order event) {
        return new Subject(EVENT, event.name(), "", "", event.asks().getFirst().from(), 1);
    }

    /** Whether both can be the same, in two plans. */
    boolean isAkin(Subject other) {
        return sort.equals(other.sort) && name.equals(other.name);
    }

    /** How unlike one another two are that are akin; 0 for equal ones. */
    long distance(Subject other) {
        return Math.abs(ChronoUnit.DAYS.between(from, other.from))
                + Math.abs(twin - other.twin)
                + (bed.equals(other.bed) ? 0 : OTHER_BED)
                + (method.equals(other.method) ? 0 : OTHER_METHOD);
    }

    List<String> parts() {
        return List.of(sort, name, method, bed, from.toString(), Integer.toString(twin));
    }

    static Optional<Subject> of(List<String> parts) {
        try {
            return parts.size() == 6
                    ? Optional.of(new Subject(
                            parts.get(0),
                            parts.get(1),
                            parts.get(2),
                            parts.get(3),
                            LocalDate.parse(parts.get(4)),
                            Integer.parseInt(parts.get(5))))
                    : Optional.empty();
        } catch (DateTimeParseException | NumberFormatException e) {
            return Optional.empty();
        }
    }
}
