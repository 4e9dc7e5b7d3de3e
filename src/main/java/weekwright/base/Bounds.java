package weekwright.base;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Least and most of a numeric column, both included, in the unit of its text (hours for {@link Hours}); for text the
 * most is its length in code points. Read by {@link Shape}, so that form, file and command line say the same words.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Bounds {
    double min() default Double.NEGATIVE_INFINITY;

    double max() default Double.POSITIVE_INFINITY;
}
