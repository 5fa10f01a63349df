package org.flexwright.core.process;

import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.model.Trial;

/** A route to a part: an ordered list of step kinds and the factors a maker plays with. Register it as an OSGi service. */
public interface ProcessKind {
    /** Stable id, {@code capability.name}. */
    String id();

    /** A few words. */
    String title();

    /** One or two sentences: what it is good at, where it fails. */
    String summary();

    /** The usual steps in order; others may be added. */
    List<PlannedStep> steps();

    /** What is usually varied: paths to planned features, never copies. */
    List<Factor> factors();

    /** Time, mass and cost of a planned trial; an empty list when nothing can be said yet. */
    List<EstimateLine> estimate(Trial plan);

    /**
     * A step of the usual order.
     *
     * @param kind     id of the step kind; may belong to another plugin, which may be absent
     * @param title    words in the trial
     * @param defaults planned values by feature name as a person would type them
     */
    record PlannedStep(String kind, String title, Map<String, String> defaults) {
        public PlannedStep {
            defaults = Map.copyOf(defaults);
        }

        /** A step without own defaults. */
        public static PlannedStep of(String kind, String title) {
            return new PlannedStep(kind, title, Map.of());
        }
    }

    /**
     * Something varied between trials.
     *
     * @param id       stable id within the process
     * @param label    words above a column
     * @param stepKind id of the step kind
     * @param feature  name of the planned feature in that step's details
     */
    record Factor(String id, String label, String stepKind, String feature) {
    }

    /**
     * One line of an estimate.
     *
     * @param label   what: "Time at the machine", "Material"
     * @param value   the band
     * @param unit    unit symbol
     * @param meaning what of it others may count with
     */
    record EstimateLine(String label, Estimate value, String unit, Meaning meaning) {

        /** What others may count with: time of a person, time from start to finished part, or nothing in particular. */
        public enum Meaning {
            /** Time with hands on it. */
            HANDS,
            /** Time from start to finished part. */
            ELAPSED,
            /** Shown, not counted with. */
            OTHER
        }

        /** A line that is only shown. */
        public EstimateLine(String label, Estimate value, String unit) {
            this(label, value, unit, Meaning.OTHER);
        }
    }
}
