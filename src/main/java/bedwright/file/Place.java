package bedwright.file;

/**
 * Where something stands in a file.
 *
 * @param line from 1
 * @param column from 1, in characters
 */
record Place(int line, int column) implements Comparable<Place> {
    /** The first character of a file. */
    static final Place START = new Place(1, 1);

    @Override
    public int compareTo(Place other) {
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }

    /** As in {@code line 3, column 7}. */
    String said() {
        return "line " + line + ", column " + column;
    }
}
