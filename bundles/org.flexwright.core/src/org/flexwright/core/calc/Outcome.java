package org.flexwright.core.calc;

import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.find.Remark;

/**
 * What a calculation gives back: results, or a refusal.
 *
 * @param <R> record of results
 */
public sealed interface Outcome<R extends Record> {

    /**
     * Results.
     *
     * @param results the record of results
     * @param remarks what to know about them: notes, cautions, stops
     */
    record Done<R extends Record>(R results, List<Remark> remarks) implements Outcome<R> {
        public Done {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * No result, and why.
     *
     * @param input  name of the input that stands in the way
     * @param why    one sentence: what and where
     * @param remedy one sentence: what would help
     */
    record Refused<R extends Record>(String input, Message why, Message remedy) implements Outcome<R> {
    }

    /** Results without remarks. */
    static <R extends Record> Outcome<R> done(R results) {
        return new Done<>(results, List.of());
    }

    /** Results with remarks. */
    static <R extends Record> Outcome<R> done(R results, List<Remark> remarks) {
        return new Done<>(results, remarks);
    }

    /** A refusal. */
    static <R extends Record> Outcome<R> refused(String input, Message why, Message remedy) {
        return new Refused<>(input, why, remedy);
    }
}
