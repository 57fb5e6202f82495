package bedwright.growth;

import bedwright.climate.Gust;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Works out what noted weather has most likely taken of one planting, in the mean of the possible seasons. */
final class WeatherTaken {
    private final Grown grown;
    private final Losses losses;

    WeatherTaken(Grown grown, Ground.BedClass bed) {
        this.grown = grown;
        this.losses = new Losses(grown, bed);
    }

    List<Weathered> all() {
        List<Weathered> all = new ArrayList<>();
        night().ifPresent(all::add);
        winter().ifPresent(all::add);
        gusts().ifPresent(all::add);
        return all;
    }

    private Optional<Weathered> night() {
        Map<Integer, Integer> seasons = new TreeMap<>();
        for (Development development : grown.developments) {
            int night = losses.killedByNight(development);
            if (night != Development.NEVER) {
                seasons.merge(night, 1, Integer::sum);
            }
        }
        int killed = seasons.values().stream().mapToInt(Integer::intValue).sum();
        return seasons.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .map(day -> new Weathered(
                        Weathered.Cause.NIGHT, day, grown.world.nights.least(day), seasons.size(), mean(killed)));
    }

    private Optional<Weathered> winter() {
        int day = losses.coldestOfWinter(grown.normal);
        return day == Development.NEVER
                ? Optional.empty()
                : Optional.of(new Weathered(Weathered.Cause.WINTER, day, grown.world.nights.least(day), 1, 0));
    }

    private Optional<Weathered> gusts() {
        double[] left = new double[grown.developments.size()];
        Arrays.fill(left, 1);
        Gust worst = null;
        double most = 0;
        int times = 0;
        for (Gust gust : grown.world.normalSeason.gusts()) {
            double sum = 0;
            for (int k = 0; k < left.length; k++) {
                Development development = grown.developments.get(k);
                boolean isDead = losses.killedByNight(development) <= gust.day();
                double lost = isDead ? 0 : losses.lost(development, gust);
                left[k] *= 1 - lost;
                sum += lost;
            }
            if (mean(sum) >= Weathered.WORTH_TELLING) {
                times++;
            }
            if (sum > most) {
                most = sum;
                worst = gust;
            }
        }
        double share = 1 - mean(Arrays.stream(left).sum());
        return worst == null || share < Weathered.WORTH_TELLING
                ? Optional.empty()
                : Optional.of(
                        new Weathered(Weathered.Cause.GUST, worst.day(), worst.speed(), Math.max(1, times), share));
    }

    private double mean(double sum) {
        return sum / grown.developments.size();
    }
}
