package bedwright.growth;

import bedwright.climate.SiteClimate;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Past;
import org.jspecify.annotations.Nullable;

/**
 * How far a planting has come on each day of one possible season (season model, section 3). Days are those of the
 * season; {@link #NEVER} where something does not come about before its end.
 */
final class Development {
    static final int NEVER = Integer.MAX_VALUE;

    /** A day as a prospect tells it. */
    static int dayOrNone(int day) {
        return day == NEVER ? Prospect.NONE : day;
    }

    /** A clock within this of a mark has reached it, °C·d. */
    static final double HAIR = 1e-9;

    private final Start start;
    private final BedWeather.Sums sums;
    private final int lastDay;
    private final double emergenceMark;
    private final double firstCutMark;
    private final double tenderMark;
    private final double atEmergence;
    /** Day of the last stage seen and the clock that it means, or {@link Noted#NOT}. */
    private int setDay = Noted.NOT;

    private double setClock;
    final int emergence;
    final int pinch;
    final int grown;
    final int firstCut;
    /** First day, from the day in the bed on, at whose start it is no longer tender. */
    final int hardy;

    /** Share of the way from emergence to the first cut at which colour shows: assumed. */
    static final double COLOUR = 0.9;

    /**
     * @param noted stages seen, if any were
     * @param factor the season's factor on the degree-days to the first cut
     */
    Development(
            Crop crop,
            Method method,
            Start start,
            Noted noted,
            BedWeather weather,
            SiteClimate climate,
            int days,
            double factor) {
        this.start = start;
        this.sums = weather.sums(crop.clock());
        this.lastDay = days - 1;
        this.emergenceMark = crop.clock().emergence();
        this.tenderMark = emergenceMark + crop.tender();
        int up = start.emergence() == Start.UNKNOWN
                ? firstDay(sums.all(), start.firstDay(), start.clock(), emergenceMark)
                : start.emergence();
        if (start.emergence() == Start.UNKNOWN && noted.last() != Noted.NOT) {
            up = noted.up() == Noted.NOT ? Math.min(up, noted.last()) : noted.up();
        }
        this.emergence = up > lastDay ? NEVER : up;
        if (emergence == NEVER) {
            atEmergence = Double.NaN;
            firstCutMark = Double.NaN;
            pinch = NEVER;
            grown = NEVER;
            firstCut = NEVER;
            hardy = NEVER;
            return;
        }
        this.atEmergence = start.emergence() == Start.UNKNOWN
                ? start.clock() + between(sums.all(), start.firstDay(), Math.max(emergence, start.firstDay() - 1))
                : start.clock();
        this.firstCutMark = (crop.clock().firstCut() * dayLengthFactor(crop, climate)
                        + (method.pinched() ? method.pinchDelay() : 0))
                * factor;
        Double pinchMark = crop.clock().pinch();
        if (noted.stage() != null && noted.last() >= emergence) {
            set(noted.stage(), noted.last(), pinchMark);
        }
        this.firstCut = reach(firstCutMark);
        this.pinch = pinchMark == null ? NEVER : noted.pinch() == Noted.NOT ? reach(pinchMark) : noted.pinch();
        this.grown = pinchMark == null ? reach(firstCutMark / 2) : pinch;
        this.hardy = firstHardyDay();
    }

    /** The same with the first cut put off by what the clock gains in the week after the pinching stage. */
    private Development(Development inTime) {
        this.start = inTime.start;
        this.sums = inTime.sums;
        this.lastDay = inTime.lastDay;
        this.emergenceMark = inTime.emergenceMark;
        this.tenderMark = inTime.tenderMark;
        this.atEmergence = inTime.atEmergence;
        this.setDay = inTime.setDay;
        this.setClock = inTime.setClock;
        this.emergence = inTime.emergence;
        this.pinch = inTime.pinch;
        this.grown = inTime.grown;
        this.hardy = inTime.hardy;
        int from = Math.max(pinch, emergence);
        int to = Math.min(from + 7, lastDay);
        this.firstCutMark = inTime.firstCutMark + (to > from ? clock(to) - clock(from) : 0);
        this.firstCut = reach(firstCutMark);
    }

    /** The same pinched a week after its stage; as it is where the stage is not reached. */
    Development pinchedAWeekLater() {
        return pinch == NEVER || emergence == NEVER ? this : new Development(this);
    }

    /** Sets the clock to the mark of a stage on the day on which it was seen. */
    private void set(Past.Stage stage, int day, @Nullable Double pinchMark) {
        switch (stage) {
            case UP -> {
                if (start.emergence() != Start.UNKNOWN) {
                    return;
                }
                setClock = emergenceMark;
            }
            case PINCH -> {
                if (pinchMark == null) {
                    return;
                }
                setClock = pinchMark;
            }
            case COLOUR -> setClock = emergenceMark + COLOUR * (firstCutMark - emergenceMark);
            case FIRST_STEM -> setClock = firstCutMark;
        }
        setDay = day;
    }

    private double dayLengthFactor(Crop crop, SiteClimate climate) {
        Crop.DayLengthAnswer answer = crop.clock().dayLength();
        if (answer == null) {
            return 1;
        }
        int first = start.daysCountFrom() == Start.UNKNOWN ? emergence + 1 : start.daysCountFrom();
        double sum = 0;
        for (int d = first; d < first + answer.days(); d++) {
            sum += climate.dayLength(Math.min(d, lastDay + 30));
        }
        double mean = sum / answer.days();
        double share = (mean - answer.shortDay()) / (answer.longDay() - answer.shortDay());
        return answer.shortFactor() + Math.clamp(share, 0, 1) * (answer.longFactor() - answer.shortFactor());
    }

    /** First day, not before emergence, at whose end the clock is at or over a mark. */
    private int reach(double mark) {
        if (setDay == Noted.NOT) {
            return reachUnseen(mark);
        }
        if (mark >= setClock + HAIR) {
            return firstDay(sums.lit(), setDay + 1, setClock, mark);
        }
        return mark >= setClock - HAIR ? setDay : Math.min(setDay, reachUnseen(mark));
    }

    private int reachUnseen(double mark) {
        if (unseenClock(Math.max(emergence, start.firstDay() - 1)) >= mark - HAIR) {
            return emergence;
        }
        int first = firstLitDay();
        return firstDay(sums.lit(), first, atEmergence, mark);
    }

    private int firstHardyDay() {
        if (startClock(start.groundDay()) >= tenderMark - HAIR) {
            return start.groundDay();
        }
        // Seen up late it may be past the mark by then.
        boolean isUpLate = start.emergence() == Start.UNKNOWN && emergence > start.firstDay();
        if (isUpLate
                && (setDay == Noted.NOT || tenderMark < setClock - HAIR)
                && start.clock() + between(sums.all(), start.firstDay(), emergence - 1) >= tenderMark - HAIR) {
            return emergence;
        }
        // What was up when its clock was read may have got there before the season.
        int reached = setDay == Noted.NOT && start.emergence() != Start.UNKNOWN
                ? firstDay(sums.lit(), start.firstDay(), atEmergence, tenderMark)
                : reach(tenderMark);
        return reached == NEVER ? NEVER : reached + 1;
    }

    /** First day that adds to the clock once it is above ground. */
    private int firstLitDay() {
        return start.emergence() == Start.UNKNOWN ? emergence + 1 : start.firstDay();
    }

    /** Clock at the end of a day, from the day of emergence on. */
    private double clock(int day) {
        return setDay != Noted.NOT && day >= setDay
                ? setClock + between(sums.lit(), setDay + 1, day)
                : unseenClock(day);
    }

    private double unseenClock(int day) {
        int first = firstLitDay();
        return day < first ? atEmergence : atEmergence + between(sums.lit(), first, day);
    }

    private double startClock(int day) {
        return day <= emergence ? start.clock() : clock(day - 1);
    }

    private static double between(double[] running, int first, int last) {
        return running[last + 1 + BedWeather.BEFORE] - running[first + BedWeather.BEFORE];
    }

    private int firstDay(double[] running, int first, double clock, double mark) {
        int low = first + BedWeather.BEFORE;
        double base = running[low];
        int high = lastDay + 1 + BedWeather.BEFORE;
        if (clock + running[high] - base < mark - HAIR) {
            return NEVER;
        }
        // The first day is looked for in the running sums, which never fall.
        low++;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (clock + running[middle] - base >= mark - HAIR) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low - 1 - BedWeather.BEFORE;
    }

    /** Share of the full height at the end of a day, 0 to 1. */
    double heightShare(int day) {
        if (day < emergence) {
            return 0;
        }
        double way = firstCutMark - emergenceMark;
        return way <= 0 ? 1 : Math.clamp((clock(day) - emergenceMark) / way, 0, 1);
    }

    boolean emerges() {
        return emergence != NEVER;
    }
}
