package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.climate.DegreeDays;
import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import bedwright.season.Past;
import bedwright.season.Standing;
import org.jspecify.annotations.Nullable;

/**
 * The development clock of a planting in one possible season, day by day (season model, section 3). Marks that are not
 * reached before the season's end come {@link Facts#NEVER}.
 */
final class Course {
    /** A mark counts as reached by a clock that is short of it by less than this, °C·d. */
    private static final double HAIR = 1e-9;
    /** Days past the season's end up to which the climate is known. */
    private static final int REACH = 30;

    private final Facts facts;
    private final Placed placed;
    /** Day of the last stage seen; NEVER if none was. */
    private int seenOn = NEVER;

    private Past.@Nullable Stage seen;
    private final PossibleSeason possible;

    /** First day whose clock is known; index 0 of the arrays. */
    private final int firstDay;
    /** Clock at the start and at the end of each day. */
    private final double[] atStart;

    private final double[] atEnd;

    /** Day on which it is above ground. */
    final int emergence;
    /** Whether it was above ground already when its clock was read. */
    final boolean wasUp;
    /** Degree-days of the first cut in this season. */
    final double firstCutMark;
    /** First day of cutting. */
    final int firstCut;
    /** Day of the pinching stage. */
    final int pinch;
    /** Day from which it counts as grown. */
    final int grown;
    /** First day that starts with a clock at or over the end of tenderness. */
    final int hardy;

    Course(Facts facts, Placed placed, PossibleSeason possible) {
        this.facts = facts;
        this.placed = placed;
        this.possible = possible;
        Crop.Clock clock = placed.crop().clock();
        Standing.ClockReading reading = placed.clock();

        double start = 0;
        int up = NEVER;
        if (reading != null) {
            firstDay = facts.season.dayOf(reading.on());
            start = reading.degreeDays();
            wasUp = start >= clock.emergence() - HAIR;
            if (wasUp) {
                up = Math.max(firstDay, 0);
            }
        } else {
            wasUp = false;
            firstDay = placed.isWritten() ? 0 : placed.groundDay(facts.season);
            if (placed.isPlantedOut()) {
                start = Math.max(
                        0, placed.method().headStart() - placed.method().check());
                up = firstDay;
            }
        }
        Past past = placed.past();
        Past.StageSeen last = past == null ? null : past.last();
        boolean isUpFromTheStart = placed.isPlantedOut() && reading == null;
        int upSeen = past == null ? NEVER : Placed.day(facts.season, past.seen(Past.Stage.UP), NEVER);
        if (last != null) {
            seenOn = facts.season.dayOf(last.on());
            seen = last.stage();
        }
        int length = Math.max(0, facts.days() - firstDay);
        atStart = new double[length];
        atEnd = new double[length];
        for (int day = firstDay; day < facts.days(); day++) {
            int i = day - firstDay;
            atStart[i] = i == 0 ? start : atEnd[i - 1];
            // A reading is the clock at the end of its day, so that day adds nothing more.
            if (up == NEVER && last != null && day == (upSeen == NEVER ? seenOn : upSeen)) {
                up = day;
            }
            boolean adds = !(reading != null && i == 0) && !standsStill(day, up);
            atEnd[i] = atStart[i] + (adds ? degreeDays(day) : 0);
            boolean isUp = upSeen == NEVER || isUpFromTheStart ? atEnd[i] >= clock.emergence() - HAIR : day == upSeen;
            if (up == NEVER && isUp) {
                up = day;
            }
        }
        emergence = up < facts.days() ? up : NEVER;
        firstCutMark = firstCutMark();
        setBack(isUpFromTheStart);
        firstCut = reaches(firstCutMark);
        int pinchSeen = past == null ? NEVER : Placed.day(facts.season, past.seen(Past.Stage.PINCH), NEVER);
        pinch = clock.pinch() == null ? NEVER : pinchSeen == NEVER ? reaches(clock.pinch()) : pinchSeen;
        grown = clock.pinch() == null ? reaches(firstCutMark / 2) : pinch;
        hardy = hardy(clock.emergence() + placed.crop().tender());
    }

    /** From the day of the last stage seen on the clock goes on from that stage's mark. */
    private void setBack(boolean isUpFromTheStart) {
        Crop.Clock clock = placed.crop().clock();
        Past.Stage stage = seen;
        if (stage == null || emergence == NEVER || seenOn < emergence) {
            seenOn = NEVER;
            return;
        }
        Double mark = switch (stage) {
            case UP -> isUpFromTheStart ? null : Double.valueOf(clock.emergence());
            case PINCH -> clock.pinch();
            case COLOUR -> clock.emergence() + 0.9 * (firstCutMark - clock.emergence());
            case FIRST_STEM -> firstCutMark;
        };
        if (mark == null) {
            seenOn = NEVER;
            return;
        }
        for (int day = seenOn; day < facts.days(); day++) {
            int i = day - firstDay;
            if (i < 0) {
                continue;
            }
            atStart[i] = day == seenOn ? atStart[i] : atEnd[i - 1];
            boolean adds = facts.climate.dayLength(day) >= clock.leastDayLength();
            atEnd[i] = day == seenOn ? mark : atStart[i] + (adds ? degreeDays(day) : 0);
        }
    }

    /** Whether a day, by its clock, may count as the one on which a mark is reached. */
    private boolean mayReach(int day, double mark) {
        return seenOn == NEVER || day >= seenOn || mark < atEnd[seenOn - firstDay] - HAIR;
    }

    /**
     * The week in which a planting comes into the ground, negative before the season. One of which only a clock is known
     * has been there since before the season.
     */
    static int groundWeek(Facts facts, Placed placed) {
        Standing.ClockReading reading = placed.clock();
        if (placed.isWritten()) {
            return 0;
        }
        if (!placed.knowsSowWeek() && reading != null) {
            return Math.min(-1, facts.season.weekOf(reading.on()));
        }
        return Math.floorDiv(placed.groundDay(facts.season), 7);
    }

    /** Whether a day is too short to add degree-days after emergence. */
    private boolean standsStill(int day, int up) {
        boolean answers = wasUp || (placed.isPlantedOut() ? day >= up : day > up);
        return answers && facts.climate.dayLength(day) < placed.crop().clock().leastDayLength();
    }

    private double degreeDays(int day) {
        Crop.Clock clock = placed.crop().clock();
        return DegreeDays.of(
                clock.convention(),
                facts.min(possible, placed.bed(), day),
                facts.max(possible, placed.bed(), day),
                clock.base(),
                clock.upper());
    }

    /** (crop's first cut × factor of day length + delay by pinching) × the season's factor. */
    private double firstCutMark() {
        double mark = placed.crop().clock().firstCut() * dayLengthFactor();
        if (placed.method().pinched()) {
            mark += placed.method().pinchDelay();
        }
        return mark * possible.firstCutFactor()[placed.cropIndex()];
    }

    private double dayLengthFactor() {
        Crop.DayLengthAnswer answer = placed.crop().clock().dayLength();
        if (answer == null || emergence == NEVER) {
            return 1;
        }
        int from = placed.isPlantedOut() && placed.knowsSowWeek() ? placed.sowDay(facts.season) : emergence + 1;
        // The climate reaches a month past the season; what would be averaged beyond that is left out.
        int to = Math.min(from + answer.days(), facts.days() + REACH + 1);
        double sum = 0;
        for (int day = from; day < to; day++) {
            sum += facts.climate.dayLength(day);
        }
        double mean = sum / (to - from);
        if (mean <= answer.shortDay()) {
            return answer.shortFactor();
        }
        if (mean >= answer.longDay()) {
            return answer.longFactor();
        }
        double share = (mean - answer.shortDay()) / (answer.longDay() - answer.shortDay());
        return answer.shortFactor() + share * (answer.longFactor() - answer.shortFactor());
    }

    /** First day, not before emergence, whose clock is at or over a mark. */
    private int reaches(double mark) {
        if (emergence == NEVER) {
            return NEVER;
        }
        for (int day = Math.max(emergence, firstDay); day < facts.days(); day++) {
            if (mayReach(day, mark) && atEnd[day - firstDay] >= mark - HAIR) {
                return day;
            }
        }
        return NEVER;
    }

    /** What was up when its clock was read may have been past the mark then, since when nobody knows; or before the season. */
    private int hardy(double mark) {
        if (wasUp && atStart.length > 0 && atStart[0] >= mark - HAIR) {
            return 7 * groundWeek(facts, placed);
        }
        return startsAt(mark, wasUp ? firstDay + 1 : Math.max(emergence, firstDay));
    }

    private int startsAt(double mark, int from) {
        if (emergence == NEVER) {
            return NEVER;
        }
        for (int day = from; day < facts.days(); day++) {
            if (mayReach(day - 1, mark) && atStart[day - firstDay] >= mark - HAIR) {
                return day;
            }
        }
        return NEVER;
    }

    /** Height at the end of a day, m: full × clamp((clock − E)/(F − E), 0, 1), 0 before emergence. */
    double height(int day) {
        if (emergence == NEVER || day < emergence) {
            return 0;
        }
        Double own = placed.method().height();
        double full = own == null ? placed.crop().height() : own;
        double up = placed.crop().clock().emergence();
        if (firstCutMark <= up) {
            return full;
        }
        double share = (atEnd[day - firstDay] - up) / (firstCutMark - up);
        return full * Math.clamp(share, 0, 1);
    }
}
