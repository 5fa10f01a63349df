package org.flexwright.core.calc;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

import org.flexwright.quantity.QuantityKind;

/**
 * Describes one component of a calculation's input or result record. Allowed component types: {@code double}, {@code Double} (may be
 * empty), {@code int}, {@code boolean}, {@code String}, an enum, {@code List<Double>}, {@code List<SomeRecord>} (a table whose columns
 * are that record's own described components); in results also {@link org.flexwright.core.Estimate}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Field {
    /** Words beside the field; empty: made from the component's name. */
    String label() default "";

    /** Kind of quantity; ignored for texts, flags and enums. */
    QuantityKind kind() default QuantityKind.NUMBER;

    /** Unit symbol the component's number is in; empty: the kind's own unit. */
    String unit() default "";

    /** Smallest allowed value, in {@link #unit()}. */
    double min() default Double.NEGATIVE_INFINITY;

    /** Largest allowed value, in {@link #unit()}. */
    double max() default Double.POSITIVE_INFINITY;

    /** True when {@link #min()} itself is not allowed. */
    boolean minOpen() default false;

    /** Starting value as a person would type it; empty: must be entered unless {@link #optional()}. */
    String def() default "";

    /** True when it may be left empty; the component must then be able to hold {@code null}. */
    boolean optional() default false;

    /** One line of help. */
    String help();
}
