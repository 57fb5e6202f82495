package bedwright.growth;

import bedwright.season.Job;
import java.util.EnumSet;
import java.util.Set;

/**
 * A planting of which some jobs are done a week later than its calendar has them, all else as it is: its bed, its other
 * jobs and its last week stay. Net counts from the week it is up, cover from the week it lies; both end as planned,
 * or a week later if that is what is late. Pinched a week later, it is put off by the degree-days of that week. What comes
 * too late altogether is not done.
 *
 * @param spot where and how it stands
 * @param jobs the late ones, of {@link #JOBS}
 */
public record Late(Spot spot, Set<Job> jobs) {
    /** Jobs that a planting can be without for a week. */
    public static final Set<Job> JOBS =
            Set.copyOf(EnumSet.of(Job.NET_UP, Job.NET_DOWN, Job.COVER_ON, Job.COVER_OFF, Job.PINCH));

    public Late {
        jobs = Set.copyOf(jobs);
        if (jobs.isEmpty() || !JOBS.containsAll(jobs)) {
            throw new IllegalArgumentException("Jobs that can be late are some of " + JOBS + ", not " + jobs);
        }
    }
}
