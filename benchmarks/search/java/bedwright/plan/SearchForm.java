package bedwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which searches are measured, and how long the prices of a problem of which none are kept are looked for.
 *
 * @param tasks problem by problem
 * @param priceSeconds for a farm of one field; larger ones have so many times as {@link #fields}, with a limit
 * @param mostPriceSeconds the limit
 */
record SearchForm(List<SearchTask> tasks, int priceSeconds, int mostPriceSeconds) {
    /** How long the short form may take with everything, on two processors, s. */
    static final int SHORT_LIMIT = 8 * 60;

    /**
     * What a field takes to be read, drawn and compiled, with its rule of thumb, s: ample, as sixteen took 13 s to compile on
     * a busy machine.
     */
    private static final double COMPILE = 3;
    /** What a field takes to be opened before each search, and to be counted again, s: sixteen took 27 s to open there. */
    private static final double OPEN = 2;

    SearchForm {
        tasks = List.copyOf(tasks);
    }

    /**
     * What the arguments ask for.
     *
     * @throws IllegalArgumentException for a form that is not known, or one with arguments that it decides itself
     */
    static SearchForm of(BenchArgs given) {
        String form = given.text("form", "");
        if (!form.isEmpty()) {
            for (String decided : List.of("problems", "seeds", "first", "seconds")) {
                if (!given.text(decided, "").isEmpty()) {
                    throw new IllegalArgumentException("form=" + form + " decides about " + decided + " itself");
                }
            }
        }
        SearchForm all = switch (form) {
            case "" -> freely(given);
            case "short" -> shortForm();
            case "long" -> longForm();
            default -> throw new IllegalArgumentException("form=" + form + ": expected short or long");
        };
        String prices = given.text("prices", "");
        return prices.isEmpty() ? all : new SearchForm(all.tasks, Integer.parseInt(prices), Integer.parseInt(prices));
    }

    private static SearchForm freely(BenchArgs given) {
        Tasks tasks = new Tasks();
        int first = given.number("first", 1);
        for (String problem : given.list("problems", "demo")) {
            for (String seconds : given.list("seconds", "10,60")) {
                tasks.add(problem, Integer.parseInt(seconds), first, given.number("seeds", 10));
            }
        }
        return new SearchForm(tasks.all, 60, 960);
    }

    /** Before a change and after it: a glance at every family that is quick, the demo farm more closely. */
    static SearchForm shortForm() {
        Tasks tasks = new Tasks();
        tasks.add(ProblemName.SMALL, 10, 1, 3);
        tasks.add("demo", 10, 1, 3);
        tasks.add("demo", 60, 1, 2);
        for (ProblemFamily family : ProblemFamily.values()) {
            if (family.isTight()) {
                tasks.add(family.label(), 10, 1, 2);
            }
        }
        tasks.add("demo-x4", 10, 1, 1);
        return new SearchForm(tasks.all, 15, 30);
    }

    /** Every family, ten seeds, three times; the largest last. */
    static SearchForm longForm() {
        Tasks tasks = new Tasks();
        addAtAllTimes(tasks, ProblemName.SMALL);
        List<ProblemFamily> families = new ArrayList<>(List.of(ProblemFamily.values()));
        families.sort(Comparator.comparingInt(ProblemFamily::fields));
        for (ProblemFamily family : families) {
            addAtAllTimes(tasks, family.label());
        }
        return new SearchForm(tasks.all, 60, 960);
    }

    private static void addAtAllTimes(Tasks tasks, String problem) {
        for (int seconds : new int[] {10, 60, 300}) {
            tasks.add(problem, seconds, 1, 10);
        }
    }

    private static final class Tasks {
        private final List<SearchTask> all = new ArrayList<>();

        private void add(String problem, int seconds, int first, int seeds) {
            for (int seed = first; seed < first + seeds; seed++) {
                all.add(new SearchTask(problem, seconds, seed));
            }
        }
    }

    /** Seconds to look for the prices of a problem; 0 if it needs none. */
    int priceSeconds(String problem) {
        return problem.equals(ProblemName.SMALL) ? 0 : Math.min(mostPriceSeconds, priceSeconds * fields(problem));
    }

    /** Fields of the demo farm that a problem is as large as; 1 for season files and small seasons. */
    private static int fields(String problem) {
        return problem.equals(ProblemName.SMALL) || problem.endsWith(".json")
                ? 1
                : ProblemFamily.of(problem.split(":", 2)[0]).fields();
    }

    /** About how long a search takes with its opening, s. */
    static double seconds(SearchTask task) {
        return task.seconds() + OPEN * fields(task.problem());
    }

    /** About how long a problem takes before its first search, without prices, s. */
    static double compileSeconds(String problem) {
        return COMPILE * fields(problem);
    }

    /** About how long all takes if no prices are kept, s. */
    double seconds() {
        double sum = tasks.stream().mapToDouble(SearchForm::seconds).sum();
        for (String problem : tasks.stream().map(SearchTask::problem).distinct().toList()) {
            sum += compileSeconds(problem) + priceSeconds(problem);
        }
        return sum;
    }
}
