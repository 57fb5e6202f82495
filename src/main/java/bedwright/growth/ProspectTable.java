package bedwright.growth;

import bedwright.climate.PossibleSeason;
import bedwright.season.Job;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What every planting that can matter would give and take, in flat arrays.
 *
 * <p>A <b>stock</b> of plantings is what equal lots share: entry i of the season's pool is stock i, standing planting j
 * is stock {@code pool.size() + j}. Each stock has its <b>places</b>: bed, sow week and method, numbered in one run for
 * all stocks, ordered by stock, method, sow week, bed. Places in exactly equal beds share a <b>row</b> of figures. Only
 * places that the season offers are here: the bed is free and workable for all weeks held, the method sows in that
 * week, a family that may never come back before its rest years is not put there, and at least one possible season
 * gives a stem (for standing plantings that are given whole, always their one place).
 *
 * <p>Units: stems 1/100, lengths mm, work whole minutes, material in the smallest unit of the currency, weeks of the
 * season from 0; "to" weeks are not included; nothing lies outside the season's weeks. Arrays returned are not to be
 * written to.
 */
public final class ProspectTable {
    /** Instead of the last week of a planting that is pulled early: it is kept as long as its calendar says. */
    public static final int TO_ITS_END = -1;

    /** Methods are told apart by this many, so that a way can hold a method and a last week. */
    private static final int METHODS = 64;

    private final int seasons;
    private final int beds;
    private final int[] firstPlace;
    private final int[] stock;
    private final int[] bed;
    private final int[] sowWeek;
    private final int[] method;
    private final int[] until;
    private final int[] row;
    private final Row[] rows;
    /**
     * By stock, then (way × weeks from the earliest + week) × words + word: the beds that are offered, a bit each, and the
     * place of the first of them. As small as can be, since a search looks places up at random.
     */
    private final long[][] offered;

    private final int[][] firstOffered;
    /** How many words of bits the beds take. */
    private final int words;

    private final int[] earliest;
    private final int[] span;
    /** Places of plantings some of whose jobs are late: at the end of those of their stock, and in no index. */
    private final Map<Late, Integer> late = new HashMap<>();

    private final boolean[] isLate;
    /** Of each place the first of those that differ from it in their bed alone, and their end. */
    private final int[] firstAlike;

    private final int[] endAlike;

    ProspectTable(int seasons, int beds, List<List<Offer>> byStock) {
        this.seasons = seasons;
        this.beds = beds;
        int stocks = byStock.size();
        firstPlace = new int[stocks + 1];
        for (int s = 0; s < stocks; s++) {
            int count = 0;
            for (Offer offer : byStock.get(s)) {
                count += offer.beds().length;
            }
            firstPlace[s + 1] = firstPlace[s] + count;
        }
        int places = firstPlace[stocks];
        stock = new int[places];
        bed = new int[places];
        sowWeek = new int[places];
        method = new int[places];
        until = new int[places];
        row = new int[places];
        isLate = new boolean[places];
        firstAlike = new int[places];
        endAlike = new int[places];
        offered = new long[stocks][];
        firstOffered = new int[stocks][];
        words = (beds + Long.SIZE - 1) / Long.SIZE;
        earliest = new int[stocks];
        span = new int[stocks];
        List<Row> all = new ArrayList<>();
        for (int s = 0; s < stocks; s++) {
            int at = firstPlace[s];
            for (Offer offer : byStock.get(s)) {
                Arrays.fill(firstAlike, at, at + offer.beds().length, at);
                Arrays.fill(endAlike, at, at + offer.beds().length, at + offer.beds().length);
                int first = all.size();
                all.addAll(offer.rows());
                for (int i = 0; i < offer.beds().length; i++) {
                    stock[at] = s;
                    bed[at] = offer.beds()[i];
                    sowWeek[at] = offer.sowWeek();
                    method[at] = offer.method();
                    until[at] = offer.until();
                    row[at] = first + offer.rowOfBed()[i];
                    if (!offer.late().isEmpty()) {
                        isLate[at] = true;
                        late.put(new Late(spot(at), offer.late()), at);
                    }
                    at++;
                }
            }
            makeIndex(s);
        }
        rows = all.toArray(Row[]::new);
    }

    /**
     * Places of one stock with one method and sow week: beds in order, and which of the rows each has.
     *
     * @param late jobs that are late; offers without any come first
     */
    record Offer(int method, int sowWeek, int until, int[] beds, int[] rowOfBed, List<Row> rows, Set<Job> late) {
        Offer(int method, int sowWeek, int until, int[] beds, int[] rowOfBed, List<Row> rows) {
            this(method, sowWeek, until, beds, rowOfBed, rows, Set.of());
        }
    }

    private void makeIndex(int s) {
        int low = Integer.MAX_VALUE;
        int high = Integer.MIN_VALUE;
        int ways = 0;
        for (int p = firstPlace[s]; p < firstPlace[s + 1]; p++) {
            low = Math.min(low, sowWeek[p]);
            high = Math.max(high, sowWeek[p]);
            ways = Math.max(ways, way(p) + 1);
        }
        earliest[s] = low;
        span[s] = ways == 0 ? 0 : high - low + 1;
        offered[s] = new long[ways * span[s] * words];
        firstOffered[s] = new int[offered[s].length];
        for (int p = firstPlace[s]; p < firstPlace[s + 1] && !isLate[p]; p++) {
            int at = (way(p) * span[s] + sowWeek[p] - low) * words + bed[p] / Long.SIZE;
            if (offered[s][at] == 0) {
                firstOffered[s][at] = p;
            }
            offered[s][at] |= 1L << bed[p];
        }
    }

    /**
     * Makes the table, in parallel on the processors there are; the result does not depend on their number.
     *
     * @param seasons the possible seasons, in the order in which their stems will stand
     */
    public static ProspectTable of(Season season, List<PossibleSeason> seasons) {
        return new Offers(season, seasons).table();
    }

    /**
     * Makes a table of a few spots only: for a plan that is given, judged over many seasons. A spot is offered even if no
     * season gives a stem there; standing plantings that are given whole always have their place.
     *
     * @param spots of which those that the season does not offer are left out
     */
    public static ProspectTable at(Season season, List<PossibleSeason> seasons, Collection<Spot> spots) {
        return at(season, seasons, spots, List.of());
    }

    /**
     * The same with what some plantings would be if jobs on them were left for a week.
     *
     * @param late plantings that are not written out
     */
    public static ProspectTable at(
            Season season, List<PossibleSeason> seasons, Collection<Spot> spots, Collection<Late> late) {
        return new Offers(season, seasons, Set.copyOf(spots)).table(List.copyOf(new LinkedHashSet<>(late)));
    }

    /** The place of a planting some of whose jobs are late, or −1 if it was not asked for. */
    public int find(Late some) {
        return late.getOrDefault(some, -1);
    }

    /** Whether a place is one of a planting some of whose jobs are late. */
    public boolean isLate(int place) {
        return isLate[place];
    }

    /** Where and how a place is. */
    public Spot spot(int place) {
        return new Spot(stock[place], bed[place], sowWeek[place], way(place));
    }

    /** Number of possible seasons, K. */
    public int seasons() {
        return seasons;
    }

    /** Number of stocks. */
    public int stocks() {
        return offered.length;
    }

    /** First place of a stock; its places end before {@code firstPlace(stock + 1)}, which may be asked for too. */
    public int firstPlace(int stock) {
        return firstPlace[stock];
    }

    /** Number of all places. */
    public int places() {
        return stock.length;
    }

    /** The stock of a place. */
    public int stock(int place) {
        return stock[place];
    }

    /** Number of the bed in the season. */
    public int bed(int place) {
        return bed[place];
    }

    /** Sow week; negative for what was sown before the season. */
    public int sowWeek(int place) {
        return sowWeek[place];
    }

    /** Index of the method in its crop's list. */
    public int method(int place) {
        return method[place];
    }

    /** The last week held of a planting that is pulled early, or {@link #TO_ITS_END}. */
    public int until(int place) {
        return until[place];
    }

    /** Method and last week in one number; where it is kept to its end that is the method's. */
    public int way(int place) {
        return way(method[place], until[place]);
    }

    /** The method of a way. */
    public static int methodOf(int way) {
        return way % METHODS;
    }

    /** The last week of a way, or {@link #TO_ITS_END}. */
    public static int untilOf(int way) {
        return way / METHODS - 1;
    }

    /** The same for a method and a last week, or {@link #TO_ITS_END}. */
    public static int way(int method, int until) {
        return method + METHODS * (until + 1);
    }

    /**
     * The place of a stock at a bed, sow week and way (a method, kept to its end, or as {@link #way(int, int)} says), or −1
     * if it is not offered.
     */
    public int find(int stock, int bed, int sowWeek, int method) {
        int week = sowWeek - earliest[stock];
        if (week < 0 || week >= span[stock] || bed < 0 || bed >= beds || method < 0) {
            return -1;
        }
        int at = (method * span[stock] + week) * words + bed / Long.SIZE;
        if (at >= offered[stock].length) {
            return -1;
        }
        long some = offered[stock][at] >>> bed;
        // Places of one way and week are numbered in the order of their beds.
        return (some & 1) == 0 ? -1 : firstOffered[stock][at] + Long.bitCount(offered[stock][at]) - Long.bitCount(some);
    }

    /**
     * The first of the places that differ from one in their bed alone, itself among them; they are numbered in one run, in the
     * order of their beds, up to {@link #endAlike}.
     */
    public int firstAlike(int place) {
        return firstAlike[place];
    }

    /** The end of that run, not included. */
    public int endAlike(int place) {
        return endAlike[place];
    }

    /** The row of figures of a place. */
    public int row(int place) {
        return row[place];
    }

    /** Number of rows. */
    public int rows() {
        return rows.length;
    }

    /** First week in the bed. */
    public int heldFrom(int row) {
        return rows[row].heldFrom;
    }

    /** End of the hold. */
    public int heldTo(int row) {
        return rows[row].heldTo;
    }

    /** First week that it held its bed, be that over already; {@link #heldFrom} begins with the week it is. */
    public int stoodFrom(int row) {
        return rows[row].stoodFrom;
    }

    /** End of that. */
    public int stoodTo(int row) {
        return rows[row].stoodTo;
    }

    /** Length of bed, mm. */
    public int millimetres(int row) {
        return rows[row].millimetres;
    }

    /** First week on the bench; equal to {@link #benchTo} if none. */
    public int benchFrom(int row) {
        return rows[row].benchFrom;
    }

    /** End of the weeks on the bench. */
    public int benchTo(int row) {
        return rows[row].benchTo;
    }

    /** First week in which its trays are in use (bench and hardening). */
    public int trayFrom(int row) {
        return rows[row].trayFrom;
    }

    /** End of the weeks in trays. */
    public int trayTo(int row) {
        return rows[row].trayTo;
    }

    /** Tray cells, 0 where it is not raised in trays. */
    public int cells(int row) {
        return rows[row].cells;
    }

    /** Index of its net in the season's stock, or −1. */
    public int net(int row) {
        return rows[row].net;
    }

    /** First week with net. */
    public int netFrom(int row) {
        return rows[row].netFrom;
    }

    /** End of the weeks with net. */
    public int netTo(int row) {
        return rows[row].netTo;
    }

    /** Net, mm × layers. */
    public int netMillimetres(int row) {
        return rows[row].netMillimetres;
    }

    /** First week under cover. */
    public int coverFrom(int row) {
        return rows[row].coverFrom;
    }

    /** Equal to {@link #coverFrom} if there is no cover. */
    public int coverTo(int row) {
        return rows[row].coverTo;
    }

    /** First week with work. */
    public int workFrom(int row) {
        return rows[row].workFrom;
    }

    /** Minutes of work by week from {@link #workFrom}, without set-up. */
    public int[] work(int row) {
        return rows[row].work;
    }

    /** Minutes of set-up by week from {@link #workFrom}, once a job; as long as {@link #work}. */
    public int[] setUp(int row) {
        return rows[row].setUp;
    }

    /** Cost of seed, plugs and wear, in the smallest unit of the currency. */
    public long material(int row) {
        return rows[row].material;
    }

    /** Number of blocks of stems: each a week and a kind, ordered by kind, then week. */
    public int blocks(int row) {
        return rows[row].blockWeeks.length;
    }

    /** Week of a block. */
    public int blockWeek(int row, int block) {
        return rows[row].blockWeeks[block];
    }

    /** Kind of a block: a node of the season's {@link bedwright.season.KindTree}. */
    public int blockNode(int row, int block) {
        return rows[row].blockNodes[block];
    }

    /** Stems of all blocks, seasons innermost: block b in season k at b × K + k. */
    public int[] stems(int row) {
        return rows[row].stems;
    }
}
