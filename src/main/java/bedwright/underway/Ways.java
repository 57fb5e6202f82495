package bedwright.underway;

import bedwright.growth.Prospect;
import bedwright.season.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** In which ways a planting that stands may still be grown: those that agree with what was done of it. */
final class Ways {
    private Ways() {}

    /**
     * The method in force, then the others that what was done leaves open.
     *
     * @param day the day it is; what is due on it is open
     * @param isInTray whether it is still to be planted out
     * @param expect what to expect of it by a method
     */
    static List<String> of(Planted planted, int day, boolean isInTray, Function<Method, Prospect> expect) {
        List<String> ways = new ArrayList<>();
        ways.add(planted.method().name());
        for (Method other : planted.otherMethods()) {
            if (startsAlike(planted.method(), other, isInTray)
                    && isOpen(planted.method(), other, day, isInTray, expect)) {
                ways.add(other.name());
            }
        }
        return ways;
    }

    private static boolean startsAlike(Method one, Method other, boolean isInTray) {
        return one.start() == other.start()
                && one.trayWeeks() == other.trayWeeks()
                && one.hardeningWeeks() == other.hardeningWeeks()
                && one.headStart() == other.headStart()
                && one.check() == other.check()
                && one.emergence() == other.emergence()
                && one.seedsAPlace() == other.seedsAPlace()
                && (isInTray || (one.rows() == other.rows() && one.spacing() == other.spacing()));
    }

    private static boolean isOpen(
            Method one, Method other, int day, boolean isInTray, Function<Method, Prospect> expect) {
        boolean pinch = one.pinched() != other.pinched();
        boolean net = !Objects.equals(one.net(), other.net());
        boolean cover = !Objects.equals(one.cover(), other.cover());
        if (!pinch && !net && !cover && !isInTray) {
            return false;
        }
        Prospect now = expect.apply(one);
        boolean isOut = now.groundDay() < day;
        if (cover && isOut) {
            return false;
        }
        boolean isPlantedOut = one.start() == Method.Start.TRAY || one.start() == Method.Start.PLUGS;
        if (net && (isPlantedOut ? isOut : now.emergence() != Prospect.NONE && now.emergence() < day)) {
            return false;
        }
        if (!pinch) {
            return true;
        }
        int due = one.pinched() ? now.pinch() : expect.apply(other).pinch();
        return due == Prospect.NONE || due >= day;
    }
}
