package bedwright.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalReader;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;

/**
 * Two readers of calendars that share no code: ical4j and biweekly. Each first refuses a calendar that it has anything to
 * say against.
 */
final class Readers {
    private Readers() {}

    /** An entry as a reader understood it; of one that is cancelled, too. */
    record Read(
            String uid,
            int sequence,
            boolean cancelled,
            LocalDate from,
            LocalDate end,
            String summary,
            String details) {}

    static Map<String, Read> ical4j(String text) {
        Calendar calendar;
        try {
            calendar = new CalendarBuilder().build(new StringReader(text));
        } catch (IOException | ParserException e) {
            throw new AssertionError(e);
        }
        assertThat(calendar.validate().getEntries()).isEmpty();
        Map<String, Read> entries = new LinkedHashMap<>();
        for (Component event : calendar.getComponents("VEVENT")) {
            String uid = value(event, "UID");
            Read before = entries.put(
                    uid,
                    new Read(
                            uid,
                            Integer.parseInt(value(event, "SEQUENCE")),
                            value(event, "STATUS").equals("CANCELLED"),
                            date(value(event, "DTSTART")),
                            date(value(event, "DTEND")),
                            value(event, "SUMMARY"),
                            value(event, "DESCRIPTION")));
            assertThat(before).as("a second entry of one UID").isNull();
        }
        return entries;
    }

    private static String value(Component event, String name) {
        Property property = event.getRequiredProperty(name);
        return property.getValue();
    }

    private static LocalDate date(String basic) {
        assertThat(basic).matches("[0-9]{8}");
        return LocalDate.of(
                Integer.parseInt(basic.substring(0, 4)),
                Integer.parseInt(basic.substring(4, 6)),
                Integer.parseInt(basic.substring(6)));
    }

    static Map<String, Read> biweekly(String text) {
        List<String> complaints = new ArrayList<>();
        ICalendar calendar;
        try (ICalReader reader = new ICalReader(new StringReader(text))) {
            calendar = reader.readNext();
            reader.getWarnings().forEach(warning -> complaints.add(warning.toString()));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        calendar.validate(ICalVersion.V2_0).forEach(warning -> complaints.add(warning.toString()));
        assertThat(complaints).isEmpty();
        Map<String, Read> entries = new LinkedHashMap<>();
        for (VEvent event : calendar.getEvents()) {
            String uid = event.getUid().getValue();
            Read before = entries.put(
                    uid,
                    new Read(
                            uid,
                            event.getSequence().getValue(),
                            event.getStatus().isCancelled(),
                            date(event.getDateStart().getValue()),
                            date(event.getDateEnd().getValue()),
                            event.getSummary().getValue(),
                            event.getDescription().getValue()));
            assertThat(before).as("a second entry of one UID").isNull();
        }
        return entries;
    }

    private static LocalDate date(Date day) {
        return LocalDate.ofInstant(day.toInstant(), ZoneId.systemDefault());
    }
}
