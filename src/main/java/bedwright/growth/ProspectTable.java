package bedwright.growth;

import bedwright.climate.PossibleSeason;
import bedwright.season.Season;
import java.util.List;

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
    private ProspectTable() {}

    /**
     * Makes the table, in parallel on the processors there are; the result does not depend on their number.
     *
     * @param seasons the possible seasons, in the order in which their stems will stand
     */
    public static ProspectTable of(Season season, List<PossibleSeason> seasons) {
        throw new UnsupportedOperationException();
    }

    /** Number of possible seasons, K. */
    public int seasons() {
        throw new UnsupportedOperationException();
    }

    /** Number of stocks. */
    public int stocks() {
        throw new UnsupportedOperationException();
    }

    /** First place of a stock; its places end before {@code firstPlace(stock + 1)}, which may be asked for too. */
    public int firstPlace(int stock) {
        throw new UnsupportedOperationException();
    }

    /** Number of all places. */
    public int places() {
        throw new UnsupportedOperationException();
    }

    /** The stock of a place. */
    public int stock(int place) {
        throw new UnsupportedOperationException();
    }

    public int bed(int place) {
        throw new UnsupportedOperationException();
    }

    /** Sow week; negative for what was sown before the season. */
    public int sowWeek(int place) {
        throw new UnsupportedOperationException();
    }

    /** Index of the method in its crop's list. */
    public int method(int place) {
        throw new UnsupportedOperationException();
    }

    /** The place of a stock at a bed, sow week and method, or −1 if it is not offered. */
    public int find(int stock, int bed, int sowWeek, int method) {
        throw new UnsupportedOperationException();
    }

    public int row(int place) {
        throw new UnsupportedOperationException();
    }

    public int rows() {
        throw new UnsupportedOperationException();
    }

    /** First week in the bed. */
    public int heldFrom(int row) {
        throw new UnsupportedOperationException();
    }

    public int heldTo(int row) {
        throw new UnsupportedOperationException();
    }

    /** Length of bed, mm. */
    public int millimetres(int row) {
        throw new UnsupportedOperationException();
    }

    /** First week on the bench; equal to {@link #benchTo} if none. */
    public int benchFrom(int row) {
        throw new UnsupportedOperationException();
    }

    public int benchTo(int row) {
        throw new UnsupportedOperationException();
    }

    /** First week in which its trays are in use (bench and hardening). */
    public int trayFrom(int row) {
        throw new UnsupportedOperationException();
    }

    public int trayTo(int row) {
        throw new UnsupportedOperationException();
    }

    /** Tray cells, 0 where it is not raised in trays. */
    public int cells(int row) {
        throw new UnsupportedOperationException();
    }

    /** Index of its net in the season's stock, or −1. */
    public int net(int row) {
        throw new UnsupportedOperationException();
    }

    public int netFrom(int row) {
        throw new UnsupportedOperationException();
    }

    public int netTo(int row) {
        throw new UnsupportedOperationException();
    }

    /** Net, mm × layers. */
    public int netMillimetres(int row) {
        throw new UnsupportedOperationException();
    }

    public int coverFrom(int row) {
        throw new UnsupportedOperationException();
    }

    /** Equal to {@link #coverFrom} if there is no cover. */
    public int coverTo(int row) {
        throw new UnsupportedOperationException();
    }

    /** First week with work. */
    public int workFrom(int row) {
        throw new UnsupportedOperationException();
    }

    /** Minutes of work by week from {@link #workFrom}, without set-up. */
    public int[] work(int row) {
        throw new UnsupportedOperationException();
    }

    /** Minutes of set-up by week from {@link #workFrom}, once a job; as long as {@link #work}. */
    public int[] setUp(int row) {
        throw new UnsupportedOperationException();
    }

    /** Cost of seed, plugs and wear, in the smallest unit of the currency. */
    public long material(int row) {
        throw new UnsupportedOperationException();
    }

    /** Number of blocks of stems: each a week and a kind, ordered by kind, then week. */
    public int blocks(int row) {
        throw new UnsupportedOperationException();
    }

    public int blockWeek(int row, int block) {
        throw new UnsupportedOperationException();
    }

    /** Kind of a block: a node of the season's {@link bedwright.season.KindTree}. */
    public int blockNode(int row, int block) {
        throw new UnsupportedOperationException();
    }

    /** Stems of all blocks, seasons innermost: block b in season k at b × K + k. */
    public int[] stems(int row) {
        throw new UnsupportedOperationException();
    }
}
