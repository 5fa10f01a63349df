package org.flexwright.materials;

import java.util.List;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.core.property.PropertySet;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** What sheets say of a material. */
@Component(service = PropertySet.class)
public final class MaterialProperties implements PropertySet {

    /** Density of the cured material or of a component. */
    public static final String DENSITY = "materials.density";
    /** Young's modulus at small strain. */
    public static final String MODULUS = "materials.modulus";
    /** Tensile strength. */
    public static final String TENSILE_STRENGTH = "materials.tensile-strength";
    /** Elongation at break. */
    public static final String ELONGATION = "materials.elongation";
    /** Tear strength. */
    public static final String TEAR = "materials.tear";
    /** How dear it is, 1 low to 4 high. */
    public static final String PRICE_CLASS = "materials.price-class";

    private static final Source ISO_37 = Source.published("ISO 37, ASTM D412: stress at the largest force over the first cross-section (parts seen)");

    @Override
    public List<PropertyDef> properties() {
        Set<Condition> piece = Set.of(Condition.PIECE);
        return List.of(
                new PropertyDef(DENSITY, "Density", QuantityKind.DENSITY, false, Set.of(), "Weighed in air and water, or a filled syringe on the balance.",
                        Source.derived("Mass over volume")),
                new PropertyDef(MODULUS, "Modulus", QuantityKind.STRESS, false, piece, "Young's modulus at small strain; not the stress at 100 % some sheets call modulus.",
                        Source.derived("Stress over strain, first few per cent")),
                new PropertyDef(TENSILE_STRENGTH, "Tensile strength", QuantityKind.STRESS, false, piece, "Largest force over the first cross-section of a dumb-bell.", ISO_37),
                new PropertyDef(ELONGATION, "Elongation at break", QuantityKind.FRACTION, false, piece, "Per cent of the first length; test pieces of different type are not comparable.",
                        ISO_37),
                new PropertyDef(TEAR, "Tear strength", QuantityKind.TEAR_STRENGTH, false, piece, "Force over thickness; trouser, angle and crescent pieces are not comparable.",
                        Source.published("ISO 34-1, ASTM D624 (parts seen)")),
                new PropertyDef(PRICE_CLASS, "Price class", QuantityKind.NUMBER, false, Set.of(), "1 low to 4 high, by the mass of a part.", Source.commonPractice()));
    }
}
