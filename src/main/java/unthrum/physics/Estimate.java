package unthrum.physics;

import java.util.function.Function;

/**
 * A computed value, or the reason why the formula does not hold for what it was asked.
 *
 * @param <T> what is computed
 */
public sealed interface Estimate<T> {

    /** The formula holds: here is its value. */
    record Within<T>(T value) implements Estimate<T> {}

    /** The case lies outside the formula's range, for this reason. */
    record Outside<T>(String reason) implements Estimate<T> {}

    static <T> Estimate<T> within(T value) {
        return new Within<>(value);
    }

    static <T> Estimate<T> outside(String reason) {
        return new Outside<>(reason);
    }

    default boolean isWithin() {
        return this instanceof Within;
    }

    /** The value; asking an estimate outside its range for one is a mistake and throws. */
    default T value() {
        if (this instanceof Outside<T> outside) {
            throw new IllegalStateException("outside its range: " + outside.reason());
        }
        return ((Within<T>) this).value();
    }

    /** Why there is no value; empty where there is one. */
    default String reason() {
        return this instanceof Outside<T> outside ? outside.reason() : "";
    }

    default <R> Estimate<R> map(Function<T, R> function) {
        return isWithin() ? within(function.apply(value())) : outside(reason());
    }
}
