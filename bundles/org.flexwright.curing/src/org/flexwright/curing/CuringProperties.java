package org.flexwright.curing;

import java.util.List;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertySet;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** What is known of a material's cure. */
@Component(service = PropertySet.class)
public final class CuringProperties implements PropertySet {

    /** Time until a part can leave its mould. */
    public static final String DEMOULD_TIME = "curing.demould-time";
    /** Linear shrinkage. */
    public static final String SHRINKAGE = "curing.shrinkage";

    @Override
    public List<PropertyDef> properties() {
        return List.of(
                new PropertyDef(DEMOULD_TIME, "Demould time", QuantityKind.DURATION, false, Set.of(),
                        "From mixing until a part can leave its mould, at the temperature the sheet names.", Source.sheet("Data sheet of the material")),
                new PropertyDef(SHRINKAGE, "Linear shrinkage", QuantityKind.FRACTION, false, Set.of(),
                        "Per cent of the mould's size, measured cold; not the volume shrinkage.", Source.derived("Mould less part, over mould")));
    }
}
