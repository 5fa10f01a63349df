package org.flexwright.materials;

import java.util.Map;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.rubber.ModulusBand;

/** What a family reaches in a property: its usual range, or one that follows from its hardness. */
final class Reach {

    static final String SHORE_A = "testing.shore-a";
    private static final String APPARENT = "testing.apparent-hardness";

    /** Points by which a thin or curved piece reads otherwise than the material. */
    private static final double CURVED = 5;

    private static final Map<String, Source> FOLLOWS = Map.of(APPARENT,
            Source.commonPractice("Hardness of the family, \u00b1 5 points for a thin or curved piece"));

    private Reach() {
    }

    static Optional<Family.Range> of(Family family, String property) {
        Optional<Family.Range> own = family.range(property);
        if (own.isPresent()) {
            return own;
        }
        Optional<Family.Range> hardness = family.range(SHORE_A);
        return switch (property) {
            case APPARENT -> hardness.map(h -> new Family.Range(Math.max(0, h.low() - CURVED), Math.min(100, h.high() + CURVED), FOLLOWS.get(APPARENT)));
            case MaterialProperties.MODULUS -> hardness.flatMap(Reach::modulus);
            default -> Optional.empty();
        };
    }

    /** Only where the models may be used. */
    private static Optional<Family.Range> modulus(Family.Range hardness) {
        double low = Math.max(ModulusBand.LOWEST, hardness.low());
        double high = Math.min(ModulusBand.HIGHEST, hardness.high());
        if (low != hardness.low() || high != hardness.high()) {
            return Optional.empty();
        }
        Estimate band = ModulusBand.between(low, high);
        return Optional.of(new Family.Range(band.low(), band.high(), band.source()));
    }
}
