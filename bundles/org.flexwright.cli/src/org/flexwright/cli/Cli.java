package org.flexwright.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.List;

import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;
import org.flexwright.quantity.QuantityException;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line: nouns and verbs over the same services the window uses. Runs without OSGi when given its services. */
public final class Cli {
    private final CliServices services;
    private final BufferedReader in;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Gson gson = new GsonBuilder().setPrettyPrinting().serializeNulls().disableHtmlEscaping().create();

    /** A command line that prints results to {@code out} and complaints to {@code err}. */
    public Cli(CliServices services, PrintWriter out, PrintWriter err) {
        this(services, new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())), out, err);
    }

    /** The same with what is typed while it runs. */
    Cli(CliServices services, BufferedReader in, PrintWriter out, PrintWriter err) {
        this.services = services;
        this.in = in;
        this.out = out;
        this.err = err;
    }

    /** Runs one call; returns 0 fine, 1 findings at stop level or refused, 2 wrong usage, 3 cannot read, write or lock. */
    public int run(List<String> args) {
        CommandLine line = commandLine();
        int status = line.execute(args.toArray(String[]::new));
        out.flush();
        err.flush();
        return status;
    }

    CommandLine commandLine() {
        CommandLine line = new CommandLine(new Root(this));
        for (Object noun : Root.nouns()) {
            line.addSubcommand(noun);
        }
        for (CliNoun noun : services.nouns()) {
            line.addSubcommand(noun.command());
        }
        line.setExpandAtFiles(false);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setOut(out);
        line.setErr(err);
        line.setUsageHelpWidth(110);
        line.setUsageHelpAutoWidth(false);
        line.setParameterExceptionHandler(this::wrongUsage);
        line.setExecutionExceptionHandler((problem, command, result) -> failed(problem, command));
        return line;
    }

    CliServices services() {
        return services;
    }

    /** What is typed while a command runs. */
    BufferedReader in() {
        return in;
    }

    /** Where a command that goes on speaks meanwhile. */
    PrintWriter out() {
        return out;
    }

    static Cli of(CommandSpec spec) {
        return ((Root) spec.root().userObject()).cli();
    }

    void print(Reply reply, boolean json) {
        if (json) {
            out.println(gson.toJson(reply.json()));
        } else {
            reply.text().forEach(out::println);
        }
    }

    private int wrongUsage(ParameterException problem, String[] args) {
        return refuse(problem.getCommandLine(), List.of(args).contains("--json"), problem.getMessage(),
                "See " + problem.getCommandLine().getCommandSpec().qualifiedName() + " --help.", Status.USAGE);
    }

    private int failed(Exception problem, CommandLine command) {
        boolean json = command.getCommandSpec().userObject() instanceof Call call && call.json;
        return switch (problem) {
            case StoreException store -> refuse(command, json, store.getMessage(), "Nothing was changed.", Status.STORE);
            case CliException file -> refuse(command, json, file.getMessage(), "Nothing was changed.", Status.STORE);
            case RefusedException plan -> refuse(command, json, plan.getMessage(), help(command), Status.USAGE);
            case UsageException usage -> refuse(command, json, usage.getMessage(), help(command), Status.USAGE);
            case QuantityException quantity -> refuse(command, json, quantity.getMessage(), help(command), Status.USAGE);
            default -> refuse(command, json, "Something in the program went wrong; what was saved before stays as it was.",
                    "The details are in the log, " + services.log().apply(problem.toString(), problem) + ".", Status.STORE);
        };
    }

    private static String help(CommandLine command) {
        return "See " + command.getCommandSpec().qualifiedName() + " --help.";
    }

    private int refuse(CommandLine command, boolean json, String why, String remedy, int status) {
        if (json) {
            CommandSpec spec = command.getCommandSpec();
            String id = spec.parent() == null || spec.parent() == spec.root() ? spec.name() : spec.parent().name() + "." + spec.name();
            print(new Reply(id).refuse("", why, remedy), true);
        }
        err.println(why);
        err.println(remedy);
        return status;
    }

    /** The program itself. */
    @Command(name = "flexwright", mixinStandardHelpOptions = true, versionProvider = Root.Version.class,
            description = "Make small soft parts on purpose: describe, make, weigh, measure, decide, hand over.",
            footer = { "", "Values carry their unit: 12.5cm3, 0.5in, 23degC; lists are separated by ;, tables are given as @file.csv.",
                    "Exit status: 0 fine, 1 findings at stop level or refused, 2 wrong usage, 3 cannot read, write or lock.", "",
                    "Example: flexwright calc run mixing.batch --set parts=3" })
    static final class Root extends Noun {
        private final Cli cli;

        Root(Cli cli) {
            this.cli = cli;
        }

        Cli cli() {
            return cli;
        }

        static List<Object> nouns() {
            return List.of(new ProjectNoun(), new NeedNoun(), new ReferenceNoun(), new TargetNoun(), new StockNouns.MaterialNoun(), new StockNouns.LotNoun(),
                    new InstrumentNoun(), new ControlNoun(), new SessionNoun(), new TrialNoun(), new BenchNoun(), new PremixNoun(), new RecipeNoun(), new PackNoun(), new BatchNoun(), new MouldNoun(), new MapNoun(), new StockNoun(), new CostCall(),
                    new CalcNoun(),
                    new RecordingNoun(),
                    new FitNoun(),
                    new GaugeNoun(), new RankingNoun(),
                    new AgeingNoun(), new PluginNoun(), new ReportCall(), new FindCall(),
                    new ExportNoun(), new ImportNoun(), new BackupNoun(),
                    new ExampleCall());
        }

        static final class Version implements CommandLine.IVersionProvider {
            @Spec
            CommandSpec spec;

            @Override
            public String[] getVersion() {
                return new String[] { "Flexwright " + Cli.of(spec).services().programVersion() };
            }
        }
    }
}
