package org.flexwright.testing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;

/** Which property a durometer reading belongs to. Reading entry asks this before it stores anything. */
public final class Readings {

    /**
     * The property a reading belongs to.
     *
     * @param property id of the property
     * @param kind     what the reading stands for
     * @param note     one sentence to show beside the entry; null when there is nothing to say
     */
    public record Chosen(String property, HardnessReading.Kind kind, Message note) {
        public Chosen {
            Objects.requireNonNull(property, "property");
            Objects.requireNonNull(kind, "kind");
        }
    }

    private Readings() {
    }

    /**
     * The property of a reading.
     *
     * @param scale     the gauge's scale
     * @param thickness thickness of rubber under the spot in mm; null when not entered: the reading is then taken as a hardness of the
     *                  material and the note says what is missing
     * @param curved    true when no flat disc of 6 mm radius lies around the spot
     */
    public static Chosen propertyFor(GaugeScale scale, Double thickness, boolean curved) {
        HardnessReading.Kind kind = HardnessReading.kindOf(scale, thickness, curved);
        Message note = switch (kind) {
            case MATERIAL -> null;
            case UNKNOWN -> Say.message("kept.thickness-missing", mm(HardnessReading.neededThickness(scale)));
            case APPARENT -> curved ? Say.message("kept.curved") : Say.message("kept.thin", mm(thickness), mm(HardnessReading.neededThickness(scale)));
        };
        return new Chosen(kind == HardnessReading.Kind.APPARENT ? scale.apparentProperty() : scale.materialProperty(), kind, note);
    }

    /** Whether the words of a spot say that it is curved; the word "curved" in them does. */
    public static boolean curvedSpot(String spot) {
        return spot != null && spot.toLowerCase(Locale.ROOT).matches(".*\\bcurved\\b.*");
    }

    /** The scale whose hardness of the material that property is; null for any other property. */
    public static GaugeScale scaleOf(String property) {
        return Arrays.stream(GaugeScale.values()).filter(scale -> scale.materialProperty().equals(property)).findFirst().orElse(null);
    }

    /** The scale of the gauge a property is read with, apparent or not; null for any other property. */
    public static GaugeScale gaugeOf(String property) {
        return Arrays.stream(GaugeScale.values()).filter(scale -> scale.materialProperty().equals(property) || scale.apparentProperty().equals(property)).findFirst()
                .orElse(null);
    }

    /** Whether that property is read with a durometer, apparent or not. */
    public static boolean durometer(String property) {
        return gaugeOf(property) != null;
    }

    static String mm(double value) {
        return Rounded.text(value, "mm");
    }
}
