package org.flexwright.core.gauge;

import org.flexwright.core.Message;

/** What a gauge study says: a result, or one sentence why it says nothing yet. */
public sealed interface GaugeOutcome permits GaugeResult, GaugeOutcome.Refused {

    /**
     * No result.
     *
     * @param sentence what is missing or wrong, where, and what is allowed
     */
    record Refused(Message sentence) implements GaugeOutcome {
    }
}
