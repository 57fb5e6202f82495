package bedwright.growth;

import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The figures of one place, shared by all places in exactly equal beds. Fields as in {@link ProspectTable}. */
final class Row {
    final int heldFrom;
    final int heldTo;
    final int stoodFrom;
    final int stoodTo;
    final int millimetres;
    final int benchFrom;
    final int benchTo;
    final int trayFrom;
    final int trayTo;
    final int cells;
    final int net;
    final int netFrom;
    final int netTo;
    final int netMillimetres;
    final int coverFrom;
    final int coverTo;
    final int workFrom;
    final int[] work;
    final int[] setUp;
    final long material;
    final int[] blockWeeks;
    final int[] blockNodes;
    final int[] stems;

    /** What a planting needs, which is the same in all beds of a warmth, with the stems that it gives in one of them. */
    Row(Season season, Needs needs, Calendar calendar, boolean inTheGround, Stems given) {
        int now = season.firstWeek();
        stoodFrom = Math.min(calendar.heldFrom(), calendar.heldTo());
        stoodTo = calendar.heldTo();
        heldFrom = Math.max(now, stoodFrom);
        heldTo = Math.max(heldFrom, stoodTo);
        millimetres = needs.millimetres();
        cells = inTheGround ? 0 : needs.cells();
        boolean raised = cells > 0;
        trayFrom = raised ? Math.max(now, calendar.sowWeek()) : 0;
        trayTo = raised ? Math.max(trayFrom, calendar.groundWeek()) : 0;
        benchFrom = trayFrom;
        benchTo = raised ? Math.max(benchFrom, calendar.groundWeek() - given.hardening) : 0;
        net = calendar.netWeek() == Calendar.NONE ? -1 : needs.net();
        netFrom = Math.max(now, calendar.netFrom());
        netTo = Math.max(netFrom, calendar.netTo());
        netMillimetres = millimetres * needs.layers();
        coverFrom = Math.max(now, calendar.coverFrom());
        coverTo = Math.max(coverFrom, calendar.coverTo());
        int first = season.weeks();
        int end = 0;
        double[] minutes = new double[season.weeks()];
        int[] begin = new int[season.weeks()];
        for (Prospect.Task task : given.written ? List.<Prospect.Task>of() : needs.tasks()) {
            if (task.week() < now) {
                continue;
            }
            minutes[task.week()] += task.minutes();
            begin[task.week()] += task.setUp();
            first = Math.min(first, task.week());
            end = Math.max(end, task.week() + 1);
        }
        workFrom = Math.min(first, end);
        work = new int[end - workFrom];
        setUp = new int[work.length];
        for (int i = 0; i < work.length; i++) {
            work[i] = Math.toIntExact(Rounding.halfUp(minutes[workFrom + i]));
            setUp[i] = begin[workFrom + i];
        }
        material = needs.material();
        blockWeeks = given.weeks.stream().mapToInt(Integer::intValue).toArray();
        blockNodes = given.nodes.stream().mapToInt(Integer::intValue).toArray();
        int seasons = given.blocks.isEmpty() ? 0 : given.blocks.getFirst().length;
        stems = new int[seasons * blockWeeks.length];
        for (int b = 0; b < blockWeeks.length; b++) {
            System.arraycopy(given.blocks.get(b), 0, stems, b * seasons, seasons);
        }
    }

    boolean gives() {
        return stems.length > 0;
    }

    /** Stems by kind and week, in blocks that are not all nothing. */
    static final class Stems {
        private final List<Integer> weeks = new ArrayList<>();
        private final List<Integer> nodes = new ArrayList<>();
        private final List<int[]> blocks = new ArrayList<>();
        /** Whether there is no work but cutting: stems written out, or pulled already. */
        private final boolean written;

        private final int hardening;

        private Stems(boolean written, int hardening) {
            this.written = written;
            this.hardening = hardening;
        }

        private void add(int node, int week, int[] bySeason) {
            for (int stems : bySeason) {
                if (stems != 0) {
                    nodes.add(node);
                    weeks.add(week);
                    blocks.add(bySeason);
                    return;
                }
            }
        }

        /** Those of the weeks up to one, it included. */
        Stems upTo(int week) {
            Stems some = new Stems(written, hardening);
            for (int b = 0; b < blocks.size(); b++) {
                if (weeks.get(b) <= week) {
                    some.weeks.add(weeks.get(b));
                    some.nodes.add(nodes.get(b));
                    some.blocks.add(blocks.get(b));
                }
            }
            return some;
        }

        /** None: it was pulled. */
        static Stems none() {
            return new Stems(true, 0);
        }

        /** The stems that a planting gives in a bed from this week of the season on. */
        static Stems of(Grown grown, Ground.BedClass bed, int plants) {
            return of(grown, bed, plants, grown.world.season.firstWeek());
        }

        /** @param from the first week of which stems count */
        static Stems of(Grown grown, Ground.BedClass bed, int plants, int from) {
            World world = grown.world;
            int seasons = world.seasons.size();
            double[][] byWeek = new double[seasons][];
            for (int k = 0; k < seasons; k++) {
                byWeek[k] = stemsByWeek(grown, bed, plants, k);
            }
            Stems stems = new Stems(false, grown.method.hardeningWeeks());
            for (Crop.KindShare kind : kinds(grown)) {
                int node = world.kinds.node(kind.kind());
                for (int w = from; w < world.weeks; w++) {
                    int[] block = new int[seasons];
                    for (int k = 0; k < seasons; k++) {
                        block[k] = Math.toIntExact(Rounding.halfUp(100 * (byWeek[k][w] * kind.share())));
                    }
                    stems.add(node, w, block);
                }
            }
            return stems;
        }

        private static List<Crop.KindShare> kinds(Grown grown) {
            List<Crop.KindShare> own = grown.method.kinds();
            List<Crop.KindShare> kinds = new ArrayList<>(own == null ? grown.crop.kinds() : own);
            kinds.sort(Comparator.comparingInt(kind -> grown.world.kinds.node(kind.kind())));
            return kinds;
        }

        /** The stems of a standing planting that are written out. */
        static Stems written(World world, Crop crop, Standing standing) {
            Stems stems = new Stems(true, 0);
            int seasons = world.seasons.size();
            int[][] byNode = new int[world.kinds.size() * world.weeks][];
            for (Standing.WrittenStems entry : standing.stems()) {
                int week = world.season.weekOf(entry.week());
                if (week < world.season.firstWeek()) {
                    continue;
                }
                String kind = entry.kind();
                List<Crop.KindShare> kinds = kind == null ? crop.kinds() : List.of(new Crop.KindShare(kind, 1));
                for (Crop.KindShare share : kinds) {
                    int at = world.kinds.node(share.kind()) * world.weeks + week;
                    int[] block = byNode[at] == null ? new int[seasons] : byNode[at];
                    int amount = Math.toIntExact(Rounding.halfUp(100 * entry.stems() * share.share()));
                    for (int k = 0; k < seasons; k++) {
                        block[k] += amount;
                    }
                    byNode[at] = block;
                }
            }
            for (int i = 0; i < byNode.length; i++) {
                if (byNode[i] != null) {
                    stems.add(i / world.weeks, i % world.weeks, byNode[i]);
                }
            }
            return stems;
        }
    }

    /** Stems by week in one season, all kinds together, unrounded. */
    static double[] stemsByWeek(Grown grown, Ground.BedClass bed, int plants, int k) {
        World world = grown.world;
        PossibleSeason season = world.seasons.get(k);
        Development development = grown.developments.get(k);
        double[] byWeek = new double[world.weeks];
        if (development.firstCut == Development.NEVER) {
            return byWeek;
        }
        Losses losses = new Losses(grown, bed);
        double all = plants * losses.stand(season) * losses.springOrWinter(season, development);
        int pests = world.season.pests().size();
        for (int p = 0; p < pests && all > 0; p++) {
            all *= losses.pest(p, season, development);
        }
        all *= grown.method.stems() * season.stemsFactor()[grown.cropIndex] * grown.method.saleable();
        all *= grown.noted.factor();
        if (all == 0) {
            return byWeek;
        }
        double[] shares = new double[world.weeks];
        int last = -1;
        for (int w = Math.max(0, Math.floorDiv(development.firstCut, 7)); w < world.weeks; w++) {
            shares[w] = grown.shareIn(k, w);
            last = shares[w] == 0 ? last : w;
        }
        double[] storms = last < 0 ? shares : losses.storms(season, development, last);
        for (int w = 0; w <= last; w++) {
            double share = shares[w];
            if (share == 0) {
                continue;
            }
            double left = all * share * storms[w] * losses.autumn(season, development, w);
            for (int p = 0; p < pests; p++) {
                left *= losses.blooms(p, season, w);
            }
            byWeek[w] = left;
        }
        return byWeek;
    }
}
