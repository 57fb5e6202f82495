package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.file.HeldFolder;
import bedwright.file.PlanFile;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.sheet.SheetFacts;
import bedwright.underway.Onward;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A new plan that lies beside the plan in force until it is accepted. It has fingerprints of the plan and of the notes that
 * it was made from: of another plan, or after more notes, it would not be what was shown.
 */
final class Proposal {
    static final String NAME = "proposal.json";

    private final PlanFolder plans;

    Proposal(PlanFolder plans) {
        this.plans = plans;
    }

    private Path file() {
        return plans.folder().resolve(NAME);
    }

    /** What there is now to make a plan from. */
    Onward.Known known() {
        byte[] log = log();
        return new Onward.Known(lines(log), fingerprint(log), fingerprint(bytes(plans.plan())));
    }

    /** Puts a new plan beside the plan in force. */
    void write(Plan plan) {
        try (HeldFolder held = plans.hold()) {
            held.save(Map.of(NAME, PlanFile.bytes(plan)), List.of());
        }
    }

    /** Takes an older proposal away, if there is one. */
    void withdraw() {
        if (Files.exists(file())) {
            try (HeldFolder held = plans.hold()) {
                held.save(Map.of(), List.of(NAME));
            }
        }
    }

    /** The plan that is proposed, if there is one. */
    Optional<Plan> read() {
        return Files.exists(file()) ? Optional.of(PlanFile.read(file())) : Optional.empty();
    }

    /**
     * A new planting that was proposed, or proposed and refused.
     *
     * @throws Refusal if none has this number
     */
    KeptPlanting proposed(int number) {
        Optional<Plan> plan = read();
        return plan.stream()
                .flatMap(of -> of.plantings().stream())
                .filter(planting -> planting.number() == number)
                .findFirst()
                .or(() -> plan.map(Plan::throughout).stream()
                        .flatMap(of -> of.refused().stream())
                        .filter(planting -> planting.number() == number)
                        .findFirst())
                .orElseThrow(
                        () -> new Refusal(
                                Exit.USAGE,
                                "--keep " + number + ": there is no planting " + number
                                        + ", neither in the plan in force nor in the last proposal. Say a number that they show."));
    }

    /**
     * Makes it the plan in force; the former plan stays beside it by a number.
     *
     * @return where the former plan lies
     * @throws Refusal if there is none, or if it was made of another plan or before the last notes
     */
    Path accept() {
        try (HeldFolder held = plans.hold()) {
            Plan plan = read().orElseThrow(() -> new Refusal(
                    Exit.FILE_TROUBLE,
                    file() + ": There is no new plan to accept. Make one first: replan " + plans.folder()
                            + " --on DAY"));
            Plan.Throughout throughout = plan.throughout();
            if (throughout == null) {
                throw new Refusal(Exit.FAULTY_FILE, file() + ": This is not a plan that replan made. Make one anew.");
            }
            byte[] former = bytes(plans.plan());
            if (!fingerprint(former).equals(throughout.before())) {
                throw new Refusal(
                        Exit.FILE_TROUBLE,
                        file() + ": The plan in force is another than when this was proposed. Run replan again and look"
                                + " at what it shows.");
            }
            if (!fingerprint(log()).equals(throughout.log())) {
                throw new Refusal(
                        Exit.FILE_TROUBLE,
                        file() + ": Something was noted since this was proposed. Run replan again and look at what it"
                                + " shows.");
            }
            PlanFacts facts = PlanFacts.ofPlan(plan.season(), PossibleSeasons.of(plan.season()), plan.plantings());
            SheetFacts sheet = new SheetFacts(
                    plan.season(),
                    Outcomes.of(facts, Outcomes.places(facts, plan.plantings())),
                    facts.seasons(),
                    facts.table(),
                    plan.making());
            String name = formerName();
            plans.write(held, plan, sheet, Map.of(name, former), List.of(NAME));
            return plans.folder().resolve(name);
        }
    }

    /** The first of plan-1.json, plan-2.json and so on that is free. */
    private String formerName() {
        int number = 1;
        while (Files.exists(plans.folder().resolve("plan-" + number + ".json"))) {
            number++;
        }
        return "plan-" + number + ".json";
    }

    /** The log's whole lines; what follows the last was never acknowledged. */
    private byte[] log() {
        if (Files.notExists(plans.log())) {
            return new byte[0];
        }
        byte[] all = bytes(plans.log());
        int end = all.length;
        while (end > 0 && all[end - 1] != '\n') {
            end--;
        }
        return Arrays.copyOf(all, end);
    }

    private static int lines(byte[] log) {
        int lines = 0;
        for (byte one : log) {
            lines += one == '\n' ? 1 : 0;
        }
        return lines;
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE_TROUBLE, file + ": It can't be read: " + e.getMessage());
        }
    }

    private static String fingerprint(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
