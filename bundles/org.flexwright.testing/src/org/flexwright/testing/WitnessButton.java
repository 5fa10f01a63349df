package org.flexwright.testing;

import org.flexwright.core.Source;
import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Trial;
import org.flexwright.testing.hardness.DurometerStandard;

/**
 * A flat button poured beside the parts from the same cup, thick and wide enough for a durometer: it tells the hardness of the material
 * where the part itself is too thin or curved.
 *
 * @param diameter  mm
 * @param thickness mm
 */
public record WitnessButton(double diameter, double thickness) {
    /** What its size rests on. */
    public static final Source SOURCE = Source.published(
            "ISO 48-4:2018: 6 mm thick, 12 mm to the edge, 6 mm apart (clauses not confirmed, 12 mm from memory); 1 mm more is common practice");

    /** More than the standard's thickness, for the meniscus and shrinkage. */
    private static final double MARGIN = 1;

    /** The smallest button, in whole millimetres, with room for that many readings on a circle. */
    public static WitnessButton proposed(GaugeScale scale, int readings) {
        DurometerStandard standard = DurometerStandard.ISO_48_4.covers(scale) ? DurometerStandard.ISO_48_4 : DurometerStandard.ASTM_D2240;
        double ring = readings < 2 ? 0 : standard.minSpacing(scale).value() / (2 * Math.sin(Math.PI / readings));
        double diameter = 2 * (standard.minEdge(scale).value() + ring);
        return new WitnessButton(Math.ceil(diameter), Math.ceil(standard.minThickness(scale).value() + MARGIN));
    }

    /** What it takes in the cup, in cm3. */
    public double volume() {
        return Math.PI / 4 * diameter * diameter * thickness / 1000;
    }

    /** Adds such a button to the pieces of a trial; its thickness is entered when it is measured. */
    public Part addTo(Edit edit, Trial trial) {
        Part button = Trials.addPart(edit, trial, null, PieceKind.WITNESS_BUTTON, null, null);
        button.setNote(Say.message("button.note", Readings.mm(diameter), Readings.mm(thickness)).text());
        return button;
    }
}
