package bedwright.file;

/**
 * Something in a season that is no fault but probably not meant.
 *
 * @param path JSON pointer to what it is about
 * @param message what will come of it and what could be changed, in a grower's words
 */
public record Remark(String path, String message) {}
