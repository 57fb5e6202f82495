package bedwright.sheet;

/** The band of stems alone, as an SVG file. */
public final class StemsPicture {
    private StemsPicture() {}

    /** The whole text of the file. */
    public static String svg(SheetFacts facts) {
        Band stems = new StemsBand(facts.season(), RoleWeeks.of(facts.season(), facts.outcome()));
        return Bands.picture(stems, new TimeAxis(facts.season()), Svg.Form.FILE) + "\n";
    }
}
