package org.flexwright.core.property;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.TargetSheet;

/**
 * A way to estimate a property of a material when nothing better is known. Register it as an OSGi service. The property service asks
 * own values and sheet values first, then estimators in order of {@link #rank()}.
 */
public interface PropertyEstimator {
    /** How good the evidence is. */
    enum Rank {
        /** A model fed with the material's own values. */
        MODEL,
        /** The usual range of its family. */
        FAMILY_RANGE
    }

    /** How good this evidence is. */
    Rank rank();

    /** The estimate in the property's canonical unit, or empty when this estimator has nothing to say. */
    Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade);

    /** The families this estimator knows, each held against a target sheet; a sheet without targets names them alone. */
    default List<FamilyReach> families(TargetSheet sheet, PropertyCatalogue properties) {
        return List.of();
    }
}
