package bedwright.file;

import bedwright.season.Crop;
import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Stock;
import org.jspecify.annotations.Nullable;

/**
 * What one planting may take at the most, by the dearest of its methods in each: for sums that bound a plan's, not for
 * planning.
 *
 * @param metres of bed
 * @param netMetres of net, all layers
 * @param cells of trays
 * @param hours of work, cutting left out
 * @param stems a season, as long as nothing is lost
 * @param money for seed, plants, wear and what has to be bought, main units
 */
record LotSize(double metres, double netMetres, double cells, double hours, double stems, double money) {
    private static final LotSize NOTHING = new LotSize(0, 0, 0, 0, 0, 0);

    static LotSize of(Season season, Crop crop, int plants) {
        LotSize most = NOTHING;
        for (Method method : crop.methods()) {
            most = most.or(of(season, crop, method, plants));
        }
        return most;
    }

    private LotSize or(LotSize other) {
        return new LotSize(
                Math.max(metres, other.metres),
                Math.max(netMetres, other.netMetres),
                Math.max(cells, other.cells),
                Math.max(hours, other.hours),
                Math.max(stems, other.stems),
                Math.max(money, other.money));
    }

    private static LotSize of(Season season, Crop crop, Method method, int plants) {
        Stock stock = season.stock();
        double metres = method.metres(plants);
        double cells = method.start() == Method.Start.TRAY ? plants / method.emergence() : 0;
        Double own = method.price();
        double money = (own == null ? crop.price() : own) * Math.max(plants, cells);
        Method.NetUse use = method.net();
        double layered = use == null ? 0 : use.layers() * metres;
        for (Stock.Net net : stock.nets()) {
            money += use != null && net.name().equals(use.net()) ? layered * (net.wear() + or0(net.buy())) : 0;
        }
        if (method.cover() != null && stock.cover() != null) {
            money += metres * (stock.cover().wear() + or0(stock.cover().buy()));
        }
        if (stock.trays() != null) {
            money += cells * or0(stock.trays().buy());
        }
        double minutes = 0;
        for (Job job : Job.values()) {
            Labour.JobRate rate = rate(season, crop, method, job);
            double units = times(method, job) * (job.isByLength() ? metres : Math.max(plants, cells)) / job.size();
            minutes += times(method, job) * rate.setUp() + units * rate.minutes();
        }
        return new LotSize(metres, layered, cells, minutes / 60, plants * method.stems() * method.saleable(), money);
    }

    /** How often a job is done, or in how many layers. */
    private static int times(Method method, Job job) {
        return switch (job) {
            case WEED -> method.weedings();
            case NET_UP, NET_DOWN -> method.net() == null ? 0 : method.net().layers();
            case COVER_ON, COVER_OFF -> method.cover() == null ? 0 : 1;
            case PINCH -> method.pinched() ? 1 : 0;
            case FILL_TRAYS -> method.start() == Method.Start.TRAY ? 1 : 0;
            default -> 1;
        };
    }

    private static Labour.JobRate rate(Season season, Crop crop, Method method, Job job) {
        return method.jobs()
                .getOrDefault(
                        job,
                        crop.jobs().getOrDefault(job, season.labour().jobs().getOrDefault(job, job.usual())));
    }

    private static double or0(@Nullable Double price) {
        return price == null ? 0 : price;
    }
}
