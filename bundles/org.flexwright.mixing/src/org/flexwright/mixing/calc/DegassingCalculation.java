package org.flexwright.mixing.calc;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.mixing.formula.Bubbles;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Foam, bubbles and boiling under vacuum. */
@Component(service = Calculation.class)
public final class DegassingCalculation implements Calculation<DegassingCalculation.Inputs, DegassingCalculation.Results> {

    private static final Source GAS = Source.derived("Boyle, Stokes; cup a quarter to a third full is common practice");
    private static final Source WATER = Source.fromMemory("Buck 1981, vapour pressure of water");
    private static final double THIRD = 1.0 / 3;

    /** How a vacuum gauge counts. */
    public enum Counted {
        /** Absolute: 0 is a perfect vacuum. */
        FROM_VACUUM,
        /** How far below the room. */
        BELOW_ROOM
    }

    /** Cup, mixture and pump. */
    public record Inputs(
            @Field(label = "Cup holds", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 1e6, def = "250 ml",
                    help = "Up to the brim.")
            double cupVolume,
            @Field(label = "Mixture", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 1e6, def = "60 ml",
                    help = "Volume of the mixture in it.")
            double mixVolume,
            @Field(label = "Room pressure", kind = QuantityKind.PRESSURE_ABSOLUTE, unit = "kPa", min = 40, max = 110, def = "101.325 kPa",
                    help = "Of the day; lower on a mountain.")
            double room,
            @Field(label = "Pressure", kind = QuantityKind.PRESSURE_ABSOLUTE, unit = "kPa", min = 0, max = 110, def = "5 kPa",
                    help = "As read; the next field says how the gauge counts.")
            double reading,
            @Field(label = "Gauge counts", def = "from-vacuum",
                    help = "From vacuum: 0 is a perfect vacuum. Below room: how far it has pulled down, 95 kPa for -0.95 bar.")
            Counted counted,
            @Field(kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 100, def = "23 degC",
                    help = "Of the mixture.")
            double temperature,
            @Field(label = "Bubble diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 20, def = "1 mm",
                    help = "At room pressure.")
            double bubble,
            @Field(kind = QuantityKind.VISCOSITY, unit = "Pa s", min = 0, minOpen = true, max = 1e5, def = "2 Pa s",
                    help = "Of the mixture now; it grows.")
            double viscosity,
            @Field(kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, def = "1.05 g/cm3", help = "Of the mixture.") double density) {
    }

    /** What the bubbles do. */
    public record Results(
            @Field(label = "Absolute pressure", kind = QuantityKind.PRESSURE_ABSOLUTE, unit = "kPa", help = "In the chamber.") double pressure,
            @Field(label = "Bubbles grow", help = "Times their volume.") double growth,
            @Field(label = "Radius grows", help = "Times their radius.") double radiusGrowth,
            @Field(label = "Rise in the room", kind = QuantityKind.SPEED, unit = "mm/s",
                    help = "Stokes, rigid sphere; a clean bubble is up to 1.5 times as fast.")
            double riseBefore,
            @Field(label = "Rise under vacuum", kind = QuantityKind.SPEED, unit = "mm/s", help = "The same bubble, grown.") double riseUnder,
            @Field(label = "Cup filled", kind = QuantityKind.FRACTION, unit = "%", help = "By the mixture before foaming.") double filled) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.degassing", "Degassing", 1,
                "At constant temperature a bubble grows V2/V1 = p1/p2 with absolute pressures; it rises with v = 2 R^2 rho g/(9 eta). "
                        + "Below the vapour pressure of water, damp boils.",
                GAS, "Single small bubbles; surface tension holds the smallest back, foam is slower than its bubbles. Stop before monomer boils.");
    }

    @Override
    public Class<Inputs> inputType() {
        return Inputs.class;
    }

    @Override
    public Class<Results> resultType() {
        return Results.class;
    }

    @Override
    public Outcome<Results> run(Inputs in) {
        double pressure = in.counted() == Counted.FROM_VACUUM ? in.reading() : in.room() - in.reading();
        if (!(pressure > 0)) {
            return Outcome.refused("reading", Say.DEGAS_VACUUM.with(Figures.of(in.reading(), "kPa"), Figures.of(in.room(), "kPa")), Say.DEGAS_VACUUM_REMEDY.with());
        }
        if (in.mixVolume() > in.cupVolume()) {
            return Outcome.refused("mixVolume", Say.DEGAS_CUP.with(Figures.of(in.mixVolume(), "ml"), Figures.of(in.cupVolume(), "ml")), Say.DEGAS_CUP_REMEDY.with());
        }
        double radius = in.bubble() / 2000;
        double swell = Bubbles.radiusGrowth(in.room(), pressure);
        double density = 1000 * in.density();
        Results results = new Results(pressure, Bubbles.growth(in.room(), pressure), swell, 1000 * Bubbles.rise(radius, density, in.viscosity()),
                1000 * Bubbles.rise(radius * swell, density, in.viscosity()), 100 * in.mixVolume() / in.cupVolume());
        return Outcome.done(results, remarks(in, pressure));
    }

    private static List<Remark> remarks(Inputs in, double pressure) {
        List<Remark> remarks = new ArrayList<>();
        double filled = in.mixVolume() / in.cupVolume();
        if (filled > THIRD) {
            remarks.add(Say.DEGAS_FULL.caution(Source.commonPractice(), Figures.percent(filled), Figures.of(Math.ceil(in.mixVolume() / THIRD), "ml")));
        }
        double boils = Bubbles.waterBoils(in.temperature());
        if (pressure < boils) {
            remarks.add(Say.DEGAS_BOILS.caution(WATER, Figures.of(in.temperature(), "\u00b0C"), Figures.of(boils, "kPa", 3)));
        }
        return remarks;
    }
}
