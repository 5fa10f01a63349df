package org.flexwright.core.cause;

import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * Something that may have made a part softer, with what the trial's own record says of it.
 *
 * @param id        stable id of the cause: {@code moisture}, {@code ratio}, {@code cure}
 * @param standing  how the record stands to it
 * @param title     a few words
 * @param evidence  one sentence: what the record says
 * @param stiffness modulus expected from this alone, as a share of the modulus without it, 1 is as stiff; null when no size can be given
 * @param check     one sentence: the cheapest way to find out
 * @param source    what it rests on
 * @param subject   id of the step or use it is about
 */
public record SofterCause(String id, Standing standing, Message title, Message evidence, Estimate stiffness, Message check, Source source, String subject) {

    /** Less than this, as a share, nobody feels or reads: half a point of hardness or so; common practice, no source. */
    private static final double FELT = 0.02;
    /** What a cause without a size counts as; own choice, it orders causes and is never shown. */
    private static final double UNSIZED = 0.05;
    /** What the record does not say counts half; own choice, it orders causes and is never shown. */
    private static final double SILENT = 0.5;

    public SofterCause {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(subject, "subject");
        if (stiffness != null && standing == Standing.RECORDED && 1 - stiffness.likely() < FELT) {
            standing = Standing.CLEARED;
        }
    }

    /** Higher comes first: the loss of stiffness it explains, half of it where the record is silent, nothing where it speaks against it. */
    public double weight() {
        double loss = stiffness == null ? UNSIZED : Math.max(0, 1 - stiffness.likely());
        return switch (standing) {
            case RECORDED -> loss;
            case OPEN -> SILENT * loss;
            case CLEARED -> -1 + loss;
        };
    }
}
