package bedwright.recheck;

import bedwright.season.Crop;
import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Method;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A crop whose dates are arithmetic at 20 °C: base 10 °C, so that each day adds 10 °C·d. Sown on the first day of week
 * w, it is up on its fifth day (50 °C·d) and in cut from the first day of week w + 3 (220 °C·d) for two weeks, one stem a
 * plant; its bed is kept a week of grace longer. A plant takes a metre.
 */
final class TestCrop {
    String name = "zinnia";
    String methodName = "plain";

    @Nullable
    String family;

    List<Crop.KindShare> kinds = List.of(new Crop.KindShare("focal", 1));
    Crop.Convention convention = Crop.Convention.SINE;
    double base = 10;

    @Nullable
    Double upper;

    double emergence = 50;

    @Nullable
    Double pinch;

    double firstCut = 220;
    double leastDayLength;
    Crop.@Nullable DayLengthAnswer dayLength;
    Crop.@Nullable Heat heat;
    Crop.Killing killing = new Crop.Killing(0, 0);
    double tender;
    Map<String, Double> appeal = new LinkedHashMap<>();
    double height = 1;
    Crop.Stand stand = new Crop.Stand(24, null, 3, 0.3);
    Map<Job, Labour.JobRate> cropJobs = new LinkedHashMap<>();

    Method.Start start = Method.Start.SOWN;
    Method.@Nullable SeedTemperature seedTemperature;

    @Nullable
    MonthDay sowFrom;

    @Nullable
    MonthDay sowTo;

    int trayWeeks;
    int hardeningWeeks;
    double headStart;
    double check;
    boolean pinched;
    double pinchDelay;
    double emergenceShare = 1;
    int seedsAPlace = 1;
    int rows = 1;
    double spacing = 1;

    @Nullable
    Double methodHeight;

    @Nullable
    Double methodGust;

    Method.@Nullable NetUse net;
    Method.@Nullable CoverUse cover;
    int cutDays = 14;
    List<Double> cutShares = List.of(1.0);
    double stems = 1;
    double saleable = 1;
    int grace = 1;
    int clearing;
    int weedings;
    double winterShare = 1;
    double price;

    @Nullable
    List<Crop.KindShare> methodKinds;

    Map<Job, Labour.JobRate> methodJobs = new LinkedHashMap<>();

    Crop build() {
        Method method = new Method(
                methodName,
                start,
                seedTemperature,
                sowFrom,
                sowTo,
                trayWeeks,
                hardeningWeeks,
                0,
                headStart,
                check,
                pinched,
                pinchDelay,
                emergenceShare,
                seedsAPlace,
                rows,
                spacing,
                methodHeight,
                null,
                methodGust,
                net,
                cover,
                cutDays,
                cutShares,
                stems,
                saleable,
                methodKinds,
                grace,
                clearing,
                weedings,
                winterShare,
                price,
                methodJobs,
                Map.of());
        return new Crop(
                name,
                family,
                kinds,
                new Crop.Clock(base, upper, convention, emergence, pinch, firstCut, leastDayLength, dayLength),
                heat,
                killing,
                tender,
                appeal,
                height,
                null,
                stand,
                0,
                cropJobs,
                List.of(),
                null,
                Map.of(),
                List.of(method));
    }
}
