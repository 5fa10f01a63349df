package org.flexwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.report.PackFiles;
import org.flexwright.report.Report;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The whole record as one file. */
@Command(name = "report", description = "Write the whole record as one HTML file, readable without the program.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright report --project dome.flexwright --out dome.html" })
final class ReportCall extends ProjectCall {
    @Option(names = "--out", paramLabel = "FILE", description = "The file to write; report.html when left out. A file that is there is replaced.")
    Path out = Path.of("report.html");

    @Override
    protected boolean writes() {
        return false;
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        String html = Report.html(session.project(), services.registries(), session.folder(), services.clock().instant(), services.programVersion());
        Path target = services.workingFolder().resolve(out).toAbsolutePath();
        try {
            PackFiles.put(Map.of(target, html.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new CliException("The report cannot be written to " + out + ": the folder is missing, read-only or full.", e);
        }
        Reply reply = new Reply("report").words("file", out.toString());
        return reply.line("Report written to " + out + ".");
    }
}
