package org.flexwright.materials.calc;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.rubber.HardnessModel;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** IRHD and ball depth from a modulus. */
@Component(service = Calculation.class)
public final class IrhdCalculation implements Calculation<IrhdCalculation.Inputs, IrhdCalculation.Results> {

    private static final Source CURVE = Source.fromMemory("ISO 48-2, curve of IRHD against modulus");

    /** Methods by ball. */
    public enum Method {
        /** Normal, 30 to 95 IRHD. */
        NORMAL(1.25, 0.3, 5.7, 30, 95),
        /** Hard, 85 to 100 IRHD. */
        HARD(0.5, 0.3, 5.7, 85, 100),
        /** Soft, 10 to 35 IRHD. */
        SOFT(2.5, 0.3, 5.7, 10, 35);

        private final double radius;
        private final double contact;
        private final double total;
        private final double low;
        private final double high;

        Method(double radius, double contact, double total, double low, double high) {
            this.radius = radius;
            this.contact = contact;
            this.total = total;
            this.low = low;
            this.high = high;
        }

        /** Difference of depths in mm for a modulus in MPa. */
        public double depth(double modulus) {
            return HardnessModel.Irhd.depth(radius, contact, total, modulus);
        }
    }

    /** A modulus and a ball. */
    public record Inputs(
            @Field(kind = QuantityKind.STRESS, unit = "MPa", min = 0.05, max = 100, def = "2.3 MPa",
                    help = "Young's modulus at small strain.")
            double modulus,
            @Field(def = "normal", help = "Normal: ball 2.5 mm. Hard: ball 1 mm. Soft: ball 5 mm.") Method method) {
    }

    /** The reading to expect. */
    public record Results(
            @Field(label = "IRHD", help = "Points to expect.") double irhd,
            @Field(label = "Depth between both forces", kind = QuantityKind.LENGTH, unit = "mm",
                    help = "What the instrument measures.")
            double depth) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("materials.irhd", "IRHD from modulus", 1,
                "IRHD = 100 Phi((log10 E - 0.364)/0.6999); depth D = 0.615 R^-0.48 [(F/E)^0.74 - (f/E)^0.74] mm.", CURVE,
                "Thick flat pieces; each ball has its own range of hardness.");
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
        double irhd = HardnessModel.Irhd.hardness(in.modulus());
        if (irhd < in.method().low || irhd > in.method().high) {
            return Outcome.refused("method", Say.IRHD_SCALE.with(Figures.of(in.modulus(), ""), Figures.of(irhd, "", 3), Figures.of(in.method().low, ""),
                    Figures.of(in.method().high, "")), Say.IRHD_SCALE_REMEDY.with());
        }
        return Outcome.done(new Results(irhd, in.method().depth(in.modulus())));
    }
}
