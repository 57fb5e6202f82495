package bedwright.growth;

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
 * A crop whose dates are arithmetic where each day adds 10 °C·d. Sown on the first day of week w it is up on its fifth
 * day (50 °C·d), grown on its eleventh (110 °C·d, half of the first cut) and in cut from the first day of week w + 3 on
 * (its 22nd day, 220 °C·d), for two weeks, one stem a plant; the bed is kept a week of grace longer.
 */
final class SmallCrop {
    String name = "zinnia";

    @Nullable
    String family;

    List<Crop.KindShare> kinds = List.of(new Crop.KindShare("focal", 1));
    Crop.Convention convention = Crop.Convention.SINE;
    double base = 5;
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
    double cropPrice;
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

    @Nullable
    List<Crop.KindShare> methodKinds;

    int grace = 1;
    int clearing;
    int weedings;
    double winterShare = 1;

    @Nullable
    Double price;

    Map<Job, Labour.JobRate> methodJobs = new LinkedHashMap<>();

    /** Three weeks in trays, planted out with 120 °C·d less a check of 20. */
    SmallCrop inTrays() {
        start = Method.Start.TRAY;
        trayWeeks = 3;
        headStart = 120;
        check = 20;
        return this;
    }

    /** Bought plants with 120 °C·d less a check of 20. */
    SmallCrop asPlugs() {
        start = Method.Start.PLUGS;
        headStart = 120;
        check = 20;
        return this;
    }

    Crop build() {
        Method method = new Method(
                "plain",
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
                new Crop.Clock(base, null, convention, emergence, pinch, firstCut, leastDayLength, dayLength),
                heat,
                killing,
                tender,
                appeal,
                height,
                null,
                stand,
                cropPrice,
                cropJobs,
                List.of(),
                null,
                Map.of(),
                List.of(method));
    }
}
