package org.flexwright.testing.rule;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

import org.flexwright.core.find.Finding;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.testing.Readings;

/** Walks over durometer measurements. */
final class Pieces {

    /** Looks at one durometer measurement. */
    interface Look {
        /** @param trial the trial of the piece, or null for a reference part or control piece */
        void at(Project project, Trial trial, Specimen piece, Measurement measurement, Consumer<Finding> out);
    }

    private Pieces() {
    }

    /** The durometer measurements of a trial that still counts. */
    static void ofTrial(Project project, Trial trial, Look look, Consumer<Finding> out) {
        if (trial.getState() != TrialState.DISCARDED) {
            trial.getParts().forEach(part -> of(project, trial, part, look, out));
        }
    }

    /** The durometer measurements of reference parts and control pieces. */
    static void ofProject(Project project, Look look, Consumer<Finding> out) {
        project.getReferenceParts().forEach(part -> of(project, null, part, look, out));
        project.getControlPieces().forEach(piece -> of(project, null, piece, look, out));
    }

    private static void of(Project project, Trial trial, Specimen piece, Look look, Consumer<Finding> out) {
        for (Measurement measurement : piece.getMeasurements()) {
            PropertyKey key = measurement.getKey();
            if (key != null && Readings.durometer(key.getProperty())) {
                look.at(project, trial, piece, measurement, out);
            }
        }
    }

    /** Values of the readings that count, in order. */
    static List<Double> values(Measurement measurement) {
        return measurement.getReadings().stream().filter(Measurements::counts).map(Reading::getValue)
                .filter(Objects::nonNull).toList();
    }

    /** How a piece is named in a sentence: trial and piece. */
    static String name(Trial trial, Specimen piece) {
        String code = piece.getCode() == null ? "" : piece.getCode();
        return trial == null ? code : (trial.getCode() + " " + code).strip();
    }
}
