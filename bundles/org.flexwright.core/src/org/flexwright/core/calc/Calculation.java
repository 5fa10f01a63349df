package org.flexwright.core.calc;

import java.util.Map;

import org.flexwright.model.Specimen;

/**
 * A pure function from a record of inputs to a record of results. Register it as an OSGi service; form, command line, manual page,
 * bounds checks and check page come for free. Bounds of single inputs are checked before {@link #run}; the calculation itself refuses
 * combinations that make no sense.
 *
 * @param <I> record of inputs, each component described by {@link Field}
 * @param <R> record of results, each component described by {@link Field}
 */
public interface Calculation<I extends Record, R extends Record> {
    /** Id, title, source and validity. */
    CalculationInfo info();

    /** Type of the inputs. */
    Class<I> inputType();

    /** Type of the results. */
    Class<R> resultType();

    /** Computes; never throws for bad numbers, never returns NaN: it refuses instead. */
    Outcome<R> run(I inputs);

    /**
     * Which results are readings of a piece: name of the result and id of the property. They can be kept on a piece with their band, in the
     * window and on the command line.
     */
    default Map<String, String> readings() {
        return Map.of();
    }

    /** What is known of a piece already, by name of the input and as one would type it; nothing when the piece has nothing to say. */
    default Map<String, String> inputsFrom(Specimen piece) {
        return Map.of();
    }
}
