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

    @Override
    public List<PropertyDef> properties() {
        return List.of(
                new PropertyDef(VISCOSITY, "Viscosity of the mixture", QuantityKind.VISCOSITY, false, Set.of(),
                        "Just after mixing, at room temperature; it grows from then on.", Source.sheet("Data sheet of the material")),
                new PropertyDef(WORKING_TIME, "Working time", QuantityKind.DURATION, false, Set.of(),
                        "Also called pot life. Say what ends it, the mass in the cup and the temperature: sheets differ.",
                        Source.published("EN 14022:2010, scope: five methods, end of working time freely chosen")));
    }
}
