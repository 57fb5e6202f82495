package bedwright.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Ways of growing to be compared: each is a season with changes. */
public record Strategies(
        @Fact(value = "What is compared, as it stands on the sheet", least = 1)
        String name,

        @Fact("Anything to be said about it; invented cases say so here") @Nullable
        String about,

        @Fact(
                value =
                        "Units of this file: metres (with °C and m/s) or feet (with inches for what is small, °F and miles"
                                + " an hour)",
                byDefault = "\"metres\"")
        Units units,

        @Fact(value = "The ways of growing; the others are set against the first", least = 2, most = 60)
        List<Strategy> strategies) {

    public Strategies {
        strategies = List.copyOf(strategies);
    }

    /** One way of growing: what is changed of the season. Without any change it is the season as it stands. */
    public record Strategy(
            @Fact(value = "Name", least = 1) String name,
            @Fact("Anything to be said about it") @Nullable String about,

            @Fact(value = "What may not be grown", byDefault = "[]")
            List<Ways> barred,

            @Fact(value = "Of the crops named, what alone may be grown", byDefault = "[]")
            List<Ways> only,

            @Fact("Weight of the bad seasons; left out: the season's") @Nullable
            Caution caution,

            @Fact(
                    value = "How many possible seasons it is planned on, 1 for the normal season alone; left out: the"
                            + " season's",
                    min = 1,
                    max = 1000)
            @Nullable
            Integer planned,

            @Fact("Whether it is planned with doubt in the figures; left out: as the season says") @Nullable
            Boolean doubt,

            @Fact(value = "Whether it is made by rule of thumb in place of being planned", byDefault = "false")
            boolean ruleOfThumb,

            @Fact(value = "More or fewer, longer or shorter beds", byDefault = "[]")
            List<MoreBeds> beds,

            @Fact(value = "More or less support net", byDefault = "[]")
            List<MoreNet> nets,

            @Fact(value = "More or fewer cells of the bench", unit = "cells", min = -10000000, max = 10000000) @Nullable
            Integer bench,

            @Fact(value = "More or fewer tray cells owned", unit = "cells", min = -10000000, max = 10000000) @Nullable
            Integer trays,

            @Fact(value = "More or less row cover", unit = "m", min = -1000000, max = 1000000) @Nullable
            Double cover,

            @Fact(value = "More or fewer own hours a week", byDefault = "[]")
            List<MoreHours> ownHours,

            @Fact(value = "More or fewer hours a week that can be hired", byDefault = "[]")
            List<MoreHours> hiredHours,

            @Fact(value = "More or fewer hands that cut", byDefault = "[]")
            List<MoreHands> cuttingHands,

            @Fact(value = "Windbreaks beside those that there are", byDefault = "[]")
            List<Windbreak> windbreaks,

            @Fact(value = "What outlets and orders take", byDefault = "[]")
            List<Amount> outlets) {

        public Strategy {
            barred = List.copyOf(barred);
            only = List.copyOf(only);
            beds = List.copyOf(beds);
            nets = List.copyOf(nets);
            ownHours = List.copyOf(ownHours);
            hiredHours = List.copyOf(hiredHours);
            cuttingHands = List.copyOf(cuttingHands);
            windbreaks = List.copyOf(windbreaks);
            outlets = List.copyOf(outlets);
        }

        /** The season as it stands, under a name. */
        public static Strategy plain(String name) {
            return changed(name).strategy();
        }

        /** One to be put together change by change. */
        public static Change changed(String name) {
            return new Change(name);
        }
    }

    /** A strategy that is put together: without any change the season as it stands. */
    public static final class Change {
        private final String name;
        private List<Ways> barred = List.of();
        private List<Ways> only = List.of();
        private @Nullable Caution caution;
        private @Nullable Integer planned;
        private @Nullable Boolean doubt;
        private boolean ruleOfThumb;
        private List<MoreBeds> beds = List.of();
        private List<MoreNet> nets = List.of();
        private @Nullable Integer bench;
        private List<MoreHours> ownHours = List.of();
        private List<MoreHours> hiredHours = List.of();
        private List<Windbreak> windbreaks = List.of();
        private List<Amount> outlets = List.of();

        private Change(String name) {
            this.name = name;
        }

        /** What may not be grown. */
        public Change barred(Ways ways) {
            barred = List.of(ways);
            return this;
        }

        /** Of the crops named, what alone may be grown. */
        public Change only(Ways ways) {
            only = List.of(ways);
            return this;
        }

        /** Weight of the bad seasons. */
        public Change caution(Caution weight) {
            caution = weight;
            return this;
        }

        /** How many possible seasons it is planned on. */
        public Change planned(int seasons) {
            planned = seasons;
            return this;
        }

        /** Whether it is planned with doubt in the figures. */
        public Change doubt(boolean with) {
            doubt = with;
            return this;
        }

        /** Made by rule of thumb in place of being planned. */
        public Change byRuleOfThumb() {
            ruleOfThumb = true;
            return this;
        }

        public Change beds(MoreBeds more) {
            beds = List.of(more);
            return this;
        }

        public Change nets(List<MoreNet> more) {
            nets = more;
            return this;
        }

        /** Cells of the bench, more or fewer. */
        public Change bench(int cells) {
            bench = cells;
            return this;
        }

        public Change ownHours(MoreHours more) {
            ownHours = List.of(more);
            return this;
        }

        public Change hiredHours(MoreHours more) {
            hiredHours = List.of(more);
            return this;
        }

        /** One windbreak beside those that there are. */
        public Change windbreak(Windbreak another) {
            windbreaks = List.of(another);
            return this;
        }

        /** What outlets and orders take. */
        public Change outlets(List<Amount> amounts) {
            outlets = amounts;
            return this;
        }

        public Strategy strategy() {
            return new Strategy(
                    name,
                    null,
                    barred,
                    only,
                    caution,
                    planned,
                    doubt,
                    ruleOfThumb,
                    beds,
                    nets,
                    bench,
                    null,
                    null,
                    ownHours,
                    hiredHours,
                    List.of(),
                    windbreaks,
                    outlets);
        }
    }

    /** Ways of growing crops: those for which everything holds that is said. */
    public record Ways(
            @Fact(value = "Crops; left out: all", byDefault = "[]")
            List<String> crops,

            @Fact(value = "Names of methods; left out: all", byDefault = "[]")
            List<String> methods,

            @Fact("How they start: sown, tray, plugs or set; left out: any")
            Method.@Nullable Start start,

            @Fact("Whether they are pinched; left out: either") @Nullable
            Boolean pinched,

            @Fact("Whether they are netted; left out: either") @Nullable
            Boolean netted,

            @Fact("Whether they are covered; left out: either") @Nullable
            Boolean covered) {

        public Ways {
            crops = List.copyOf(crops);
            methods = List.copyOf(methods);
        }

        /** These crops, in whatever way. */
        public static Ways crops(String... names) {
            return new Ways(List.of(names), List.of(), null, null, null, null);
        }

        /** Whether it speaks of a crop. */
        public boolean speaksOf(Crop crop) {
            return crops.isEmpty() || crops.contains(crop.name());
        }

        /** Whether it holds for a way of growing a crop. */
        public boolean holds(Crop crop, Method way) {
            return speaksOf(crop)
                    && (methods.isEmpty() || methods.contains(way.name()))
                    && (start == null || start == way.start())
                    && (pinched == null || pinched == way.pinched())
                    && (netted == null || netted == (way.net() != null))
                    && (covered == null || covered == (way.cover() != null));
        }
    }

    /** More or fewer beds of a block, or longer or shorter ones. */
    public record MoreBeds(
            @Fact("Name of the block of beds") String beds,

            @Fact(value = "How many beds more, at its end; below 0: fewer", min = -500, max = 500, byDefault = "0")
            int count,

            @Fact(
                    value = "By how much each is longer; below 0: shorter",
                    unit = "m",
                    min = -2000,
                    max = 2000,
                    byDefault = "0")
            double metres) {}

    /** More or less of a net. */
    public record MoreNet(
            @Fact("Name of the net") String net,

            @Fact(value = "Metres more; below 0: less", unit = "m", min = -1000000, max = 1000000)
            double metres) {}

    /** More or fewer hours a week, in the weeks whose first day lies between two days. */
    public record MoreHours(
            @Fact("First day; left out: from the start") @Nullable
            LocalDate from,

            @Fact("Last day; left out: to the end") @Nullable
            LocalDate to,

            @Fact(value = "Hours a week more; below 0: fewer", unit = "hours", min = -10000, max = 10000)
            double more) {}

    /** More or fewer hands that cut, likewise. */
    public record MoreHands(
            @Fact("First day; left out: from the start") @Nullable
            LocalDate from,

            @Fact("Last day; left out: to the end") @Nullable
            LocalDate to,

            @Fact(value = "Hands more; below 0: fewer", min = -1000, max = 1000)
            double more) {}

    /** What an outlet or order takes in each of its weeks: so many times as much, or so much. */
    public record Amount(
            @Fact("Name of the outlet or order") String outlet,

            @Fact(value = "So many times as much as in the season", min = 0, max = 1000) @Nullable
            Double times,

            @Fact(value = "Stems or bouquets a week, in each of its weeks", min = 0, max = 10000000) @Nullable
            Double amount) {}
}
