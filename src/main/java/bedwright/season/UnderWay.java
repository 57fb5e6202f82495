package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far a season has come. The weeks before the one that holds the day count no more: nothing is sown, asked for, cut
 * or worked in them.
 */
public record UnderWay(
        @Fact("The day it is: what is due on it is still open, what was due before it is done")
        LocalDate on,

        @Fact(value = "Weather seen: by how much a day was warmer than normal", byDefault = "[]")
        List<DaySeen> weather,

        @Fact(value = "Gusts seen: on their days no other gust blew", byDefault = "[]")
        List<Sampling.GivenGust> gusts,

        @Fact(value = "Stock that is not there for some weeks", byDefault = "[]")
        List<Missing> missing,

        @Fact(value = "The plantings of the plan in force, from which changes are counted", byDefault = "[]")
        List<KeptPlanting> inForce,

        @Fact(value = "The least number that no planting has had", min = 1, max = 1000000, byDefault = "1")
        int nextNumber) {

    public UnderWay {
        weather = List.copyOf(weather);
        gusts = List.copyOf(gusts);
        missing = List.copyOf(missing);
        inForce = List.copyOf(inForce);
    }

    /** As far, with another plan in force. */
    public UnderWay with(List<KeptPlanting> plan) {
        return new UnderWay(on, weather, gusts, missing, plan, nextNumber);
    }

    /** The same with new plantings numbered from a number on, if that is greater. */
    public UnderWay numberedFrom(int number) {
        return new UnderWay(on, weather, gusts, missing, inForce, Math.max(nextNumber, number));
    }

    /** How much of a stock is not there in the week that begins on a day. */
    public double missing(String stock, LocalDate week) {
        return missing.stream()
                .filter(one -> one.stock().equals(stock)
                        && one.from().isBefore(week.plusWeeks(1))
                        && !one.to().isBefore(week))
                .mapToDouble(Missing::amount)
                .sum();
    }

    /** A day's weather as it was. */
    public record DaySeen(
            @Fact("Day") LocalDate on,

            @Fact(
                    value = "Warmer than the normal of that day, in the mean of minimum and maximum",
                    unit = "°C difference",
                    min = -40,
                    max = 40)
            double warmer,

            @Fact(value = "Its minimum in the open; left out: not known", unit = "°C", min = -60, max = 60) @Nullable
            Double least) {}

    /** Some of a stock that is not there for some weeks. */
    public record Missing(
            @Fact("Stock: bench, trays, row cover or a net's name")
            String stock,

            @Fact("First day") LocalDate from,
            @Fact("Last day") LocalDate to,

            @Fact(value = "How much is not there: cells, or metres", min = 0, max = 10000000)
            double amount) {}
}
