package org.flexwright.core.property;

import java.util.Objects;

import org.flexwright.core.Estimate;

/**
 * What is known of a property of a material, and how well.
 *
 * @param estimate  the value in the property's canonical unit with its source
 * @param rank      what kind of evidence it is
 * @param bandKnown false when the evidence came without an uncertainty: the band then says nothing
 */
public record Evidence(Estimate estimate, Rank rank, boolean bandKnown) {

    /** Kinds of evidence, the best first. */
    public enum Rank {
        /** The maker's own measurement of that lot or grade. */
        OWN,
        /** The supplier's sheet. */
        SHEET,
        /** A model fed with the material's own values. */
        MODEL,
        /** The usual range of the family. */
        FAMILY
    }

    public Evidence {
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(rank, "rank");
    }
}
