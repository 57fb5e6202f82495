package bedwright.station;

import java.io.Serial;

/** A record that is too short or has too many gaps for what is asked of it. */
public final class TooLittleWeather extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    TooLittleWeather(String message) {
        super(message);
    }
}
