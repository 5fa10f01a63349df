package org.flexwright.materials;

import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyEstimator;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.osgi.service.component.annotations.Component;

/** Modulus of a grade from its own or sheet hardness in Shore A, as a band over the published formulas. */
@Component(service = PropertyEstimator.class)
public final class ModulusEstimator implements PropertyEstimator {

    @Override
    public Rank rank() {
        return Rank.MODEL;
    }

    @Override
    public Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade) {
        if (!MaterialProperties.MODULUS.equals(property.id())) {
            return Optional.empty();
        }
        return grade.getValues().stream().filter(v -> Reach.SHORE_A.equals(v.getProperty())).map(ModulusEstimator::hardness).flatMap(Optional::stream)
                .filter(h -> h >= ModulusBand.LOWEST && h <= ModulusBand.HIGHEST).findFirst().map(ModulusBand::of);
    }

    private static Optional<Double> hardness(MaterialValue value) {
        return Optional.ofNullable(value.getOwnValue() != null ? value.getOwnValue() : value.getSheetValue());
    }
}
