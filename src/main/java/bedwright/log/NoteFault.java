package bedwright.log;

/**
 * What is wrong with a note.
 *
 * @param line line, from 1
 * @param column column, from 1
 * @param message what stands there, what was expected and what to write instead
 */
public record NoteFault(int line, int column, String message) {
    @Override
    public String toString() {
        return line + ":" + column + ": " + message;
    }
}
