package org.flexwright.testing.hardness;

import org.flexwright.core.Source;
import org.flexwright.testing.GaugeScale;

/** Which scale suits a piece: the one that reads in the middle of its range on a piece thick enough. */
public final class ScaleChoice {
    /** Below this reading the trustworthy window ends. */
    public static final double WINDOW_LOW = 20;
    /** Above this reading the trustworthy window ends. */
    public static final double WINDOW_HIGH = 90;
    /** Where the changes of scale come from. */
    public static final Source SCALE_SOURCE = Source.published("ISO 48-4:2018 and ISO 7619-1, scale selection; 00 instead of AO is workshop use");
    /** Where the window comes from. */
    public static final Source WINDOW_SOURCE = Source.fromMemory("ASTM D2240, later wording 20 to 90; older copies say 10 to 90");

    private ScaleChoice() {
    }

    /** Whether the reading lies where its scale can be trusted. */
    public static boolean inWindow(double reading) {
        return reading >= WINDOW_LOW && reading <= WINDOW_HIGH;
    }

    /**
     * The scale to use after a trial reading; the same scale when it already suits. A soft reading on the softest scale and a hard
     * one on the hardest stay where they are: nothing better is at hand.
     */
    public static GaugeScale suited(GaugeScale scale, double reading) {
        return switch (scale) {
            case D -> reading < WINDOW_LOW ? GaugeScale.A : GaugeScale.D;
            case A -> reading < WINDOW_LOW ? GaugeScale.SHORE_00 : reading > WINDOW_HIGH ? GaugeScale.D : GaugeScale.A;
            case SHORE_00 -> reading > WINDOW_HIGH ? GaugeScale.A : GaugeScale.SHORE_00;
            case AO -> reading > WINDOW_HIGH ? GaugeScale.A : GaugeScale.AO;
            case SHORE_000 -> reading > WINDOW_HIGH ? GaugeScale.SHORE_00 : GaugeScale.SHORE_000;
            case AM, B, C, DO, E, O -> scale;
        };
    }
}
