package org.flexwright.core.trial;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;

/** Readings put on a piece. */
public final class Measurements {
    private static final double SECONDS_PER_HOUR = 3600;

    private Measurements() {
    }

    /**
     * Adds a measurement with all its single readings.
     *
     * @param key        what was read and under which conditions; must not be contained anywhere yet
     * @param session    the session, or null
     * @param instrument the gauge, or null
     * @param at         when; not in the future
     */
    public static Measurement add(Edit edit, Specimen piece, PropertyKey key, List<Reading> readings, Session session, Instrument instrument,
            Instant at) {
        if (readings.isEmpty()) {
            throw PlanException.of("no.readings");
        }
        Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
        measurement.setKey(key);
        measurement.setKnowledge(Knowledge.MEASURED);
        measurement.setSession(session);
        measurement.setInstrument(instrument);
        measurement.setAt(Trials.notAhead(edit, "When", at));
        measurement.getReadings().addAll(readings);
        edit.add(piece, ModelPackage.Literals.SPECIMEN__MEASUREMENTS, measurement);
        return measurement;
    }

    /** True when a reading was not left out with a reason. */
    public static boolean counts(Reading reading) {
        return reading.getLeftOut() == null || reading.getLeftOut().isBlank();
    }

    /** The details of a measurement, made when there are none yet. */
    public static EObject details(Edit edit, Measurement measurement, EClass type) {
        if (measurement.getDetails() == null) {
            edit.set(measurement, ModelPackage.Literals.MEASUREMENT__DETAILS, EcoreUtil.create(type));
        }
        return measurement.getDetails();
    }

    /** Measurements of the same property in the same session on the pieces of the same owner, this one left out: what was read in one go. */
    public static List<Measurement> alike(Measurement measurement) {
        EObject owner = measurement.eContainer() == null ? null : measurement.eContainer().eContainer();
        if (owner == null || measurement.getKey() == null) {
            return List.of();
        }
        return owner.eContents().stream().filter(Specimen.class::isInstance).flatMap(piece -> ((Specimen) piece).getMeasurements().stream()).filter(other -> other != measurement
                && other.getKey() != null && Objects.equals(other.getKey().getProperty(), measurement.getKey().getProperty()) && other.getSession() == measurement.getSession()).toList();
    }

    /** Says of other measurements what the details of one say; what they said before is replaced. */
    public static void sayTheSame(Edit edit, Measurement from, List<Measurement> others) {
        for (Measurement other : others) {
            edit.set(other, ModelPackage.Literals.MEASUREMENT__DETAILS, from.getDetails() == null ? null : EcoreUtil.copy(from.getDetails()));
        }
    }

    /** Age of the piece when it was read, in hours: as noted, else from the moment it was made; null when neither is known. */
    public static Double ageHours(Measurement measurement) {
        if (measurement.getDelayHours() != null) {
            return measurement.getDelayHours();
        }
        Specimen piece = measurement.eContainer() instanceof Specimen s ? s : null;
        if (piece == null || piece.getMadeAt() == null || measurement.getAt() == null) {
            return null;
        }
        return Duration.between(piece.getMadeAt(), measurement.getAt()).toSeconds() / SECONDS_PER_HOUR;
    }
}
