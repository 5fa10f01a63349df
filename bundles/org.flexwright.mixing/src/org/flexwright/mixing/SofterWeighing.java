package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.cause.FillerLoad;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.Standing;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.process.Mixture;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.rubber.Network;
import org.flexwright.mixing.formula.MoistureFoam;
import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.model.Instrument;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;
import org.flexwright.quantity.QuantityKind;

/** What in the cup may have made a part softer although filler was added: water, ratio, liquids, surfaces that block the cure. */
final class SofterWeighing {

    private static final Source NETWORK = Source.fromMemory("Miller and Macosko 1976, ideal network of three-armed polyol and two-armed isocyanate");
    private static final Source DILUTION = Source.commonPractice("Modulus falls with the share of liquid, once to three times as fast");
    private static final Source SURFACE = Source.commonPractice("Amines, sulphur and acid surfaces block platinum cures");
    private static final List<PartRole> LIQUIDS = List.of(PartRole.PLASTICISER, PartRole.THINNER, PartRole.PIGMENT);
    /** Share of liquid below which nobody feels it; common practice, no source. */
    private static final double FELT_LIQUID = 0.002;
    private static final double[] DILUTES = { 1, 2, 3 };

    private SofterWeighing() {
    }

    static List<SofterCause> of(Step step, Trial trial, Trial than) {
        List<SofterCause> causes = new ArrayList<>();
        String family = family(trial);
        if (family.isEmpty() || family.startsWith("pu-")) {
            moisture(step, CupWater.of(trial), than == null ? null : CupWater.of(than), family.isEmpty(), causes);
        }
        ratio(step, trial, than, causes);
        liquid(step, trial, than, causes);
        if (family.startsWith("silicone-add")) {
            surface(step, trial, causes);
        }
        return causes;
    }

    private static String family(Trial trial) {
        return FillerLoad.parts(trial).stream().map(FillerLoad.Part::use).filter(u -> u.getRole() == PartRole.COMPONENT_A || u.getRole() == PartRole.COMPONENT_B)
                .filter(u -> u.getGrade() != null && u.getGrade().getFamily() != null).map(u -> u.getGrade().getFamily()).findFirst().orElse("");
    }

    private static void moisture(Step step, CupWater cup, CupWater than, boolean familyUnknown, List<SofterCause> causes) {
        if (cup.carriers().isEmpty()) {
            return;
        }
        List<CupWater.Carrier> wet = cup.carriers().stream().filter(c -> c.water().high() > 0).toList();
        if (wet.isEmpty()) {
            causes.add(cause("moisture", Standing.CLEARED, Say.SOFT_WATER, Say.SOFT_WATER_DRIED.with(names(cup.carriers())), null, NETWORK, step));
            return;
        }
        Estimate index = cup.wetIndex();
        Estimate stiffness = over(stiffness(index, cup.dryIndex()), than == null || than.carriers().isEmpty() ? null : stiffness(than.wetIndex(), than.dryIndex()));
        Estimate water = cup.water();
        boolean said = wet.stream().anyMatch(c -> c.known() || Boolean.FALSE.equals(c.dried()));
        causes.add(new SofterCause("moisture", said && !familyUnknown ? Standing.RECORDED : Standing.OPEN, Say.SOFT_WATER.with(),
                (said ? Say.SOFT_WATER_SAID : Say.SOFT_WATER_SILENT).with(wet.stream().map(SofterWeighing::words).collect(Collectors.joining("; ")),
                        band(water, QuantityKind.MASS, "g"), Figures.of(cup.dryIndex(), "", 4), band(index, QuantityKind.NUMBER, ""),
                        band(water.times(MoistureFoam.co2Volume(1)), QuantityKind.VOLUME, "ml"),
                        cup.isKnown() ? Say.SOFT_WATER_SHEET.with().text() : Say.SOFT_WATER_USUAL.with().text()),
                stiffness, Say.SOFT_WATER_CHECK.with(name(wet.getFirst().use())), NETWORK, id(step)));
    }

    private static String words(CupWater.Carrier carrier) {
        String dried = carrier.dried() == null ? Say.SOFT_DRIED_UNKNOWN.with().text() : (carrier.dried() ? Say.SOFT_DRIED_YES : Say.SOFT_DRIED_NO).with().text();
        return Say.SOFT_CARRIER.with(Figures.of(carrier.grams(), "g", 3), name(carrier.use()), band(carrier.water(), QuantityKind.FRACTION, "%"), dried,
                carrier.water().source().display()).text();
    }

    private static String names(List<CupWater.Carrier> carriers) {
        return carriers.stream().map(c -> name(c.use())).distinct().collect(Collectors.joining(", "));
    }

    private static String name(MaterialUse use) {
        return WeighAdvice.name(use);
    }

    /** Of a wet cup against the dry one; both fully reacted. */
    private static Estimate stiffness(Estimate wetIndex, double dryIndex) {
        double dry = Network.relativeStiffness(Network.alpha(dryIndex, 1));
        double[] values = { ofIndex(wetIndex.low()) / dry, ofIndex(wetIndex.likely()) / dry, ofIndex(wetIndex.high()) / dry };
        double low = Math.min(values[0], Math.min(values[1], values[2]));
        double high = Math.max(values[0], Math.max(values[1], values[2]));
        return new Estimate(low, values[1], high, NETWORK);
    }

    private static double ofIndex(double index) {
        return Network.relativeStiffness(Network.alpha(index, 1));
    }

    /** What a trial's own share comes to against the other one's. */
    private static Estimate over(Estimate mine, Estimate other) {
        return other == null || !(other.low() > 0) ? mine
                : new Estimate(mine.low() / other.high(), mine.likely() / other.likely(), mine.high() / other.low(), mine.source());
    }

    private static void ratio(Step step, Trial trial, Trial than, List<SofterCause> causes) {
        WeighAdvice advice = WeighAdvice.of(step);
        Mixture mixture = Mixtures.of(step);
        if (advice.ratio() == null || mixture.planned(PartRole.COMPONENT_A) == null && mixture.actual(PartRole.COMPONENT_A) == null) {
            return;
        }
        if (advice.weighed() == null) {
            causes.add(cause("ratio", Standing.OPEN, Say.SOFT_RATIO, Say.SOFT_RATIO_SILENT.with(StepNames.of(step)), null, NETWORK, step));
            return;
        }
        double off = advice.weighed().deviation();
        double limit = advice.ownLimit();
        OptionalDouble balance = balance(step, advice);
        double open = balance.orElse(0);
        Estimate mine = ofRatio(trial, off, open);
        Estimate stiffness = over(mine, than == null ? null : otherRatio(than));
        Standing standing = Math.abs(off) > limit ? Standing.RECORDED : 2 * open > limit ? Standing.OPEN : Standing.CLEARED;
        causes.add(cause("ratio", standing, Say.SOFT_RATIO,
                Say.SOFT_RATIO_SAID.with(FieldText.fixed(100 * off, 1), Figures.percent(limit),
                        balance.isPresent() ? Say.SOFT_RATIO_BALANCE.with(Figures.of(200 * open, "%", 2)).text() : Say.SOFT_RATIO_NO_BALANCE.with().text()),
                stiffness, NETWORK, step));
    }

    /** Modulus against that of the planned ratio, over the balance's step; the index when it is known, else the smaller side's share. */
    private static Estimate ofRatio(Trial trial, double off, double open) {
        CupWater cup = CupWater.of(trial);
        double towardsIsocyanate = CupWater.isocyanateIsB(trial) ? 1 : -1;
        double planned = cup.isKnown() ? cup.dryIndex() / Math.pow(1 + off, towardsIsocyanate) : 100;
        double reference = ofIndex(planned);
        double[] values = { ofIndex(planned * Math.pow(1 + off - 2 * open, towardsIsocyanate)) / reference, ofIndex(planned * Math.pow(1 + off, towardsIsocyanate)) / reference,
                ofIndex(planned * Math.pow(1 + off + 2 * open, towardsIsocyanate)) / reference };
        double low = Math.min(values[0], Math.min(values[1], values[2]));
        double high = Math.max(values[0], Math.max(values[1], values[2]));
        return new Estimate(low, values[1], high, NETWORK);
    }

    private static Estimate otherRatio(Trial than) {
        return than.getSteps().stream().filter(s -> WeighStep.ID.equals(s.getKind())).map(WeighAdvice::of).filter(a -> a.weighed() != null).findFirst()
                .map(a -> ofRatio(than, a.weighed().deviation(), 0)).orElse(null);
    }

    /** Standard uncertainty of the ratio from the coarsest balance that was used; empty when none is named. */
    private static OptionalDouble balance(Step step, WeighAdvice advice) {
        OptionalDouble coarsest = step.getUses().stream().flatMap(u -> u.getWeighings().stream()).map(Weighing::getInstrument).filter(Objects::nonNull)
                .filter(i -> "g".equals(i.getUnit())).map(Instrument::getResolution).filter(Objects::nonNull).mapToDouble(Double::doubleValue).filter(r -> r > 0).max();
        return coarsest.isEmpty() ? coarsest : OptionalDouble.of(ScaleReading.ofRatio(coarsest.getAsDouble(), advice.weighed().gramsA(), advice.weighed().gramsB()));
    }

    private static void liquid(Step step, Trial trial, Trial than, List<SofterCause> causes) {
        double more = liquid(trial) - (than == null ? 0 : liquid(than));
        if (more > FELT_LIQUID && step.getUses().stream().anyMatch(u -> LIQUIDS.contains(u.getRole()))) {
            Estimate stiffness = new Estimate(Math.pow(1 - more, DILUTES[2]), Math.pow(1 - more, DILUTES[1]), Math.pow(1 - more, DILUTES[0]), DILUTION);
            causes.add(cause("liquid", Standing.RECORDED, Say.SOFT_LIQUID, Say.SOFT_LIQUID_SAID.with(Figures.percent(more)), stiffness, DILUTION, step));
        }
    }

    private static double liquid(Trial trial) {
        List<FillerLoad.Part> parts = FillerLoad.parts(trial);
        double all = parts.stream().filter(p -> p.use().getRole() != PartRole.MOULD && p.use().getRole() != PartRole.RELEASE && p.use().getRole() != PartRole.WASH)
                .mapToDouble(FillerLoad.Part::grams).sum();
        double liquid = parts.stream().filter(p -> LIQUIDS.contains(p.use().getRole())).mapToDouble(FillerLoad.Part::grams).sum();
        return all > 0 ? liquid / all : 0;
    }

    private static void surface(Step step, Trial trial, List<SofterCause> causes) {
        FillerLoad.parts(trial).stream().map(FillerLoad.Part::use).filter(u -> u.getRole() == PartRole.FILLER || u.getRole() == PartRole.PIGMENT).findFirst()
                .ifPresent(use -> causes.add(cause("surface", Standing.OPEN, Say.SOFT_SURFACE, Say.SOFT_SURFACE_SILENT.with(name(use)), null, SURFACE, step)));
    }

    private static SofterCause cause(String id, Standing standing, Say title, org.flexwright.core.Message evidence, Estimate stiffness, Source source, Step step) {
        return new SofterCause(id, standing, title.with(), evidence, stiffness, Say.valueOf(title.name() + "_CHECK").with("the powder"), source, id(step));
    }

    private static String id(Step step) {
        return step.getId() == null ? "" : step.getId();
    }

    private static String band(Estimate value, QuantityKind kind, String unit) {
        return FieldText.band(value.low(), value.likely(), value.high(), kind, unit);
    }
}
