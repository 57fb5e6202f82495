package bedwright.sheet;

/**
 * A picture with what is said of it.
 *
 * @param id unique on the page
 * @param heading what it is
 * @param caption how to read it
 * @param svg the picture, as SVG that was escaped when it was written
 */
public record Figure(String id, String heading, String caption, String svg) {}
