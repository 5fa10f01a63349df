package org.flexwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.CalculationJson;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.Choice;
import org.flexwright.core.field.FieldDescriptor;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Calculations: list, describe, run. */
@Command(name = "calc", description = "Calculations the plugins brought.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright calc list" }, subcommands = { CalcNoun.ListCall.class, CalcNoun.Show.class, CalcNoun.Run.class, CalcKeepCall.class, ManualCall.class })
final class CalcNoun extends Noun {

    static Calculation<?, ?> find(CliServices services, String id) {
        return services.registries().findCalculation(id).orElseThrow(() -> new UsageException("There is no calculation \"" + id
                + "\"; flexwright calc list names them all."));
    }

    @Command(name = "list", description = "List every calculation.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright calc list --json" })
    static final class ListCall extends Call {
        @Override
        protected Reply reply(CliServices services) {
            Reply reply = new Reply(id());
            for (Calculation<?, ?> calculation : services.registries().calculations()) {
                reply.line(String.format("%-28s %s", calculation.info().id(), calculation.info().title()));
                reply.item(CalculationJson.description(calculation));
            }
            return reply;
        }
    }

    @Command(name = "show", description = "Describe one calculation: inputs, results, formula, source, limits.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright calc show mixing.batch" })
    static final class Show extends Call {
        @Parameters(paramLabel = "ID", description = "Id of the calculation.")
        String calculation;

        @Override
        protected Reply reply(CliServices services) {
            Calculation<?, ?> found = find(services, calculation);
            Reply reply = new Reply(id()).input("calculation", calculation).item(CalculationJson.description(found));
            lines(found).forEach(reply::line);
            return reply;
        }

        private static List<String> lines(Calculation<?, ?> calculation) {
            CalculationInfo info = calculation.info();
            List<String> lines = new ArrayList<>(List.of(info.title() + "   (" + info.id() + ", version " + info.version() + ")", info.summary(),
                    "Source: " + info.source().display(), "Holds: " + info.validity(), "", "Inputs"));
            CalculationRunner.inputs(calculation).forEach(field -> lines.add(String.format("  %-22s %-12s %-28s default %-14s %s", field.name(),
                    unit(field), field.allowed(), field.def().isEmpty() ? field.optional() ? "(empty)" : "(none)" : field.def(), field.help())));
            lines.add("Results");
            CalculationRunner.results(calculation).forEach(field -> lines.add(String.format("  %-22s %-12s %s", field.name(), unit(field),
                    field.help())));
            return lines;
        }

        private static String unit(FieldDescriptor field) {
            return field.choices().isEmpty() ? field.unit() : String.join("|", field.choices().stream().map(Choice::literal).toList());
        }
    }

    @Command(name = "run", description = "Run a calculation. Inputs that are not given take their default.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright calc run mixing.batch --set parts=3 --set partVolume=12ml --set runnerVolume=0ml",
                    "A table: --set segments=@schedule.csv; a list: --set \"readings=49;50;48\"" })
    static final class Run extends Call {
        @Parameters(paramLabel = "ID", description = "Id of the calculation.")
        String calculation;

        @Option(names = "--set", paramLabel = "NAME=VALUE", description = "One input; the unit stands in the value. Repeat for more.")
        List<String> set = List.of();

        @Override
        protected Reply reply(CliServices services) {
            Calculation<?, ?> found = find(services, calculation);
            Map<String, String> typed = Settings.read(set, services.workingFolder());
            List<String> names = CalculationRunner.inputs(found).stream().map(FieldDescriptor::name).toList();
            for (String name : typed.keySet()) {
                if (!names.contains(name)) {
                    throw new UsageException(calculation + " has no input \"" + name + "\"; it has " + String.join(", ", names) + ".");
                }
            }
            return Reply.of(CalculationRunner.run(found, typed));
        }
    }
}
