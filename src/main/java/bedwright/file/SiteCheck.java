package bedwright.file;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Family;
import bedwright.season.Labour;
import bedwright.season.Pest;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Stock;
import bedwright.season.Windbreak;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Checks of the farm: weather, beds, pests, hands, and seasons given outright. */
final class SiteCheck {
    private static final int HALF_A_YEAR = 182;

    private final Season season;
    private final Known known;
    private final Days days;
    private final Flaws flaws;

    SiteCheck(Season season, Known known, Days days, Flaws flaws) {
        this.season = season;
        this.known = known;
        this.days = days;
        this.flaws = flaws;
    }

    void run() {
        temperatures();
        Site.Frost frost = season.site().frost();
        if (frost != null) {
            frostDate("/site/frost/lastSpring", frost.lastSpring());
            frostDate("/site/frost/firstAutumn", frost.firstAutumn());
        }
        beds();
        lines();
        pests();
        flaws.unlessDifferent(
                "net", season.stock().nets().stream().map(Stock.Net::name).toList(), i -> "/stock/nets/" + i + "/name");
        flaws.unlessDifferent(
                "family", season.families().stream().map(Family::name).toList(), i -> "/families/" + i + "/name");
        labour();
        for (int i = 0; i < season.possible().given().size(); i++) {
            given("/possible/given/" + i, season.possible().given().get(i));
        }
    }

    private void temperatures() {
        List<Double> mins = season.site().meanMin();
        List<Double> maxs = season.site().meanMax();
        for (int month = 0; month < Math.min(mins.size(), maxs.size()); month++) {
            if (mins.get(month) > maxs.get(month)) {
                flaws.add(
                        "/site/meanMin/" + month,
                        "In month " + (month + 1) + " the mean minimum, " + temperature(mins.get(month))
                                + ", is above the mean maximum, " + temperature(maxs.get(month))
                                + ". Change one of them, or swap them.",
                        "/site/meanMin",
                        "/site/meanMax");
            }
        }
    }

    private String temperature(double metric) {
        return Words.measured(metric, season.units().temperature());
    }

    private void frostDate(String path, Site.FrostDate date) {
        if (Days.forward(date.early(), date.usual()) > HALF_A_YEAR) {
            flaws.add(
                    path + "/usual",
                    "The usual frost date comes before the early one. Write them in order: early, usual, late.",
                    path + "/early");
        }
        if (Days.forward(date.usual(), date.late()) > HALF_A_YEAR) {
            flaws.add(
                    path + "/late",
                    "The late frost date comes before the usual one. Write them in order: early, usual, late.",
                    path + "/usual");
        }
    }

    private void beds() {
        List<Integer> blockOf = new ArrayList<>();
        for (int i = 0; i < season.beds().size(); i++) {
            BedBlock block = season.beds().get(i);
            String path = "/beds/" + i;
            blockOf.addAll(Collections.nCopies(block.count(), i));
            for (int t = 0; t < block.taken().size(); t++) {
                BedBlock.Taken taken = block.taken().get(t);
                days.inOrder(path + "/taken/" + t, taken.from(), taken.to());
                bedNumber(path + "/taken/" + t + "/bed", taken.bed(), block, path);
            }
            for (int g = 0; g < block.history().size(); g++) {
                BedBlock.Grown grown = block.history().get(g);
                known.checkFamily(flaws, path + "/history/" + g + "/family", grown.family());
                bedNumber(path + "/history/" + g + "/bed", grown.bed(), block, path);
            }
        }
        flaws.unlessDifferent(
                "bed", season.allBeds().stream().map(Bed::name).toList(), i -> "/beds/" + blockOf.get(i) + "/name");
    }

    private void bedNumber(String path, @Nullable Integer bed, BedBlock block, String blockPath) {
        if (bed != null && bed > block.count()) {
            flaws.add(
                    path,
                    "\"bed\" is " + bed + ", but " + Words.quoted(block.name()) + " has "
                            + Words.count(block.count(), "bed", "beds")
                            + ". Write a number up to that, or change \"count\".",
                    blockPath + "/count");
        }
    }

    private void lines() {
        for (int i = 0; i < season.windbreaks().size(); i++) {
            Windbreak windbreak = season.windbreaks().get(i);
            length("/windbreaks/" + i, "windbreak", windbreak.from(), windbreak.to());
        }
        for (int i = 0; i < season.roughGrass().size(); i++) {
            RoughGrass grass = season.roughGrass().get(i);
            length("/roughGrass/" + i, "edge of rough grass", grass.from(), grass.to());
        }
        flaws.unlessDifferent(
                "windbreak",
                season.windbreaks().stream().map(Windbreak::name).toList(),
                i -> "/windbreaks/" + i + "/name");
    }

    private void length(String path, String what, Point from, Point to) {
        if (from.x() == to.x() && from.y() == to.y()) {
            flaws.add(
                    path + "/to",
                    "This " + what + " has no length: both its ends are the same point. Move one of them.",
                    path + "/from");
        }
    }

    private void pests() {
        flaws.unlessDifferent("pest", season.pests().stream().map(Pest::name).toList(), i -> "/pests/" + i + "/name");
        for (int i = 0; i < season.pests().size(); i++) {
            Pest pest = season.pests().get(i);
            if (pest.range() != null && season.roughGrass().isEmpty()) {
                flaws.add(
                        "/pests/" + i + "/range",
                        "The pest " + Words.quoted(pest.name()) + " comes from rough grass, but the season has no"
                                + " \"roughGrass\". Say where it is, or leave \"range\" out: the pest is then everywhere"
                                + " alike.",
                        "/roughGrass");
            }
            for (int t = 0; t < pest.takes().size(); t++) {
                if (pest.takes().indexOf(pest.takes().get(t)) < t) {
                    flaws.add(
                            "/pests/" + i + "/takes/" + t,
                            Words.quoted(Words.word(pest.takes().get(t))) + " stands here twice. Take one away.",
                            "/pests/" + i + "/takes");
                }
            }
        }
    }

    private void labour() {
        Labour labour = season.labour();
        for (int i = 0; i < labour.own().size(); i++) {
            days.inOrder(
                    "/labour/own/" + i,
                    labour.own().get(i).from(),
                    labour.own().get(i).to());
        }
        for (int i = 0; i < labour.hired().size(); i++) {
            days.inOrder(
                    "/labour/hired/" + i,
                    labour.hired().get(i).from(),
                    labour.hired().get(i).to());
        }
        for (int i = 0; i < labour.cutting().size(); i++) {
            days.inOrder(
                    "/labour/cutting/" + i,
                    labour.cutting().get(i).from(),
                    labour.cutting().get(i).to());
        }
        for (int i = 0; i < labour.chores().size(); i++) {
            days.inOrder(
                    "/labour/chores/" + i,
                    labour.chores().get(i).from(),
                    labour.chores().get(i).to());
        }
    }

    private void given(String path, Sampling.GivenSeason given) {
        for (String pest : given.pests().keySet()) {
            known.checkPest(flaws.ofKeys(), Pointer.to(path + "/pests", pest), pest);
        }
        for (String crop : given.firstCut().keySet()) {
            known.checkCrop(flaws.ofKeys(), Pointer.to(path + "/firstCut", crop), crop);
        }
        for (String crop : given.yields().keySet()) {
            known.checkCrop(flaws.ofKeys(), Pointer.to(path + "/yields", crop), crop);
        }
        for (int i = 0; i < given.gusts().size(); i++) {
            days.inside(path + "/gusts/" + i + "/on", "on", given.gusts().get(i).on());
        }
        for (int i = 0; i < given.badSeedBeds().size(); i++) {
            LocalDate week = given.badSeedBeds().get(i);
            days.firstOfAWeek(path + "/badSeedBeds/" + i, "badSeedBeds", week);
            days.inside(path + "/badSeedBeds/" + i, "badSeedBeds", week);
        }
        if (given.days().size() > season.days()) {
            flaws.add(
                    path + "/days",
                    "\"days\" has " + given.days().size() + " entries, but the season has only " + season.days()
                            + " days. Take the rest away, or change \"weeks\".",
                    "/weeks");
        }
    }
}
