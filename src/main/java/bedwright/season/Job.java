package bedwright.season;

/** The jobs of a planting. The usual rates are assumed, within what growers report at workshops (from memory). */
public enum Job {
    /** Prepare the bed, by the metre of bed; first held week. */
    PREPARE("metre", 1, 10, 0.8),
    /** Sow in the bed, by the metre of bed; sow week. */
    SOW("metre", 1, 10, 0.6),
    /** Fill and sow trays, by 100 cells; sow week. */
    FILL_TRAYS("100 cells", 100, 10, 12),
    /** Plant out or set, by 100 plants; first held week. */
    PLANT_OUT("100 plants", 100, 10, 16),
    /** Put up net, by the metre and layer; week of planting out or of emergence. */
    NET_UP("metre", 1, 10, 1.0),
    /** Take down net, by the metre and layer; last grace week. */
    NET_DOWN("metre", 1, 5, 0.5),
    /** Lay row cover, by the metre; first held week. */
    COVER_ON("metre", 1, 5, 0.4),
    /** Take off row cover, by the metre. */
    COVER_OFF("metre", 1, 5, 0.3),
    /** Pinch, by 100 plants; week of the pinching stage. */
    PINCH("100 plants", 100, 5, 12),
    /** Weed, by the metre, each pass. */
    WEED("metre", 1, 5, 1.0),
    /** Clear the bed, by the metre; last held week. */
    CLEAR("metre", 1, 10, 0.7);

    private final String unit;
    private final int size;

    @SuppressWarnings("ImmutableEnumChecker") // a record of two numbers
    private final Labour.JobRate usual;

    Job(String unit, int size, int setUp, double minutes) {
        this.unit = unit;
        this.size = size;
        this.usual = new Labour.JobRate(setUp, minutes);
    }

    /** Whether the rate is counted by the metre, and not by cells or plants. */
    public boolean isByLength() {
        return size == 1;
    }

    /** What the rate is counted by: a metre, 100 cells or 100 plants. */
    public String unit() {
        return unit;
    }

    /** How many metres, cells or plants make one unit: 1 or 100. */
    public int size() {
        return size;
    }

    /** The rate where nobody says otherwise. */
    public Labour.JobRate usual() {
        return usual;
    }
}
