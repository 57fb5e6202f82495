package bedwright.growth;

import bedwright.season.Crop;
import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Method;
import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Stock;
import java.util.ArrayList;
import java.util.List;

/** What a planting takes: room, cells, net, cover, work and material (season model, section 5). */
final class Needs {
    private static final double MM = 1000;

    private final Season season;
    private final Crop crop;
    private final Method method;
    private final Calendar calendar;
    private final int plants;
    private final boolean free;

    /**
     * @param free whether it costs no material: a standing planting
     */
    Needs(Season season, Crop crop, Method method, Calendar calendar, int plants, boolean free) {
        this.season = season;
        this.crop = crop;
        this.method = method;
        this.calendar = calendar;
        this.plants = plants;
        this.free = free;
    }

    /** Length of bed, mm. */
    int millimetres() {
        return millimetres(method, plants);
    }

    static int millimetres(Method method, int plants) {
        return Math.toIntExact(Rounding.halfUp(MM * plants * method.spacing() / method.rows()));
    }

    /** Tray cells sown; 0 where it is not raised in trays. */
    int cells() {
        return method.start() == Method.Start.TRAY ? Math.toIntExact(Rounding.up(plants / method.emergence())) : 0;
    }

    int layers() {
        Method.NetUse net = method.net();
        return net == null ? 0 : net.layers();
    }

    /** Index of the net in the season's stock, or −1. */
    int net() {
        Method.NetUse use = method.net();
        if (use != null) {
            for (int n = 0; n < season.stock().nets().size(); n++) {
                if (season.stock().nets().get(n).name().equals(use.net())) {
                    return n;
                }
            }
        }
        return -1;
    }

    /** All jobs that fall within the season, by what they are, then week. */
    List<Prospect.Task> tasks() {
        List<Prospect.Task> tasks = new ArrayList<>();
        double metres = method.metres(plants);
        double hundredPlants = plants / 100.0;
        int ground = calendar.groundWeek();
        add(tasks, Job.PREPARE, ground, metres);
        switch (method.start()) {
            case SOWN -> add(tasks, Job.SOW, calendar.sowWeek(), metres);
            case TRAY -> {
                add(tasks, Job.FILL_TRAYS, calendar.sowWeek(), cells() / 100.0);
                add(tasks, Job.PLANT_OUT, ground, hundredPlants);
            }
            case PLUGS, SET -> add(tasks, Job.PLANT_OUT, ground, hundredPlants);
        }
        if (calendar.netWeek() != Calendar.NONE) {
            add(tasks, Job.NET_UP, calendar.netWeek(), metres * layers());
            if (calendar.netDown() != Development.NEVER) {
                add(tasks, Job.NET_DOWN, calendar.netDown(), metres * layers());
            }
        }
        if (calendar.coverOff() != Calendar.NONE) {
            add(tasks, Job.COVER_ON, calendar.coverOn(), metres);
            add(tasks, Job.COVER_OFF, calendar.coverOff(), metres);
        }
        if (calendar.pinchWeek() != Development.NEVER) {
            add(tasks, Job.PINCH, calendar.pinchWeek(), hundredPlants);
        }
        for (int pass = 0; pass < method.weedings(); pass++) {
            int week = ground + pass;
            if (week < calendar.heldTo()) {
                add(tasks, Job.WEED, week, metres);
            }
        }
        if (calendar.lastHeld() != Development.NEVER) {
            add(tasks, Job.CLEAR, calendar.lastHeld(), metres);
        }
        return tasks;
    }

    private void add(List<Prospect.Task> tasks, Job job, int week, double units) {
        if (week >= 0 && week < season.weeks()) {
            Labour.JobRate rate = rate(job);
            tasks.add(new Prospect.Task(job, week, units, units * rate.minutes(), rate.setUp()));
        }
    }

    private Labour.JobRate rate(Job job) {
        Labour.JobRate own = method.jobs().get(job);
        if (own == null) {
            own = crop.jobs().get(job);
        }
        if (own == null) {
            own = season.labour().jobs().get(job);
        }
        return own == null ? job.usual() : own;
    }

    /** Seed, cells, plugs or tubers, and the wear of net and cover; in main units of the currency. */
    List<Prospect.Cost> costs() {
        List<Prospect.Cost> costs = new ArrayList<>();
        if (free) {
            return costs;
        }
        Double own = method.price();
        double price = own == null ? crop.price() : own;
        double metres = method.metres(plants);
        switch (method.start()) {
            case SOWN -> {
                double seeds = (double) plants * method.seedsAPlace();
                costs.add(new Prospect.Cost("seed", seeds, seeds * price));
            }
            case TRAY -> costs.add(new Prospect.Cost("cells", cells(), cells() * price));
            case PLUGS -> costs.add(new Prospect.Cost("plugs", plants, plants * price));
            case SET -> costs.add(new Prospect.Cost("tubers, corms or bulbs", plants, plants * price));
        }
        int net = net();
        if (net >= 0 && calendar.netWeek() != Calendar.NONE) {
            double wear = season.stock().nets().get(net).wear();
            costs.add(new Prospect.Cost("wear of net", metres * layers(), metres * layers() * wear));
        }
        Stock.Cover cover = season.stock().cover();
        if (cover != null && method.cover() != null) {
            costs.add(new Prospect.Cost("wear of row cover", metres, metres * cover.wear()));
        }
        return costs;
    }

    /** All of it in the smallest unit of the currency. */
    long material() {
        double sum = 0;
        for (Prospect.Cost cost : costs()) {
            sum += cost.money();
        }
        return Rounding.halfUp(sum * season.currency().smallest());
    }
}
