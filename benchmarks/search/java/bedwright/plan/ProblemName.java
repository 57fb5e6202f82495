package bedwright.plan;

/** Names of problems that are searched. */
public final class ProblemName {
    /**
     * Small seasons whose best plan is proven: each seed is another one, in the order of their file. A search ends as soon as
     * it has the best plan.
     */
    public static final String SMALL = "small";

    private ProblemName() {}

    /** A name with nothing in it that a file or a link can't have. */
    public static String plain(String problem) {
        return problem.replaceAll("[^A-Za-z0-9]+", "-");
    }
}
