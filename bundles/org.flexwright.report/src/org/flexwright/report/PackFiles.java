package org.flexwright.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BooleanSupplier;

import org.flexwright.report.doc.Document;
import org.flexwright.report.doc.HtmlFile;
import org.flexwright.report.pdf.PdfFile;

/** Writes a document as one HTML file and one PDF: both beside their place first, then moved, so that nothing half is ever there. */
public final class PackFiles {
    private PackFiles() {
    }

    /** Somebody asked to stop; nothing was written. */
    public static final class Stopped extends Exception {
        private static final long serialVersionUID = 1L;

        Stopped() {
            super("Stopped; nothing was written.");
        }
    }

    /**
     * Writes both files; those that are there are replaced.
     *
     * @param folder  made when it is not there
     * @param name    name without ending; signs that do not fit into file names become dashes
     * @param stopped asked between the stages; the answer true ends the work before anything is moved into place
     * @return the HTML file and the PDF
     */
    public static List<Path> write(Document document, Path folder, String name, BooleanSupplier stopped) throws IOException, Stopped {
        String plain = plain(name);
        Map<Path, byte[]> files = new LinkedHashMap<>();
        check(stopped);
        files.put(folder.resolve(plain + ".html"), HtmlFile.write(document).getBytes(StandardCharsets.UTF_8));
        check(stopped);
        files.put(folder.resolve(plain + ".pdf"), PdfFile.write(document));
        check(stopped);
        Files.createDirectories(folder);
        put(files);
        return List.copyOf(files.keySet());
    }

    /** Writes files beside their places, then moves them all; those that are there are replaced. Nothing half stays when it fails. */
    public static void put(Map<Path, byte[]> files) throws IOException {
        Map<Path, Path> beside = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, byte[]> file : files.entrySet()) {
                Path part = file.getKey().resolveSibling("." + file.getKey().getFileName() + ".part");
                beside.put(part, file.getKey());
                Files.write(part, file.getValue());
            }
            for (Map.Entry<Path, Path> move : beside.entrySet()) {
                Files.move(move.getKey(), move.getValue(), StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            for (Path part : beside.keySet()) {
                Files.deleteIfExists(part);
            }
        }
    }

    /** A text as it may stand in a file name. */
    public static String plain(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}._-]+", "-").replaceAll("^[.-]+|[.-]+$", "");
        return plain.isEmpty() ? "pack" : plain.length() > 80 ? plain.substring(0, 80) : plain;
    }

    private static void check(BooleanSupplier stopped) throws Stopped {
        if (stopped.getAsBoolean()) {
            throw new Stopped();
        }
    }
}
