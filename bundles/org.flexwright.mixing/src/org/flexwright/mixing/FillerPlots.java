package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.cause.FilledTrials;
import org.flexwright.core.cause.FillerLoad;
import org.flexwright.core.find.Remark;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyService;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;
import org.flexwright.mixing.formula.Filler;
import org.flexwright.mixing.formula.FillerStiffness;
import org.flexwright.mixing.formulation.MaterialFigures;
import org.flexwright.mixing.formulation.MixtureFigures;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Stiffness and viscosity over the amount of filler, by every formula as far as it holds, and the maker's own trials on top. */
final class FillerPlots {

    private static final Source MODELS = Source.fromMemory("Smallwood and Einstein; Guth and Gold 1938; Guth 1945; Medalia 1972; Krieger and Dougherty 1959");
    /** Up to which volume fraction a formula holds. */
    private static final double DILUTE = 0.05;
    private static final double SPHERES = 0.2;
    /** Aspect ratios of the rod formula, the least and the most. */
    private static final double[] ASPECT = { 4, 10 };
    /** Random packing, and what lumps leave of it. */
    private static final double PACKING = 0.64;
    private static final double LUMPS = 0.45;
    /** Curves end short of packing, where the viscosity has no end. */
    private static final double SHORT_OF = 0.95;
    private static final double LEAST_RANGE = 10;
    private static final int POINTS = 40;
    private static final PropertyService NOTED = new PropertyService(List.of());

    private FillerPlots() {
    }

    static List<StepPlot> of(Step step, Trial trial, PropertyCatalogue properties) {
        Optional<FillerLoad.Part> filler = FillerLoad.parts(trial).stream().filter(p -> p.use().getRole() == PartRole.FILLER).findFirst();
        Optional<FillerLoad> load = FillerLoad.of(trial);
        if (filler.isEmpty() || load.isEmpty() || step.getUses().isEmpty()) {
            return List.of();
        }
        Double rf = MaterialFigures.of(filler.get().use()).substance().density();
        double rm = polymerDensity(step);
        if (rf == null || !(rf > 0) || !(rm > 0)) {
            return List.of(new StepPlot("stiffness", null, List.of(Say.FILLER_DENSITY.note(MODELS, MaterialFigures.name(filler.get().use())))));
        }
        double now = new Filler(load.get().phr()).volumeFraction(rf, rm);
        if (now >= PACKING) {
            return List.of(new StepPlot("stiffness", null, List.of(Say.FILLER_PACKED.stop(MODELS, Figures.of(load.get().phr(), "", 3), Figures.percent(now),
                    Figures.percent(PACKING)))));
        }
        List<FilledTrials.Point> own = FilledTrials.of(trial, properties);
        double reach = Math.max(LEAST_RANGE, 1.5 * own.stream().mapToDouble(FilledTrials.Point::load).reduce(load.get().phr(), Math::max));
        return List.of(stiffness(reach, rf, rm, oilAbsorption(filler.get().use()), own), viscosity(reach, rf, rm));
    }

    /** cm3 to 100 g; empty for a filler of which nobody noted one. */
    private static OptionalDouble oilAbsorption(MaterialUse filler) {
        PropertyDef oil = new MixingProperties().properties().stream().filter(p -> MixingProperties.OIL_ABSORPTION.equals(p.id())).findFirst().orElseThrow();
        return filler.getGrade() == null ? OptionalDouble.empty()
                : NOTED.estimate(oil, filler.getGrade(), filler.getLot()).map(e -> OptionalDouble.of(e.estimate().likely())).orElse(OptionalDouble.empty());
    }

    /** g/cm3 of the mixture without its filler; NaN while a density is missing. */
    private static double polymerDensity(Step step) {
        double grams = 0;
        double volume = 0;
        for (FillerLoad.Part part : FillerLoad.parts((Trial) step.eContainer())) {
            PartRole role = part.use().getRole();
            if (role == PartRole.COMPONENT_A || role == PartRole.COMPONENT_B || role == PartRole.SINGLE || role == PartRole.POLYOL) {
                Double density = MixtureFigures.of(step, part.use()).substance().density();
                grams += part.grams();
                volume += density == null || !(density > 0) ? Double.NaN : part.grams() / density;
            }
        }
        return grams / volume;
    }

    private static StepPlot stiffness(double reach, double rf, double rm, OptionalDouble oil, List<FilledTrials.Point> own) {
        List<Series> series = new ArrayList<>();
        series.add(line(Say.CURVE_SMALLWOOD, reach, DILUTE, rf, rm, FillerStiffness::smallwood));
        series.add(line(Say.CURVE_GUTH_GOLD, reach, SPHERES, rf, rm, FillerStiffness::guthGold));
        series.add(line(Say.CURVE_RODS_SHORT, reach, SPHERES, rf, rm, phi -> FillerStiffness.guthRods(phi, ASPECT[0])));
        series.add(line(Say.CURVE_RODS_LONG, reach, SPHERES, rf, rm, phi -> FillerStiffness.guthRods(phi, ASPECT[1])));
        oil.ifPresent(dbp -> series.add(line(Say.CURVE_STRUCTURE, reach, SPHERES, rf, rm, phi -> FillerStiffness.guthGold(FillerStiffness.effective(phi, dbp)))));
        List<Remark> remarks = new ArrayList<>(List.of(Say.CURVE_LIMITS.note(MODELS, Figures.of(phr(DILUTE, rf, rm), "", 2), Figures.of(phr(SPHERES, rf, rm), "", 2))));
        if (own.size() > 1) {
            // the least filled trial stands on the curve of spheres at its own load
            double base = FillerStiffness.guthGold(new Filler(own.getFirst().load()).volumeFraction(rf, rm));
            series.add(new Series(Say.CURVE_OWN.with().text(), Style.POINTS, own.stream().map(p -> new Point(p.load(), base * p.stiffness().likely(),
                    base * p.stiffness().low(), base * p.stiffness().high(), p.trial().getCode() + ", " + Figures.of(p.hardness(), "Shore A", 3))).toList()));
            remarks.add(Say.CURVE_OWN_HOW.note(own.getFirst().stiffness().source(), own.getFirst().trial().getCode()));
        } else {
            remarks.add(Say.CURVE_OWN_NONE.note(MODELS));
        }
        return new StepPlot("stiffness", plot(Say.PLOT_STIFFNESS.with().text(), Say.AXIS_STIFFNESS.with().text(), series), remarks);
    }

    private static StepPlot viscosity(double reach, double rf, double rm) {
        List<Series> series = List.of(line(Say.CURVE_KRIEGER, reach, SHORT_OF * PACKING, rf, rm, phi -> FillerStiffness.kriegerDougherty(phi, PACKING)),
                line(Say.CURVE_LUMPS, reach, SHORT_OF * LUMPS, rf, rm, phi -> FillerStiffness.kriegerDougherty(phi, LUMPS)));
        return new StepPlot("viscosity", plot(Say.PLOT_VISCOSITY.with().text(), Say.AXIS_VISCOSITY.with().text(), series),
                List.of(Say.CURVE_PACKING.note(MODELS, Figures.percent(PACKING), Figures.percent(LUMPS), Figures.of(phr(PACKING, rf, rm), "", 2))));
    }

    private static PlotModel plot(String title, String upwards, List<Series> series) {
        double right = series.stream().flatMap(s -> s.points().stream()).mapToDouble(Point::x).max().orElse(1);
        double low = series.stream().flatMap(s -> s.points().stream()).mapToDouble(Point::low).min().orElse(0);
        double high = series.stream().flatMap(s -> s.points().stream()).mapToDouble(Point::high).max().orElse(1);
        return new PlotModel(title, Axis.over(Say.AXIS_FILLER.with().text(), "", 0, right), Axis.over(upwards, "", low, high), series, List.of(), List.of());
    }

    /** A formula from no filler up to where it holds, or to the end of the plot. */
    private static Series line(Say name, double reach, double holds, double rf, double rm, DoubleUnaryOperator formula) {
        double end = Math.min(reach, phr(holds, rf, rm));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double phr = end * i / POINTS;
            points.add(Point.of(phr, formula.applyAsDouble(new Filler(phr).volumeFraction(rf, rm))));
        }
        return new Series(name.with().text(), Style.LINE, points);
    }

    /** g to 100 g of polymer that come to a volume fraction. */
    private static double phr(double phi, double rf, double rm) {
        return 100 * phi / (1 - phi) * rf / rm;
    }
}
