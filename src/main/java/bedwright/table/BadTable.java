package bedwright.table;

import java.io.Serial;

/** A file that is no table, or a broken one. */
public final class BadTable extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    BadTable(String message, Throwable cause) {
        super(message, cause);
    }
}
