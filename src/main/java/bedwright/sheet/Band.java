package bedwright.sheet;

/**
 * One band of the season's picture: what happens week by week, over the time axis that all bands share. It draws itself
 * from a height downwards, so that bands can stand alone or under one another.
 */
interface Band {
    /** Letters and hyphens, unique among the bands. */
    String id();

    String heading();

    /** How to read it, in a sentence or two. */
    String caption();

    /** What can be seen, for those who don't see it. */
    String description();

    /** Height with the names of the months. */
    double height();

    /** Draws it into a picture of its own, whose patterns it may define. */
    void draw(Svg svg, TimeAxis axis);

    /** The same figures as a table. */
    Table table();
}
