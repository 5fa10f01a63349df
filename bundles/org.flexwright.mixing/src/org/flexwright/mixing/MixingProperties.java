package org.flexwright.mixing;

import java.util.List;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertySet;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** What is known of a mixture before it cures. */
@Component(service = PropertySet.class)
public final class MixingProperties implements PropertySet {

    /** Viscosity of the mixture. */
    public static final String VISCOSITY = "mixing.viscosity";
    /** Working time, also called pot life. */
    public static final String WORKING_TIME = "mixing.working-time";
    /** NCO groups of an isocyanate or prepolymer, per cent by weight. */
    public static final String NCO_CONTENT = "mixing.nco-content";
    /** Hydroxyl, amine or acid groups of a polyol, mg KOH/g. */
    public static final String HYDROXYL_VALUE = "mixing.hydroxyl-value";
    /** Water in a component, powder or paste, per cent by weight. */
    public static final String WATER_CONTENT = "mixing.water-content";
    /** Oil absorption of a carbon black, cm3 to 100 g. */
    public static final String OIL_ABSORPTION = "mixing.oil-absorption";

    private static final Source EQUIVALENTS = Source.published("Polyurethane Manufacturers Association, technical library, section 5: equivalent weights");

    @Override
    public List<PropertyDef> properties() {
        return List.of(
                new PropertyDef(VISCOSITY, "Viscosity of the mixture", QuantityKind.VISCOSITY, false, Set.of(),
                        "Just after mixing, at room temperature; it grows from then on.", Source.sheet("Data sheet of the material")),
                new PropertyDef(WORKING_TIME, "Working time", QuantityKind.DURATION, false, Set.of(),
                        "Also called pot life. Say what ends it, the mass in the cup and the temperature: sheets differ.",
                        Source.published("EN 14022:2010, scope: five methods, end of working time freely chosen")),
                new PropertyDef(NCO_CONTENT, "NCO content", QuantityKind.FRACTION, false, Set.of(),
                        "Of the isocyanate or prepolymer, by weight, from its sheet or the certificate of the lot.", EQUIVALENTS),
                new PropertyDef(HYDROXYL_VALUE, "Hydroxyl value", QuantityKind.NUMBER, false, Set.of(),
                        "Of the polyol side, mg KOH to a gram; an amine or acid number counts the same way and is added.", EQUIVALENTS),
                new PropertyDef(WATER_CONTENT, "Water content", QuantityKind.FRACTION, false, Set.of(),
                        "By weight: weigh it before and after drying. A mole of it uses up two NCO groups.",
                        Source.derived("Loss of mass on drying")),
                new PropertyDef(OIL_ABSORPTION, "Oil absorption", QuantityKind.NUMBER, false, Set.of(),
                        "Of a carbon black, DBP or OAN in cm3 to 100 g: how much rubber its structure catches.", Source.fromMemory("Medalia 1972")));
    }
}
