package bedwright.command;

import java.io.Serial;

/** Something that can't be done, told in one message, with its exit code. */
final class Refusal extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    private final int code;

    Refusal(int code, String message) {
        super(message);
        this.code = code;
    }

    int code() {
        return code;
    }
}
