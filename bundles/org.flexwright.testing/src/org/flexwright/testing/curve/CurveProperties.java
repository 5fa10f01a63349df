package org.flexwright.testing.curve;

import static org.flexwright.core.property.PropertyDef.Condition.PIECE;
import static org.flexwright.core.property.PropertyDef.Condition.SPOT;
import static org.flexwright.core.property.PropertyDef.Condition.SUPPORT;

import java.util.List;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.core.property.PropertySet;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** What is taken from curves of force. */
@Component(service = PropertySet.class)
public final class CurveProperties implements PropertySet {
    /** Travel from contact to the peak. */
    public static final String PEAK_TRAVEL = "testing.peak-travel";
    /** Travel from contact to the least force after the peak. */
    public static final String LEAST_TRAVEL = "testing.least-travel";
    /** Stress at 100 % elongation. */
    public static final String STRESS_100 = "testing.stress-100";
    /** Stress at 300 % elongation. */
    public static final String STRESS_300 = "testing.stress-300";
    /** Highest stress up to the break. */
    public static final String STRENGTH = "testing.strength";
    /** Elongation at break. */
    public static final String BREAK_ELONGATION = "testing.break-elongation";
    /** Slope of stress over strain at the beginning. */
    public static final String TANGENT_MODULUS = "testing.tangent-modulus";
    /** Stress over strain at a small strain. */
    public static final String SECANT_MODULUS = "testing.secant-modulus";
    /** Share of energy lost in the first loop. */
    public static final String FIRST_LOOP_LOSS = "testing.first-loop-loss";
    /** Share of energy lost in a later loop. */
    public static final String LOOP_LOSS = "testing.loop-loss";
    /** Share of energy lost in a press and release of a part. */
    public static final String PRESS_LOSS = "testing.press-loss";
    /** Stress lost from the first loading to a later one. */
    public static final String SOFTENING = "testing.softening";

    /** Share of the force lost while held, from 1 s to 60 s. */
    public static final String RELAXATION_60 = "testing.relaxation-60s";

    private static final Set<Condition> PART = Set.of(SPOT, SUPPORT);
    private static final Set<Condition> STRIP = Set.of(PIECE);
    private static final Source TENSILE = Source.fromMemory("ISO 37, ASTM D412");

    @Override
    public List<PropertyDef> properties() {
        return List.of(number(PEAK_TRAVEL, "Travel at the peak", QuantityKind.LENGTH, PART, "From first contact to the highest force before the snap.", Source
                .commonPractice()), number(LEAST_TRAVEL, "Travel at the least force", QuantityKind.LENGTH, PART,
                        "From first contact to the lowest force after the peak.", Source.commonPractice()),
                number(STRESS_100, "Stress at 100 %", QuantityKind.STRESS, STRIP, "Force over undeformed section at twice the length; a stress, no modulus of elasticity.", TENSILE),
                number(STRESS_300, "Stress at 300 %", QuantityKind.STRESS, STRIP, "Force over undeformed section at four times the length; a stress, no modulus of elasticity.", TENSILE),
                number(STRENGTH, "Tensile strength", QuantityKind.STRESS, STRIP, "Highest force over undeformed section; a break in the grip does not count.", TENSILE),
                number(BREAK_ELONGATION, "Elongation at break", QuantityKind.FRACTION, STRIP, "Length gained over undeformed length; a break in the grip does not count.", TENSILE),
                number(TANGENT_MODULUS, "Modulus at the beginning", QuantityKind.STRESS, STRIP, "Slope of stress over strain between two marks, usually 0 to 10 %.", Source
                        .commonPractice()),
                number(SECANT_MODULUS, "Secant modulus", QuantityKind.STRESS, STRIP, "Stress over strain at one mark, usually at 20 %.", Source.commonPractice()),
                number(FIRST_LOOP_LOSS, "Loss of the first loop", QuantityKind.FRACTION, STRIP, "Work not given back of work put in, first loading of the piece.", Source
                        .derived("areas under loading and unloading")),
                number(LOOP_LOSS, "Loss of a later loop", QuantityKind.FRACTION, STRIP, "Work not given back of work put in, after the first loading of the piece.", Source
                        .derived("areas under loading and unloading")),
                number(PRESS_LOSS, "Loss of a press", QuantityKind.FRACTION, PART,
                        "Work not given back of work put in, one press in and out; say which press it is, the first one loses more.", Source
                                .derived("areas under pressing in and letting out")),
                number(SOFTENING, "Softening", QuantityKind.FRACTION, STRIP, "Stress lost from the first to the last loading, at half the strain the first one reached.", Source
                        .derived("two stresses of one piece")),
                number(RELAXATION_60, "Force relaxation, 1 s to 60 s", QuantityKind.FRACTION, STRIP,
                        "100 (F1 - F60) / F1: share of the force lost at constant deformation from 1 s to 60 s after loading; compares at the same deformation alone.", Source.commonPractice()));
    }

    private static PropertyDef number(String id, String title, QuantityKind kind, Set<Condition> comparedBy, String help, Source source) {
        return new PropertyDef(id, title, kind, false, comparedBy, help, source);
    }
}
