package org.flexwright.core.calc;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.trial.PlanException;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Provenance;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/** Results of a calculation kept as readings of a piece: a density from two weighings, a compression set from three heights. */
public final class CalculatedReadings {

    private CalculatedReadings() {
    }

    /** True when the calculation has results that can be kept on a piece. */
    public static boolean offered(Calculation<?, ?> calculation) {
        return !calculation.readings().isEmpty();
    }

    /**
     * Keeps the results that are readings, one measurement each, as calculated, with what went in as a note, with their source and half their
     * band as uncertainty.
     *
     * @param conditions spot, support and the like, copied to each; may be null
     * @param session    the session, or null
     * @param instrument the gauge, or null
     * @param at         when the piece was measured
     * @throws PlanException when there is no result, or none of them is a reading
     */
    public static List<Measurement> keep(Edit edit, Specimen piece, Calculation<?, ?> calculation, CalculationResult result, PropertyCatalogue properties,
            PropertyKey conditions, Session session, Instrument instrument, Instant at) {
        if (!result.done()) {
            throw refused("refused", calculation.info().title(), result.refused().why());
        }
        List<Measurement> made = new ArrayList<>();
        for (Map.Entry<String, String> entry : calculation.readings().entrySet()) {
            ResultValue value = result.results().get(entry.getKey());
            if (value != null && value.likely() != null) {
                PropertyDef property = properties.find(entry.getValue()).orElseThrow(() -> refused("property", value.field().label(), entry.getValue()));
                made.add(keep(edit, piece, calculation, result, value, property, conditions, session, instrument, at));
            }
        }
        if (made.isEmpty()) {
            throw refused("none", calculation.info().title());
        }
        return made;
    }

    private static Measurement keep(Edit edit, Specimen piece, Calculation<?, ?> calculation, CalculationResult result, ResultValue value, PropertyDef property,
            PropertyKey conditions, Session session, Instrument instrument, Instant at) {
        PropertyKey key = conditions == null ? ModelFactory.eINSTANCE.createPropertyKey() : EcoreUtil.copy(conditions);
        key.setProperty(property.id());
        if (key.getPieceKind() == null || conditions == null) {
            key.setPieceKind(piece.getPieceKind());
        }
        Unit unit = value.unit().isEmpty() ? property.kind().unit() : Units.find(property.kind(), value.unit()).orElseThrow(() -> refused("unit", value.field().label(), value
                .unit(), property.title()));
        boolean plain = property.kind() == QuantityKind.NUMBER;
        Reading reading = ModelFactory.eINSTANCE.createReading();
        reading.setValue(plain ? value.likely() : unit.toCanonical(value.likely()));
        reading.setAt(at);
        Measurement measurement = Measurements.add(edit, piece, key, List.of(reading), session, instrument, at);
        edit.set(measurement, ModelPackage.Literals.ENTRY__NOTE, result.inputs().values().stream().filter(i -> !i.understood().isEmpty()).map(i -> i.field().label() + " " + i
                .understood()).collect(Collectors.joining("; ")));
        Provenance from = Provenances.keep(edit, reading, ModelPackage.Literals.READING__VALUE, Origin.CALCULATED, Message.of(CalculatedReadings.class, "keptReading.from",
                calculation.info().id(), value.source().display()).text(), null);
        if (value.hasBand()) {
            edit.set(from, ModelPackage.Literals.PROVENANCE__UNCERTAINTY, (value.high() - value.low()) / 2 * (plain ? 1 : unit.factor()));
        }
        return measurement;
    }

    private static PlanException refused(String key, Object... args) {
        return new PlanException(Message.of(CalculatedReadings.class, "keptReading." + key, args));
    }
}
