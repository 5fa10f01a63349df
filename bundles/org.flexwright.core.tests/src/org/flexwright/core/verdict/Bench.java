package org.flexwright.core.verdict;

import java.util.EnumSet;
import java.util.Set;

import org.flexwright.core.Source;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.model.Censoring;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;

/** Makes properties, targets and parts for tests. */
public final class Bench {
    public static final PropertyDef HARDNESS = new PropertyDef("t.hardness", "Hardness", QuantityKind.SHORE_A, false, EnumSet.allOf(Condition.class), "",
            Source.commonPractice());
    public static final PropertyDef FORCE = new PropertyDef("t.force", "Force", QuantityKind.FORCE, false, Set.of(), "", Source.commonPractice());
    public static final PropertyDef INVERTED = new PropertyDef("t.inverted", "Rests inverted", QuantityKind.NUMBER, true, Set.of(), "", Source.commonPractice());

    private Bench() {
    }

    public static PropertyKey key(PropertyDef property) {
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(property.id());
        key.setPieceKind(PieceKind.PART);
        return key;
    }

    public static Target target(PropertyDef property, TargetRule rule) {
        Target target = ModelFactory.eINSTANCE.createTarget();
        target.setKey(key(property));
        target.setRule(rule);
        return target;
    }

    public static Target nominal(double nominal, double tolerance) {
        Target target = target(HARDNESS, TargetRule.NOMINAL);
        target.setNominal(nominal);
        target.setTolerance(tolerance);
        return target;
    }

    public static Trial trial() {
        return ModelFactory.eINSTANCE.createTrial();
    }

    public static Part part(Trial trial, String code) {
        Part part = ModelFactory.eINSTANCE.createPart();
        part.setCode(code);
        part.setId(code);
        trial.getParts().add(part);
        return part;
    }

    public static Measurement read(Part part, PropertyDef property, double... values) {
        Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
        measurement.setKey(key(property));
        for (double value : values) {
            measurement.getReadings().add(reading(value, Censoring.NONE));
        }
        part.getMeasurements().add(measurement);
        return measurement;
    }

    public static Measurement yes(Part part, boolean... values) {
        Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
        measurement.setKey(key(INVERTED));
        for (boolean value : values) {
            Reading reading = ModelFactory.eINSTANCE.createReading();
            reading.setYes(value);
            measurement.getReadings().add(reading);
        }
        part.getMeasurements().add(measurement);
        return measurement;
    }

    public static Reading reading(double value, Censoring censoring) {
        Reading reading = ModelFactory.eINSTANCE.createReading();
        reading.setValue(value);
        reading.setCensoring(censoring);
        return reading;
    }

    /** A trial whose parts were read once each. */
    public static Trial parts(PropertyDef property, double... values) {
        Trial trial = trial();
        for (double value : values) {
            read(part(trial, String.valueOf(trial.getParts().size() + 1)), property, value);
        }
        return trial;
    }
}
