package bedwright.file;

import bedwright.season.Season;
import bedwright.season.Standing;
import java.time.LocalDate;

/** Checks of what already stands. */
final class StandingCheck {
    /** How many days before the season the weather is known from which a clock could be counted. */
    private static final int LONGEST_PAST = 400;

    private final Season season;
    private final Known known;
    private final Days days;
    private final Flaws flaws;

    StandingCheck(Season season, Known known, Days days, Flaws flaws) {
        this.season = season;
        this.known = known;
        this.days = days;
        this.flaws = flaws;
    }

    void run() {
        for (int i = 0; i < season.standing().size(); i++) {
            String path = "/standing/" + i;
            Standing standing = season.standing().get(i);
            references(path, standing);
            if (standing.past() != null) {
                continue;
            }
            if (standing.isWritten()) {
                written(path, standing);
            } else {
                counted(path, standing);
            }
        }
    }

    private void references(String path, Standing standing) {
        known.checkCrop(flaws, path + "/crop", standing.crop());
        String method = standing.method();
        if (method != null) {
            known.crop(standing.crop()).ifPresent(crop -> known.checkMethod(flaws, path + "/method", crop, method));
        }
        if (standing.bed() != null) {
            known.checkBed(flaws, path + "/bed", standing.bed());
        }
        for (int i = 0; i < standing.stems().size(); i++) {
            Standing.WrittenStems stems = standing.stems().get(i);
            String stemsPath = path + "/stems/" + i;
            if (stems.kind() != null) {
                known.checkKind(flaws, stemsPath + "/kind", stems.kind());
            }
            days.firstOfAWeek(stemsPath + "/week", "week", stems.week());
            days.inside(stemsPath + "/week", "week", stems.week());
        }
        days.firstOfAWeek(path + "/sown", "sown", standing.sown());
        if (standing.sown() != null && standing.sown().isAfter(days.last())) {
            days.inside(path + "/sown", "sown", standing.sown());
        }
    }

    private void written(String path, Standing standing) {
        if (standing.bed() == null) {
            flaws.add(
                    path + "/stems",
                    "Stems are written out for what stands in a bed, but no bed is given. Add \"bed\".",
                    path + "/bed");
        }
        if (standing.sown() != null) {
            flaws.add(
                    path + "/sown",
                    "Stems are written out, so they are not computed from the day of sowing. Leave \"sown\" out, or"
                            + " \"stems\".",
                    path + "/stems");
        }
        if (standing.clock() != null) {
            flaws.add(
                    path + "/clock",
                    "Stems are written out, so they are not computed from a clock. Leave \"clock\" out, or \"stems\".",
                    path + "/stems");
        }
        LocalDate until = standing.until();
        if (until != null && until.isBefore(season.starts())) {
            flaws.add(
                    path + "/until",
                    "\"until\" is " + until + ", before the season starts on " + season.starts()
                            + ". Write the last day on which it keeps its bed, or take the whole planting away.",
                    "/starts");
        }
    }

    private void counted(String path, Standing standing) {
        if (standing.until() != null) {
            flaws.add(
                    path + "/until",
                    "\"until\" says how long a planting with written-out stems keeps its bed, but no stems are written"
                            + " out: this one keeps it as long as its method says. Leave \"until\" out, or add \"stems\".",
                    path + "/stems");
        }
        Standing.ClockReading clock = standing.clock();
        LocalDate sown = standing.sown();
        if (clock != null) {
            needsBedAndMethod(path, standing, path + "/clock", "With \"clock\" given it is in the ground");
            tooLongAgo(path + "/clock/on", "on", clock.on());
            if (clock.on().isAfter(days.last())) {
                days.inside(path + "/clock/on", "on", clock.on());
            }
        } else if (sown != null && sown.isBefore(season.starts())) {
            if (standing.bed() != null) {
                needsBedAndMethod(path, standing, path + "/sown", "It was sown before the season and has a bed");
            }
            tooLongAgo(path + "/sown", "sown", sown);
        }
    }

    private void needsBedAndMethod(String path, Standing standing, String at, String why) {
        if (standing.bed() == null) {
            flaws.add(at, why + ", but no bed is given. Add \"bed\".", path + "/bed", "/starts");
        }
        if (standing.method() == null) {
            flaws.add(
                    at,
                    why + ", but its method is not given, so nobody knows how it grows on. Add \"method\".",
                    path + "/method",
                    path + "/bed",
                    "/starts");
        }
    }

    private void tooLongAgo(String path, String label, LocalDate date) {
        if (date.isBefore(season.starts().minusDays(LONGEST_PAST))) {
            flaws.add(
                    path,
                    Words.quoted(label) + " is " + date + ", more than " + LONGEST_PAST
                            + " days before the season starts. For what is older write its \"stems\" out by week, or give a"
                            + " later \"clock\".",
                    "/starts");
        }
    }
}
