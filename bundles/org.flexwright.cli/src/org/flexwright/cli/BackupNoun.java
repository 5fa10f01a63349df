package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.exchange.Backup;
import org.flexwright.core.exchange.Difference;
import org.flexwright.core.Watch;
import org.flexwright.core.session.ProjectStore;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The project as one archive that checks itself. */
@Command(name = "backup", description = "The project as one archive that checks itself: make, check, restore, compare.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright backup make --project dome.flexwright" },
        subcommands = { BackupNoun.Make.class, BackupNoun.Check.class, BackupNoun.Restore.class, BackupNoun.Compare.class })
final class BackupNoun extends Noun {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

    @Command(name = "make", description = "Make an archive, also while the project is open elsewhere; it is read back and checked.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright backup make dome-monday.zip --project dome.flexwright" })
    static final class Make extends Call {
        @Parameters(paramLabel = "FILE", arity = "0..1", description = "The archive to make; named after project and moment when left out. Nothing may be there yet.")
        Path file;
        @Option(names = "--project", paramLabel = "FOLDER", description = "The project's folder; else the only one in the current folder.")
        Path project;

        @Override
        protected Reply reply(CliServices services) {
            Path folder = ProjectCall.folder(services, project).toAbsolutePath().normalize();
            Path to = file == null ? Path.of(folder.getFileName().toString().replace(ProjectStore.SUFFIX, "") + "-" + STAMP.format(services.clock().instant())
                    + Backup.SUFFIX) : file;
            try {
                Backup.Contents made = Backup.make(services.store().snapshot(folder), services.programVersion(), services.clock().instant(), services
                        .workingFolder().resolve(to), Watch.NONE);
                return described(new Reply(id()).words("file", to.toString()), made).line("Backup made and checked: " + to + ", " + Words.count(made.files().size(),
                        "file") + ", " + made.bytes() + " bytes.");
            } catch (IOException e) {
                throw ExportNoun.cannotWrite(to, e);
            }
        }
    }

    private static Reply described(Reply reply, Backup.Contents contents) {
        return reply.words("folder", contents.folder()).words("made", contents.at()).words("program", contents.program()).result("files", Value.number(contents
                .files().size(), "1", Reply.OWN_RECORD)).result("bytes", Value.number(contents.bytes(), "1", Reply.OWN_RECORD));
    }

    @Command(name = "check", description = "Read every file of an archive and compare it with the archive's list.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright backup check dome-monday.zip" })
    static final class Check extends Call {
        @Parameters(paramLabel = "FILE", description = "The archive.")
        Path file;

        @Override
        protected Reply reply(CliServices services) {
            try (Backup backup = Backup.open(services.workingFolder().resolve(file))) {
                backup.check(Watch.NONE);
                Backup.Contents c = backup.contents();
                return described(new Reply(id()), c).line(file + " is whole: " + c.folder() + " of " + c.at() + ", " + Words.count(c.files().size(), "file") + ", "
                        + c.bytes() + " bytes, made by Flexwright " + c.program() + ".");
            } catch (IOException e) {
                throw cannotRead(file, e);
            }
        }
    }

    @Command(name = "restore", description = "Put a project from an archive into a new folder. Nothing that is there is overwritten.",
            mixinStandardHelpOptions = true, footer = { "", "Example: flexwright backup restore dome-monday.zip dome-again.flexwright" })
    static final class Restore extends Call {
        @Parameters(index = "0", paramLabel = "FILE", description = "The archive.")
        Path file;
        @Parameters(index = "1", paramLabel = "FOLDER", description = "Folder to make; its name ends in .flexwright.")
        Path folder;

        @Override
        protected Reply reply(CliServices services) {
            try (Backup backup = Backup.open(services.workingFolder().resolve(file))) {
                backup.restore(services.store(), services.workingFolder().resolve(folder), Watch.NONE);
                return described(new Reply(id()), backup.contents()).line("Restored into " + folder + ": as it was on " + backup.contents().at()
                        + ", with the edits that were not saved then.");
            } catch (IOException e) {
                throw ExportNoun.cannotWrite(folder, e);
            }
        }
    }

    @Command(name = "compare", description = "Say in what two states differ; each is an archive or a project's folder.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright backup compare dome-monday.zip dome.flexwright" })
    static final class Compare extends Call {
        @Parameters(index = "0", paramLabel = "BEFORE", description = "An archive or a project's folder.")
        Path before;
        @Parameters(index = "1", paramLabel = "AFTER", description = "Another.")
        Path after;

        @Override
        protected Reply reply(CliServices services) {
            try {
                List<Difference> all = Backup.compare(services.store(), services.workingFolder().resolve(before), services.workingFolder().resolve(after),
                        Watch.NONE);
                Reply reply = new Reply(id());
                differences(reply, all);
                return reply.result("differences", Value.number(all.size(), "1", Reply.OWN_RECORD)).line(all.isEmpty() ? "No difference." : Words.count(all
                        .size(), "difference") + ".");
            } catch (IOException e) {
                throw cannotRead(before, e);
            }
        }
    }

    private static void differences(Reply reply, List<Difference> all) {
        all.forEach(d -> {
            reply.line(d.text());
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("change", d.kind().name().toLowerCase(java.util.Locale.ROOT));
            row.put("about", d.about());
            row.put("field", d.field());
            row.put("from", d.from());
            row.put("to", d.to());
            reply.item(row);
        });
    }

    private static CliException cannotRead(Path place, IOException e) {
        return new CliException(place + " cannot be read.", e);
    }
}
