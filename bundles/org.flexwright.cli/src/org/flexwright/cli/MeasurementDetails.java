package org.flexwright.cli;

import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Measurement;
import org.flexwright.model.Origin;

/**
 * Fields of a measurement's details as typed.
 *
 * @param type   class of the details; null when nothing was typed
 * @param values by feature
 * @param inputs what was typed
 */
record MeasurementDetails(EClass type, Map<EStructuralFeature, Object> values, Inputs inputs) {

    /** Reads {@code name=value} pairs; throws UsageException on the first that is not accepted, or when the property has no details. */
    static MeasurementDetails read(CliServices services, PropertyDef property, List<String> pairs) {
        Inputs inputs = new Inputs();
        Settings.read(pairs, services.workingFolder()).forEach(inputs::put);
        if (inputs.isEmpty()) {
            return new MeasurementDetails(null, Map.of(), inputs);
        }
        EClass type = services.registries().measurementDetails(property.id()).orElseThrow(() -> new UsageException("Nothing more than the readings is kept of \"" + property
                .title() + "\": leave --set out."));
        return new MeasurementDetails(type, inputs.read(EcoreUtil.create(type), services.clock()), inputs);
    }

    void write(Edit edit, Measurement measurement) {
        if (type == null) {
            return;
        }
        EObject details = Measurements.details(edit, measurement, type);
        values.forEach((feature, value) -> {
            edit.set(details, feature, value);
            Provenances.keep(edit, details, feature, Origin.TYPED, null, inputs.typed(feature));
        });
    }
}
