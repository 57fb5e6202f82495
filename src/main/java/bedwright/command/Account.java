package bedwright.command;

import bedwright.climate.Gusts;
import bedwright.season.Site;
import bedwright.season.Unit;
import bedwright.season.Units;
import bedwright.station.StationClimate;
import bedwright.weather.StationRecord;
import java.io.PrintWriter;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a climate rests on and says, in words. */
record Account(String file, StationRecord record, StationClimate climate, Units units) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    void print(PrintWriter out) {
        StationClimate.Basis basis = climate.basis();
        out.printf(
                Locale.ROOT,
                "%s: %s to %s; %s, %,d days with both temperatures, %,d without; %s dropped as doubtful.%n",
                record.station().isEmpty() ? file : record.station() + " (" + file + ")",
                record.first(),
                record.last(),
                Words.count(basis.years(), "year"),
                basis.days(),
                basis.missing(),
                Words.count(record.flagged(), "value"));
        out.println();
        Unit temperature = units.temperature();
        out.println("Mean of each month, " + temperature.symbol());
        out.println("            " + months(month -> month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)));
        out.println("  minimum   " + months(month -> figure(temperature, climate.meanMin(), month)));
        out.println("  maximum   " + months(month -> figure(temperature, climate.meanMax(), month)));
        out.printf(
                Locale.ROOT,
                "A year is warmer or colder than that by %.1f %s, a day by a further %.1f %s (two times in three), of which"
                        + " the next day keeps %s.%n",
                units.degrees().of(climate.spread().year()),
                units.degrees().symbol(),
                units.degrees().of(climate.spread().day()),
                units.degrees().symbol(),
                Words.percent(climate.spread().memory()));
        frost(out, basis);
        storms(out, basis);
        if (!climate.notes().isEmpty()) {
            out.println();
            climate.notes().forEach(note -> out.println("Worth knowing: " + note));
        }
    }

    private interface OfMonth {
        String of(Month month);
    }

    private static String months(OfMonth of) {
        StringBuilder line = new StringBuilder();
        for (Month month : Month.values()) {
            line.append(String.format(Locale.ROOT, "%7s", of.of(month)));
        }
        return line.toString();
    }

    private static String figure(Unit temperature, List<Double> figures, Month month) {
        return String.format(Locale.ROOT, "%.1f", temperature.of(figures.get(month.getValue() - 1)));
    }

    private void frost(PrintWriter out, StationClimate.Basis basis) {
        Site.Frost frost = climate.frost();
        if (frost == null) {
            out.println("Frost: none to reckon with.");
            return;
        }
        out.printf(
                Locale.ROOT,
                "Last frost of spring: usually %s; 1 year in 10 before %s, 1 in 10 after %s (from %s)%n",
                day(frost.lastSpring().usual()),
                day(frost.lastSpring().early()),
                day(frost.lastSpring().late()),
                Words.count(basis.springs(), "spring"));
        out.printf(
                Locale.ROOT,
                "First frost of autumn: usually %s; 1 year in 10 before %s, 1 in 10 after %s (from %s)%n",
                day(frost.firstAutumn().usual()),
                day(frost.firstAutumn().early()),
                day(frost.firstAutumn().late()),
                Words.count(basis.autumns(), "autumn"));
        out.printf(
                Locale.ROOT,
                "A frost that is a degree harder ends %s days earlier in spring and starts %s days later in autumn.%n",
                Words.number(units.daysADegree().of(frost.springDaysPerDegree())),
                Words.number(units.daysADegree().of(frost.autumnDaysPerDegree())));
    }

    private static String day(MonthDay day) {
        return DAY.format(day);
    }

    private void storms(PrintWriter out, StationClimate.Basis basis) {
        if (climate.storms().isEmpty()) {
            out.println("Damaging gusts: none.");
            return;
        }
        for (Site.StormSide side : climate.storms()) {
            double aYear = 0;
            for (Month month : Month.values()) {
                aYear += side.gustsAWeek().get(month.getValue() - 1) * month.maxLength() / 7.0;
            }
            out.printf(
                    Locale.ROOT,
                    "Damaging gusts from %s degrees: about %s a year%s%s%n",
                    Words.number(side.from()),
                    Words.number(aYear),
                    aYear < 1
                            ? ""
                            : String.format(
                                    Locale.ROOT,
                                    "; the strongest of a usual year %.0f %s, of 1 year in 10 %.0f %s",
                                    units.speed()
                                            .of(Gusts.strongest(side, aYear, 0.5)
                                                    .orElseThrow()),
                                    units.speed().symbol(),
                                    units.speed()
                                            .of(Gusts.strongest(side, aYear, 0.9)
                                                    .orElseThrow()),
                                    units.speed().symbol()),
                    record.kind() == StationRecord.Wind.NONE
                            ? " (assumed)"
                            : " (from " + String.format(Locale.ROOT, "%,d", basis.windDays()) + " days of wind)");
        }
    }

    /** The same for programs. */
    Map<String, Object> json() {
        StationClimate.Basis basis = climate.basis();
        Map<String, Object> restsOn = new LinkedHashMap<>();
        restsOn.put("station", record.station());
        restsOn.put("from", record.first().toString());
        restsOn.put("to", record.last().toString());
        restsOn.put("years", basis.years());
        restsOn.put("days", basis.days());
        restsOn.put("missingDays", basis.missing());
        restsOn.put("droppedValues", record.flagged());
        restsOn.put("windDays", basis.windDays());
        restsOn.put("springs", basis.springs());
        restsOn.put("autumns", basis.autumns());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", 1);
        json.put("restsOn", restsOn);
        json.put("notes", climate.notes());
        return json;
    }
}
