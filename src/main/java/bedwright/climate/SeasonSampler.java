package bedwright.climate;

import bedwright.season.Crop;
import bedwright.season.Pest;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Sureness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousUniformSampler;
import org.apache.commons.rng.sampling.distribution.KempSmallMeanPoissonSampler;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Samples one possible season after another, each cause from a stream of its own: temperature, each side's gusts by
 * week, each pest by its name, each crop's doubts by its name, the two frosts, seed-beds, winter.
 *
 * <p>Normal and Poisson numbers are those of Commons RNG (modified ziggurat; Kemp's inversion from one number). In both
 * exp only decides where a number falls between whole ones, or whether it is taken, never its value.
 */
final class SeasonSampler {
    private static final int DAYS = 7;

    private final Season season;
    private final Streams streams;
    private final SiteClimate climate;

    SeasonSampler(Season season, long seed) {
        this.season = season;
        this.streams = new Streams(seed);
        this.climate = SiteClimate.of(season);
    }

    /** The season of a number, from 0. */
    PossibleSeason sample(int number) {
        Site site = season.site();
        Sampling.Doubt doubt = season.possible().doubt();
        List<Crop> crops = season.crops();
        double[] firstCut = new double[crops.size()];
        double[] stems = new double[crops.size()];
        for (int c = 0; c < firstCut.length; c++) {
            Crop crop = crops.get(c);
            long name = Streams.nameOf(crop.name());
            Sureness sureOfCut = crop.sureness("firstCut");
            Sureness sureOfStems = crop.sureness("stems");
            firstCut[c] = StrictMath.exp(doubt.firstCut().of(sureOfCut) * normal("doubt of first cut", name, number));
            stems[c] = meanOne(doubt.stems().of(sureOfStems), normal("doubt of stems", name, number));
        }
        return new PossibleSeason(
                false,
                temperature(site.spread(), number),
                gusts(site.storms(), number),
                pestYears(season.pests(), number),
                normal("spring frost", number),
                normal("autumn frost", number),
                badSeedBeds(site.badSeedBed().chance(), number),
                streams.of("hard winter", number).nextDouble()
                        < site.hardWinter().chance(),
                firstCut,
                stems);
    }

    private double normal(String cause, long... parts) {
        return normals(streams.of(cause, parts)).sample();
    }

    private static SharedStateContinuousSampler normals(UniformRandomProvider stream) {
        return ZigguratSampler.NormalizedGaussian.of(stream);
    }

    /** A log-normal factor with mean 1. */
    private static double meanOne(double sigma, double deviate) {
        return StrictMath.exp(sigma * deviate - sigma * sigma / 2);
    }

    /** A shift of the whole year and an autoregressive deviation of the day, in its steady state from the first day on. */
    private double[] temperature(Site.TemperatureSpread spread, int number) {
        SharedStateContinuousSampler normals = normals(streams.of("temperature", number));
        double shift = spread.year() * normals.sample();
        double[] deviation = new double[season.days()];
        double memory = spread.memory();
        double fresh = Math.sqrt(1 - memory * memory);
        double course = normals.sample();
        for (int d = 0; d < deviation.length; d++) {
            deviation[d] = shift + spread.day() * course;
            course = memory * course + fresh * normals.sample();
        }
        return PossibleSeasons.seen(season, deviation);
    }

    private List<Gust> gusts(List<Site.StormSide> sides, int number) {
        List<Gust> gusts = new ArrayList<>();
        for (int s = 0; s < sides.size(); s++) {
            Site.StormSide side = sides.get(s);
            for (int week = 0; week < season.weeks(); week++) {
                double rate = side.gustsAWeek().get(climate.month(DAYS * week + 3));
                if (rate == 0) {
                    continue;
                }
                // A stream for each week: what one month's rate is leaves the gusts of the other months alone.
                UniformRandomProvider stream = streams.of("gusts", s, number, week);
                int count = KempSmallMeanPoissonSampler.of(stream, rate).sample();
                SharedStateContinuousSampler open = ContinuousUniformSampler.of(stream, 0, 1, true);
                for (int i = 0; i < count; i++) {
                    int day = DAYS * week + stream.nextInt(DAYS);
                    gusts.add(new Gust(day, s, side.from(), Gusts.quantile(side.mode(), side.scale(), open.sample())));
                }
            }
        }
        gusts.sort(Comparator.comparingInt(Gust::day).thenComparingInt(Gust::side));
        return List.copyOf(PossibleSeasons.seen(season, gusts));
    }

    private double[] pestYears(List<Pest> pests, int number) {
        double[] years = new double[pests.size()];
        for (int p = 0; p < years.length; p++) {
            Pest pest = pests.get(p);
            years[p] = meanOne(pest.yearSpread(), normal("pest", Streams.nameOf(pest.name()), number));
        }
        return years;
    }

    private boolean[] badSeedBeds(double chance, int number) {
        UniformRandomProvider stream = streams.of("seed-bed", number);
        boolean[] bad = new boolean[season.weeks()];
        for (int week = 0; week < bad.length; week++) {
            bad[week] = stream.nextDouble() < chance;
        }
        return bad;
    }
}
