package bedwright.start;

import java.io.Serial;

/** An answer that is not understood: says what stands there, what was expected, and how to write it. */
public final class BadAnswer extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    BadAnswer(String message) {
        super(message);
    }
}
