package org.flexwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Manual;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The manual pages of all calculations, made from their descriptions. */
@Command(name = "manual", description = "Write the manual page of every calculation into a folder, with a page that lists them.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright calc manual --out manual" })
final class ManualCall extends Call {
    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8"><title>%s</title>
            <style>body{font:15px/1.45 system-ui,sans-serif;color:#1B2126;max-width:70rem;margin:1.5rem auto;padding:0 1.5rem}
            table{border-collapse:collapse;font-size:.93em}th,td{border:1px solid #C9CED3;padding:.3em .55em;vertical-align:top;text-align:left}
            th{background:#F4F5F6}p{max-width:80ch}</style></head>
            <body>
            """;
    private static final String INDEX = "index.html";

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "The folder; it is made when it is not there. Pages that are there are replaced.")
    Path out;

    @Override
    protected Reply reply(CliServices services) {
        Path folder = services.workingFolder().resolve(out);
        Reply reply = new Reply(id()).input("out", out.toString());
        List<CalculationInfo> listed = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            for (Calculation<?, ?> calculation : services.registries().calculations()) {
                CalculationInfo info = calculation.info();
                write(folder, info.id() + ".html", page(info.title(), "<p><a href=\"" + INDEX + "\">All calculations</a></p>\n" + Manual.page(calculation)));
                reply.item(Map.of("calculation", info.id(), "file", info.id() + ".html"));
                listed.add(info);
            }
            write(folder, INDEX, index(listed));
        } catch (IOException e) {
            throw new CliException("The manual cannot be written to " + out + ": it is no folder, read-only or full.", e);
        }
        reply.result("pages", Value.number(listed.size(), "1", "the plugins that are here"));
        return reply.line(Words.count(listed.size(), "page") + " and " + INDEX + " written to " + out + ".");
    }

    private static String index(List<CalculationInfo> listed) {
        StringBuilder list = new StringBuilder("<h1>Calculations</h1>\n<ul>\n");
        listed.forEach(info -> list.append("<li><a href=\"").append(escape(info.id())).append(".html\">").append(escape(info.title())).append("</a> <code>")
                .append(escape(info.id())).append("</code></li>\n"));
        return page("Calculations", list.append("</ul>\n").toString());
    }

    private static String page(String title, String body) {
        return HEAD.formatted(escape(title)) + body + "</body></html>\n";
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }

    private static void write(Path folder, String name, String html) throws IOException {
        Files.writeString(folder.resolve(name), html, StandardCharsets.UTF_8);
    }
}
