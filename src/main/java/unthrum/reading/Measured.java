package unthrum.reading;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The kind of quantity that a record component holds, with the range a value may lie in, both ends included and
 * written as a file would write them ('0.3 mm'); an empty end is open.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD})
public @interface Measured {
    Dimension value();

    String from() default "";

    String to() default "";
}
