package org.flexwright.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationJson;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.calc.Manual;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Calculations: list, describe, run. */
@Command(name = "calc", description = "Calculations the plugins brought.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright calc list" }, subcommands = { CalcNoun.ListCall.class, CalcNoun.Show.class, CalcNoun.Run.class })
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
            Manual.text(found).lines().forEach(reply::line);
            return reply;
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
            List<String> names = CalculationJson.inputNames(found);
            for (String name : typed.keySet()) {
                if (!names.contains(name)) {
                    throw new UsageException(calculation + " has no input \"" + name + "\"; it has " + String.join(", ", names) + ".");
                }
            }
            return of(CalculationRunner.run(found, typed));
        }

        static Reply of(CalculationResult result) {
            Reply reply = new Reply(result.id()).version(result.version());
            result.inputs().forEach((name, value) -> reply.input(name, value.json()));
            result.results().forEach((name, value) -> reply.result(name, new Value(value.low(), value.likely(), value.high(), value.unit(),
                    value.source(), value.text())));
            result.findings().forEach(reply::remark);
            if (result.refused() != null) {
                reply.refuse(result.refused().input(), result.refused().why(), result.refused().remedy());
            }
            return reply;
        }
    }
}
