package bedwright.season;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a component of a season record means to the grower who writes it. The reader of season files and the JSON Schema
 * are made from these. A component that is neither nullable nor has a default must be given.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Fact {
    /** One sentence in a grower's words. */
    String value();

    /**
     * Unit of the number or of the list's numbers inside: {@code m}, {@code °C}, {@code °C difference}, {@code m/s},
     * {@code money}, {@code min}, … {@link Units} says how it is written.
     */
    String unit() default "";

    /** Whether those who measure in feet write this length in inches. */
    boolean small() default false;

    /** Whether it is for each metre, and in a file in feet for each foot. */
    boolean each() default false;

    /** The key in a file in feet, where the key names the unit; empty where it is the component's name there too. */
    String inFeet() default "";

    /** Least value allowed, for numbers (each of a list's). */
    double min() default Double.NEGATIVE_INFINITY;

    /** Greatest value allowed, for numbers (each of a list's). */
    double max() default Double.POSITIVE_INFINITY;

    /** Whether {@link #min()} itself is refused. */
    boolean above() default false;

    /** Least number of entries of a list or a map, or of characters of a text. */
    int least() default 0;

    /** Greatest number of entries of a list or a map. */
    int most() default Integer.MAX_VALUE;

    /** The value, written as JSON, that stands where the key is left out; empty where there is none. */
    String byDefault() default "";
}
