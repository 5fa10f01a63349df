package org.flexwright.core.verdict;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

import org.flexwright.core.Message;
import org.flexwright.numerics.Interval;

/**
 * A verdict with all it rests on. Numbers are in the property's canonical unit; for yes/no properties they are the share of yes in per
 * cent.
 *
 * @param verdict    the word
 * @param interval   95 % interval of the mean or share; null when there is none
 * @param n          number of parts that count
 * @param mean       mean of the parts, or the share seen; null when there is none
 * @param difference mean less the middle of the target, or less its one limit; null when there is none
 * @param moreParts  how many more parts would settle it at this spread; empty when it is settled or more parts alone would not
 * @param reason     one sentence
 * @param notes      what else to know: parts that failed, reject limits, what the spread rests on, gauge bias
 * @param rejected   ids of parts beyond a reject limit
 * @param failed     how many parts failed
 */
public record Judgement(Verdict verdict, Interval interval, int n, Double mean, Double difference, OptionalInt moreParts, Message reason,
        List<Message> notes, List<String> rejected, int failed) {
    public Judgement {
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(moreParts, "moreParts");
        Objects.requireNonNull(reason, "reason");
        notes = List.copyOf(notes);
        rejected = List.copyOf(rejected);
    }
}
