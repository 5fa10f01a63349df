package org.flexwright.testing.hardness;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** What a standard asks of a durometer test, each figure with its origin, and what the gauge's spring does. */
@Component(service = Calculation.class)
public final class DurometerProtocol implements Calculation<DurometerProtocol.Inputs, DurometerProtocol.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.durometer-protocol";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Durometer protocol of a standard", 1,
            "What the standard asks for before a reading counts, and spring force F = F0 + c H and indentation h = travel (1 - H/100) at one reading.",
            Source.published("ISO 48-4:2018, ISO 868:2003, ASTM D2240; each figure carries its own mark"),
            "The texts were seen in parts only: whoever wants to claim conformity needs the standard itself.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Scale", def = "A", help = "Scale of the gauge.") GaugeScale scale,
            @Field(label = "Standard", def = "iso-48-4", help = "ISO 48-4 rubber, ISO 868 plastics, ASTM D2240.") DurometerStandard standard,
            @Field(label = "Material", def = "vulcanised", help = "Decides dwell and number of readings.") RubberKind material,
            @Field(label = "Reading", min = 0, max = 100, def = "35", help = "Where spring and indentation are wanted.") double reading) {
    }

    /**
     * A line of the protocol.
     *
     * @param what   what is asked for
     * @param value  how much
     * @param origin standard, clause and mark
     */
    public record Line(
            @Field(label = "What", help = "What is asked for.") String what,
            @Field(label = "How much", help = "With its unit.") String value,
            @Field(label = "Origin", help = "Standard and clause, or that the clause was not confirmed.") String origin) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Protocol", help = "Each line with its own origin.") List<Line> protocol,
            @Field(label = "Spring force", unit = "N", kind = QuantityKind.FORCE, help = "At that reading.") double force,
            @Field(label = "Indentation", unit = "mm", kind = QuantityKind.LENGTH, help = "At that reading.") double indentation) {
    }

    @Override
    public CalculationInfo info() {
        return INFO;
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
        DurometerStandard standard = in.standard();
        GaugeScale scale = in.scale();
        if (!standard.covers(scale)) {
            return Outcome.refused("standard", Say.message("not-covered", standard, scale), Say.message("not-covered.remedy"));
        }
        List<Line> lines = new ArrayList<>();
        lines.add(line("line.thickness", standard.minThickness(scale), "mm"));
        lines.add(line("line.plies", standard.maxPlies(), ""));
        lines.add(line("line.edge", standard.minEdge(scale), "mm"));
        lines.add(line("line.spacing", standard.minSpacing(scale), "mm"));
        lines.add(line("line.readings", standard.minReadings(in.material()), ""));
        lines.add(line("line.dwell", standard.dwell(in.material()), "s"));
        lines.add(line("line.rest", standard.hoursAfterCure(), "h"));
        if (!Double.isNaN(scale.contactMass())) {
            lines.add(line("line.mass", new Requirement(scale.contactMass(), GaugeScale.SPRING_SOURCE), "kg"));
        }
        return Outcome.done(new Results(lines, scale.springForce(in.reading()), scale.indentation(in.reading())));
    }

    private static Line line(String key, Requirement requirement, String unit) {
        return new Line(Say.message(key).text(), Rounded.text(requirement.value(), unit), requirement.source().display());
    }
}
