package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Path;

import org.flexwright.core.exchange.CsvExport;
import org.flexwright.core.exchange.ProjectJson;
import org.flexwright.core.Watch;
import org.flexwright.core.session.ProjectSession;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The project in a form other programs read. */
@Command(name = "export", description = "Write the whole project in a form other programs read.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright export csv dome-tables --project dome.flexwright" }, subcommands = { ExportNoun.Csv.class, ExportNoun.Json.class })
final class ExportNoun extends Noun {

    @Command(name = "csv", description = "Write a folder, or a zip file, of tables. columns.csv in it describes every column.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright export csv dome-tables.zip --project dome.flexwright" })
    static final class Csv extends ProjectCall {
        @Parameters(paramLabel = "PLACE", description = "A folder to make, or a file whose name ends in .zip. Nothing may be there yet.")
        Path place;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            try {
                long rows = new CsvExport(services.registries().packages()).write(session.project(), session.unknown(), services.workingFolder().resolve(place),
                        Watch.NONE);
                return new Reply(id()).line(rows + " rows written to " + place + ".").words("place", place.toString()).result("rows", Value.number(rows, "1",
                        Reply.OWN_RECORD));
            } catch (IOException e) {
                throw cannotWrite(place, e);
            }
        }
    }

    @Command(name = "json", description = "Write one JSON file with everything the project holds.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright export json dome.json --project dome.flexwright" })
    static final class Json extends ProjectCall {
        @Parameters(paramLabel = "FILE", description = "The file to make. Nothing may be there yet.")
        Path place;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            try {
                ProjectJson.write(session.project(), session.unknown(), services.workingFolder().resolve(place), Watch.NONE);
                return new Reply(id()).line("Written to " + place + ".").words("file", place.toString());
            } catch (IOException e) {
                throw cannotWrite(place, e);
            }
        }
    }

    static CliException cannotWrite(Path place, IOException e) {
        return new CliException(place + " cannot be written: the folder is missing, read-only or full.", e);
    }
}
