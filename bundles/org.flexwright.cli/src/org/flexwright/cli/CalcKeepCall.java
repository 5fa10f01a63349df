package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.CalculatedReadings;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A calculation whose result is a reading of a piece. */
@Command(name = "keep", description = "Run a calculation for a piece and keep its result as a reading: density, compression set, tear, swelling.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright calc keep testing.density --for T08/B1 --set inAir=10.02g --set inWater=1.21g --session S17",
                "Inputs that the piece knows, such as its weighings for testing.soak, need not be typed." })
final class CalcKeepCall extends ProjectCall {
    @Parameters(paramLabel = "ID", description = "Id of the calculation.")
    String calculation;
    @Option(names = "--for", required = true, paramLabel = "PIECE", description = "The piece, a part with its trial: T08/P1.")
    String piece;
    @Option(names = "--set", paramLabel = "NAME=VALUE", description = "One input; the unit stands in the value. Repeat for more.")
    List<String> set = List.of();
    @Option(names = "--session", description = "Code of the session.")
    String session;
    @Option(names = "--instrument", description = "Name of the gauge or balance.")
    String instrument;
    @Option(names = "--at", description = "When; the session's time, else now.")
    String at;
    @Option(names = "--look", description = "Only look; keep nothing.")
    boolean look;
    @Mixin
    TargetNoun.Conditions conditions = new TargetNoun.Conditions();

    @Override
    protected boolean writes() {
        return !look;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession project) {
        Calculation<?, ?> found = CalcNoun.find(services, calculation);
        if (!CalculatedReadings.offered(found)) {
            throw new UsageException(calculation + " has no result that is a reading of a piece; these have: " + String.join(", ", services.registries().calculations().stream().filter(
                    CalculatedReadings::offered).map(c -> c.info().id()).toList()) + ".");
        }
        Specimen on = Find.piece(project.project(), piece);
        Map<String, String> typed = new LinkedHashMap<>(found.inputsFrom(on));
        typed.putAll(Settings.read(set, services.workingFolder()));
        List<String> names = CalculationRunner.inputs(found).stream().map(FieldDescriptor::name).toList();
        for (String name : typed.keySet()) {
            if (!names.contains(name)) {
                throw new UsageException(calculation + " has no input \"" + name + "\"; it has " + String.join(", ", names) + ".");
            }
        }
        CalculationResult result = CalculationRunner.run(found, typed);
        Reply reply = Reply.of(result);
        if (look || !result.done()) {
            return reply;
        }
        Session in = session == null ? null : Find.session(project.project(), session);
        Instrument gauge = instrument == null ? null : Find.instrument(project.project(), instrument);
        Measurement probe = ModelFactory.eINSTANCE.createMeasurement();
        probe.setAt(in != null && in.getAt() != null ? in.getAt() : services.clock().instant());
        new Inputs().put("at", at).fill(probe, services.clock());
        PropertyKey key = conditions.on(on, services);
        project.execute("Keep " + found.info().title(), edit -> CalculatedReadings.keep(edit, on, found, result, services.registries().properties(), key, in, gauge, probe.getAt()));
        return reply.line("Kept as a reading of " + Names.piece(on) + ".");
    }
}
