package org.flexwright.testing;

import static org.flexwright.core.property.PropertyDef.Condition.DWELL;
import static org.flexwright.core.property.PropertyDef.Condition.PIECE;
import static org.flexwright.core.property.PropertyDef.Condition.SPOT;
import static org.flexwright.core.property.PropertyDef.Condition.SUPPORT;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.property.Approximation;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.core.property.PropertySet;
import org.flexwright.core.property.ResultWord;
import org.flexwright.model.PropertyKey;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.data.TestingDataPackage;
import org.flexwright.testing.hardness.CrossScaleChart;
import org.flexwright.testing.piece.Displacement;
import org.osgi.service.component.annotations.Component;

/** What is read on parts and test pieces at the bench. */
@Component(service = PropertySet.class)
public final class TestingProperties implements PropertySet {
    /** Hardness of the material, Shore A. */
    public static final String SHORE_A = "testing.shore-a";
    /** Hardness of the material, Shore D. */
    public static final String SHORE_D = "testing.shore-d";
    /** Hardness of the material, Shore 00. */
    public static final String SHORE_00 = "testing.shore-00";
    /** A Shore A gauge on a thin or curved piece. */
    public static final String APPARENT_HARDNESS = "testing.apparent-hardness";
    /** A Shore D gauge on a thin or curved piece. */
    public static final String APPARENT_HARDNESS_D = "testing.apparent-hardness-d";
    /** A Shore 00 gauge on a thin or curved piece. */
    public static final String APPARENT_HARDNESS_00 = "testing.apparent-hardness-00";
    /** Highest force before the snap. */
    public static final String PEAK_FORCE = "testing.peak-force";
    /** Least force after the peak. */
    public static final String LEAST_FORCE = "testing.least-force";
    /** Force lost in the snap over peak force. */
    public static final String SNAP_RATIO = "testing.snap-ratio";
    /** Whether the part stays in. */
    public static final String RESTS_INVERTED = "testing.rests-inverted";
    /** Time to come back. */
    public static final String RETURN_TIME = "testing.return-time";
    /** Presses until a tear is seen. */
    public static final String PRESSES_TO_TEAR = "testing.presses-to-tear";
    /** Mass. */
    public static final String MASS = "testing.mass";
    /** Wall thickness. */
    public static final String WALL = "testing.wall";
    /** Rebound energy share on a standard's pendulum, or on an instrument nobody named. */
    public static final String REBOUND = "testing.rebound";
    /** Rebound of a standard's plunger. */
    public static final String REBOUND_PLUNGER = "testing.rebound-plunger";
    /** Rebound height over drop height, own drop. */
    public static final String REBOUND_DROP = "testing.rebound-drop";
    /** Energy given back from one bounce to the next, own drop. */
    public static final String REBOUND_BOUNCE = "testing.rebound-bounce";
    /** Tangent of the loss angle. */
    public static final String TAN_DELTA = "testing.tan-delta";

    /** Density of a piece. */
    public static final String DENSITY = "testing.density";
    /** Compression set. */
    public static final String COMPRESSION_SET = "testing.compression-set";
    /** Tear strength. */
    public static final String TEAR_STRENGTH = "testing.tear-strength";
    /** Change of mass in a liquid or while drying. */
    public static final String MASS_CHANGE = "testing.mass-change";
    /** Whether a press snaps. */
    public static final String SNAPS = "testing.snaps";
    /** Time it stays in before it comes back by itself. */
    public static final String HOLD_TIME = "testing.hold-time";

    private static final Set<Condition> HARDNESS = Set.of(PIECE, SPOT, SUPPORT, DWELL);
    private static final Set<Condition> FORCE = Set.of(SPOT, SUPPORT);
    private static final Source DUROMETER = Source.published("ISO 48-4:2018 (parts seen); sheet of the gauge");
    private static final Source OWN_DROP = Source.fromMemory("A. D. Bernstein 1977, American Journal of Physics 45, 41; free fall, derived");
    private static final Source BENCH = Source.commonPractice("slow press on a balance or force gauge with a stop");

    @Override
    public List<PropertyDef> properties() {
        return Stream.concat(Arrays.stream(GaugeScale.values()).flatMap(scale -> Stream.of(hardness(scale), apparent(scale))), others().stream()).toList();
    }

    private static List<PropertyDef> others() {
        return List.of(
                number(PEAK_FORCE, "Peak force", QuantityKind.FORCE, FORCE, "Highest force on a slow press before the snap; no snap within reach: type > and the force reached.", BENCH),
                number(LEAST_FORCE, "Least force after the peak", QuantityKind.FORCE, FORCE,
                        "Lowest force after the peak; negative or zero when the part stays in by itself.", BENCH),
                number(SNAP_RATIO, "Snap ratio", QuantityKind.NUMBER, FORCE, "(Peak force - least force) / peak force; 0 no snap, 1 no force left, above 1 stays in.",
                        Source.derived("from peak and least force of the same press")),
                yesNo(RESTS_INVERTED, "Rests inverted", Set.of(SUPPORT), "Pressed right in and let go: does it stay in? Yes or no for each part."),
                number(RETURN_TIME, "Return time", QuantityKind.DURATION, FORCE, "From letting go to the resting shape; below what the camera can tell: type < and its limit.",
                        Source.commonPractice("counted video frames")),
                number(PRESSES_TO_TEAR, "Presses to a tear", QuantityKind.COUNT, FORCE, "Full presses until a tear is seen; none seen when you stopped: type > and the number.",
                        Source.commonPractice()),
                yesNo(SNAPS, "Snaps", FORCE, "Pressed slowly to the stop: does the force fall by itself on the way? Yes or no for each press."),
                number(HOLD_TIME, "Hold time", QuantityKind.DURATION, FORCE, "From letting go until it begins to come back by itself; still in when you stopped: type > and the time.",
                        Source.commonPractice("counted video frames")),
                number(DENSITY, "Density", QuantityKind.DENSITY, Set.of(PIECE), "By weighing in air and in water, or mass over volume; calculations testing.density and testing.density-by-volume.",
                        Displacement.SOURCE),
                number(COMPRESSION_SET, "Compression set", QuantityKind.FRACTION, Set.of(PIECE), "Share of the squeeze that stayed; say time, temperature and squeeze, else it compares with nothing.",
                        Source.published("ISO 815-1, ASTM D395 method B (parts seen)")),
                number(TEAR_STRENGTH, "Tear strength", QuantityKind.TEAR_STRENGTH, Set.of(PIECE, SPOT), "Force over thickness; put the shape of the piece into the spot: trouser, angle, crescent do not compare.",
                        Source.published("ISO 34-1, ASTM D624 (parts seen)")),
                number(MASS_CHANGE, "Change of mass", QuantityKind.FRACTION, Set.of(PIECE, SUPPORT), "In a liquid or while drying, of the first mass; put the liquid into the support.",
                        Source.derived("masses over the first mass")),
                number(MASS, "Mass", QuantityKind.MASS, Set.of(PIECE), "On a balance, clean and dry, flash trimmed.", Source.commonPractice()),
                number(WALL, "Wall thickness", QuantityKind.LENGTH, Set.of(PIECE, SPOT), "Light touch: callipers squash soft parts; better a photo of a cut with a scale.",
                        Source.commonPractice()),
                number(REBOUND, "Rebound, standard pendulum", QuantityKind.FRACTION, Set.of(PIECE, SUPPORT),
                        "Energy given back on the pendulum of ISO 4662 or ASTM D7121; only one instrument and one piece size compare, and never with an own drop.",
                        Source.published("ISO 4662, ASTM D7121 (parts seen)")).within(0, 100),
                number(REBOUND_PLUNGER, "Rebound, standard plunger", QuantityKind.FRACTION, Set.of(PIECE, SUPPORT),
                        "Rebound of the 28 g plunger of ASTM D2632 from 400 mm, three blows first, then three readings; never compares with a pendulum or an own drop.",
                        Source.fromMemory("ASTM D2632")).within(0, 100),
                number(REBOUND_DROP, "Rebound, own drop", QuantityKind.FRACTION, Set.of(PIECE, SPOT, SUPPORT),
                        "First rebound height over drop height, seen or heard; compares with the same drop height, the same thing falling and the same surface only.", OWN_DROP).within(0, 100),
                number(REBOUND_BOUNCE, "Rebound, second bounce", QuantityKind.FRACTION, Set.of(PIECE, SPOT, SUPPORT),
                        "Second rebound height over the first one, heard without knowing the drop height; slower than the first impact, so it gives back rather more.", OWN_DROP).within(0, 100),
                number(TAN_DELTA, "tan delta", QuantityKind.NUMBER, FORCE, "From a small sinusoidal load at a stated frequency and temperature; what a rebound suggests is only rough.",
                        Source.derived("linear viscoelasticity")));
    }

    /** Snap: the force falls behind its peak, by the definition of the snap ratio. Torn: a tear was seen, not "more than so many presses". */
    @Override
    public List<ResultWord> resultWords() {
        return List.of(ResultWord.number(SNAP_RATIO, 0, Double.MAX_VALUE, "snap", "snaps", "snapped", "snapping"),
                ResultWord.answer(RESTS_INVERTED, true, "inverted", "inverts"),
                ResultWord.number(PRESSES_TO_TEAR, -1, Double.MAX_VALUE, "tore", "torn"));
    }

    /** A durometer on a thin or curved piece reads an apparent hardness, which is a property of its own. */
    @Override
    public Optional<Redirect> redirect(PropertyKey key, Double thickness) {
        GaugeScale scale = Readings.scaleOf(key.getProperty());
        if (scale == null) {
            return Optional.empty();
        }
        Readings.Chosen chosen = Readings.propertyFor(scale, thickness, Readings.curvedSpot(key.getSpot()));
        return chosen.note() == null ? Optional.empty() : Optional.of(new Redirect(chosen.property(), chosen.note()));
    }

    /** How a durometer was held and on what; in what a weighed piece lay. */
    @Override
    public EClass details(String property) {
        return Readings.durometer(property) ? TestingDataPackage.Literals.HARDNESS_DETAILS : MASS.equals(property) ? TestingDataPackage.Literals.SOAK_DETAILS : null;
    }

    /** What the handbook chart says beside a hardness of the material; an apparent hardness has no chart. */
    @Override
    public List<Approximation> about(String property, double value) {
        GaugeScale from = Readings.scaleOf(property);
        return from == null ? List.of() : CrossScaleChart.scales().stream().flatMap(to -> CrossScaleChart.about(from, value, to)
                .map(about -> new Approximation(hardness(to), about, Say.message("converted"))).stream()).toList();
    }

    private static PropertyDef hardness(GaugeScale scale) {
        return number(scale.materialProperty(), "Hardness, " + scale.kind().unit().display(), scale.kind(), HARDNESS, "Flat piece at least "
                + Rounded.text(HardnessReading.neededThickness(scale), "mm") + " thick on a hard base, same dwell each time, 5 readings well apart, all kept.", DUROMETER);
    }

    private static PropertyDef apparent(GaugeScale scale) {
        return number(scale.apparentProperty(), "Apparent hardness, " + scale.kind().unit().display() + " gauge", scale.kind(), HARDNESS, "Thin or curved piece: compares only with the same piece, spot, support and dwell, never with a hardness of the material.",
                Source.commonPractice());
    }

    private static PropertyDef number(String id, String title, QuantityKind kind, Set<Condition> comparedBy, String help, Source source) {
        return new PropertyDef(id, title, kind, false, comparedBy, help, source);
    }

    private static PropertyDef yesNo(String id, String title, Set<Condition> comparedBy, String help) {
        return new PropertyDef(id, title, QuantityKind.NUMBER, true, comparedBy, help, Source.commonPractice());
    }
}
