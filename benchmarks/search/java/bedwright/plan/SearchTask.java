package bedwright.plan;

/**
 * One search to be measured.
 *
 * @param problem a family, a member of it, or a season file, as {@link ProblemFamily#named} takes it, or small seasons,
 *     of which the seed is the number
 * @param seconds to search
 * @param seed of the search
 */
public record SearchTask(String problem, int seconds, long seed) {}
