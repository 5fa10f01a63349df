package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

import org.flexwright.core.exchange.ForeignImport;
import org.flexwright.core.exchange.ImportChange;
import org.flexwright.core.exchange.ImportChange.Kind;
import org.flexwright.core.exchange.ImportOptions;
import org.flexwright.core.exchange.ImportPlan;
import org.flexwright.core.exchange.ProjectJson;
import org.flexwright.core.exchange.TableImport;
import org.flexwright.core.Watch;
import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records from other programs. */
@Command(name = "import", description = "Take records in: what would change is listed first with --dry-run; all of it is taken or nothing.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright import csv dome-tables --dry-run --project dome.flexwright" },
        subcommands = { ImportNoun.Csv.class, ImportNoun.Json.class, ImportNoun.Readings.class,
                ImportNoun.WeighingsCall.class })
final class ImportNoun extends Noun {
    /** Lines of a list that people still read. */
    private static final int SHOWN = 50;
    private static final int LONGEST = 60;

    @Command(name = "csv", description = "Take in tables as flexwright export csv writes them: rows with a known id change what is there, others are added.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright import csv dome-tables --dry-run --project dome.flexwright",
                    "Example: flexwright import csv dome-tables.zip --new copy.flexwright" })
    static final class Csv extends Call {
        @Parameters(paramLabel = "PLACE", description = "A folder or zip file of tables, or one .csv file named as its table.")
        Path place;
        @Option(names = "--project", paramLabel = "FOLDER", description = "The project's folder; else the only one in the current folder.")
        Path project;
        @Option(names = "--new", paramLabel = "FOLDER", description = "Make a new project of an export instead.")
        Path fresh;
        @Option(names = "--dry-run", description = "Only list what would change.")
        boolean dryRun;
        @Option(names = "--remove", description = "Take out what is in its table no more; else nothing is removed.")
        boolean remove;
        @Option(names = "--decimal", description = "How a comma in a number is meant: comma (the decimal sign) or point (no number); asked about when in doubt.")
        ImportOptions.Decimal decimal = ImportOptions.Decimal.ASK;

        @Override
        protected Reply reply(CliServices services) {
            Path from = services.workingFolder().resolve(place);
            Reply reply = new Reply(id());
            try {
                if (fresh != null) {
                    try (ProjectSession made = TableImport.create(services.store(), services.registries().packages(), from, services.workingFolder().resolve(
                            fresh), Watch.NONE)) {
                        return reply.words("folder", made.folder().getFileName().toString()).words("title", String.valueOf(made.project().getTitle()));
                    }
                }
                Path folder = ProjectCall.folder(services, project);
                try (ProjectSession session = dryRun ? services.store().openReadOnly(folder) : services.store().open(folder)) {
                    ImportPlan plan = TableImport.plan(session, services.registries().packages(), from, new ImportOptions(remove, decimal, true), Watch.NONE);
                    return taken(reply, session, plan, dryRun);
                }
            } catch (IOException e) {
                throw new CliException(place + " cannot be read.", e);
            }
        }
    }

    @Command(name = "json", description = "Make a new project of what flexwright export json wrote.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright import json dome.json --new copy.flexwright" })
    static final class Json extends Call {
        @Parameters(paramLabel = "FILE", description = "The file.")
        Path place;
        @Option(names = "--new", paramLabel = "FOLDER", required = true, description = "Folder to make; its name ends in .flexwright.")
        Path fresh;

        @Override
        protected Reply reply(CliServices services) {
            try (ProjectSession made = ProjectJson.create(services.store(), services.registries().packages(), services.workingFolder().resolve(place), services
                    .workingFolder().resolve(fresh), Watch.NONE)) {
                return new Reply(id()).words("folder", made.folder().getFileName().toString()).words("title", String.valueOf(made.project().getTitle()));
            } catch (IOException e) {
                throw new CliException(place + " cannot be read.", e);
            }
        }
    }

    /** What tables of other programs have in common. */
    abstract static class Foreign extends Call {
        @Parameters(paramLabel = "FILE", description = "The table, e.g. a .csv file.")
        Path place;
        @Option(names = "--project", paramLabel = "FOLDER", description = "The project's folder; else the only one in the current folder.")
        Path project;
        @Option(names = "--trial", required = true, description = "Code of the trial.")
        String trial;
        @Option(names = "--column", paramLabel = "MEANING=NAME", description = "Which column holds what; a column named as its meaning need not be given.")
        Map<String, String> columns = new LinkedHashMap<>();
        @Option(names = "--dry-run", description = "Only list what would change.")
        boolean dryRun;
        @Option(names = "--decimal", description = "How a comma in a number is meant: comma or point; asked about when in doubt.")
        ImportOptions.Decimal decimal = ImportOptions.Decimal.ASK;

        abstract ImportPlan plan(CliServices services, ProjectSession session, Path file) throws IOException;

        @Override
        protected Reply reply(CliServices services) {
            Path folder = ProjectCall.folder(services, project);
            try (ProjectSession session = dryRun ? services.store().openReadOnly(folder) : services.store().open(folder)) {
                return taken(new Reply(id()), session, plan(services, session, services.workingFolder().resolve(place)), dryRun);
            } catch (IOException e) {
                throw new CliException(place + " cannot be read.", e);
            }
        }
    }

    @Command(name = "readings", description = "Take in readings from a table: columns part (code of the piece) and value.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright import readings gauge.csv --trial T05 --property shore-a --column part=Piece --column value=Hardness --dry-run" })
    static final class Readings extends Foreign {
        @Option(names = "--property", required = true, description = "Id of the property or its title, e.g. shore-a; flexwright plugin list names them.")
        String property;
        @Option(names = "--session", description = "Code of the session.")
        String session;
        @Option(names = "--instrument", description = "Name of the gauge.")
        String instrument;
        @Mixin
        TargetNoun.Conditions conditions = new TargetNoun.Conditions();

        @Override
        ImportPlan plan(CliServices services, ProjectSession open, Path file) throws IOException {
            PropertyDef def = Find.property(services.registries().properties(), property);
            Session at = session == null ? null : Find.session(open.project(), session);
            return ForeignImport.readings(new ForeignImport.Common(Find.trial(open.project(), trial), def, conditions.key(def, services), at, instrument == null ? null
                    : Find.instrument(open.project(), instrument), at != null && at.getAt() != null ? at.getAt() : services.clock().instant()), file, columns, decimal);
        }
    }

    @Command(name = "weighings", description = "Take in weighings from a table: columns material, and two of gross, tare and net or net alone; at if there is one.",
            mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright import weighings balance.csv --trial T05 --column material=Item --column net=\"Net weight\" --dry-run" })
    static final class WeighingsCall extends Foreign {
        @Option(names = "--step", description = "Number, kind or title of the step; needed when a material is used in more than one.")
        String step;
        @Option(names = "--instrument", description = "Name of the balance.")
        String instrument;

        @Override
        ImportPlan plan(CliServices services, ProjectSession open, Path file) throws IOException {
            Trial of = Find.trial(open.project(), trial);
            return ForeignImport.weighings(of, step == null ? null : Find.step(of, step), instrument == null ? null : Find.instrument(open.project(), instrument), file,
                    columns, decimal);
        }
    }

    /** Lists the plan and carries it out unless it is only to be seen. */
    static Reply taken(Reply reply, ProjectSession session, ImportPlan plan, boolean dryRun) {
        if (!dryRun && session.readOnly()) {
            throw new CliException(session.readOnlyReason(), null);
        }
        describe(reply, plan);
        if (plan.refused() > 0) {
            return reply.refuse("", (plan.refused() == 1 ? "1 entry" : plan.refused() + " entries") + " cannot be taken; nothing was changed.",
                    "Put right what is listed, then try again.");
        }
        if (dryRun || plan.count() == 0) {
            return reply.line(plan.count() == 0 ? "Nothing would change." : "Nothing was changed yet: leave --dry-run out to take it in.");
        }
        session.execute("Import tables", plan::apply);
        session.save();
        return reply.line("Taken in and saved; the state before is kept (flexwright project restore).");
    }

    private static void describe(Reply reply, ImportPlan plan) {
        plan.notes().forEach(n -> reply.notice(n.text()));
        for (Kind kind : Kind.values()) {
            reply.result(kind.name().toLowerCase(java.util.Locale.ROOT), Value.number(plan.count(kind), "1", "the tables"));
        }
        plan.refusals().stream().limit(SHOWN).forEach(r -> {
            reply.line("refused  " + r.text());
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("refused", r.why().text());
            row.put("table", r.table());
            row.put("row", r.row());
            row.put("column", r.column());
            reply.item(row);
        });
        more(reply, plan.refused(), "refusals");
        plan.changes().stream().limit(SHOWN).forEach(c -> {
            reply.line(line(c));
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("change", c.kind().name().toLowerCase(java.util.Locale.ROOT));
            row.put("table", c.table());
            row.put("row", c.row());
            row.put("about", c.about());
            row.put("column", c.column());
            row.put("from", c.from());
            row.put("to", c.to());
            reply.item(row);
        });
        more(reply, plan.count(), "changes");
        reply.line(plan.count(Kind.ADDED) + " added, " + plan.count(Kind.CHANGED) + " changed, " + plan.count(Kind.MOVED) + " put in another order, " + plan
                .count(Kind.REMOVED) + " removed, " + plan.refused() + " refused");
    }

    private static void more(Reply reply, long all, String what) {
        if (all > SHOWN) {
            reply.line("  ... and " + (all - SHOWN) + " more " + what);
        }
    }

    private static String line(ImportChange c) {
        String where = c.row() == 0 ? c.table() : c.table() + " row " + c.row();
        return switch (c.kind()) {
            case ADDED -> "added    " + c.about().strip() + "   [" + where + "]";
            case CHANGED -> "changed  " + c.about() + ", " + c.column() + ": " + shown(c.from()) + " -> " + shown(c.to()) + "   [" + where + "]";
            case MOVED -> "order    " + c.about() + ", " + c.column() + "   [" + where + "]";
            case REMOVED -> "removed  " + c.about() + "   [" + where + "]";
        };
    }

    static String shown(String value) {
        String line = value.replaceAll("\\s+", " ");
        return line.isEmpty() ? "(nothing)" : line.length() > LONGEST ? line.substring(0, LONGEST) + "..." : line;
    }
}
