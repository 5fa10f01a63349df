package org.flexwright.workbench.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A project worked on before, as its folder shows it without being opened.
 *
 * @param folder  its folder
 * @param title   its title; the folder's name when the file does not say
 * @param touched when something was last written
 * @param unsaved true when its journal is newer than its saved file: edits wait there
 * @param picture its first photo, if it has one
 */
record Recent(Path folder, String title, Instant touched, boolean unsaved, Optional<Path> picture) {

    /** Looks at a folder; empty when there is no project any more. Does not touch anything; may be called off the screen's thread. */
    static Optional<Recent> of(Path folder) {
        Path file = folder.resolve("project.xmi");
        Path journal = folder.resolve("journal").resolve("edits.jsonl");
        try {
            Instant saved = Files.getLastModifiedTime(file).toInstant();
            Instant edited = Files.isRegularFile(journal) && Files.size(journal) > 0 ? Files.getLastModifiedTime(journal).toInstant() : saved;
            return Optional.of(new Recent(folder, title(folder, file), edited.isAfter(saved) ? edited : saved, edited.isAfter(saved), picture(folder)));
        } catch (IOException e) {
            return Optional.empty(); // gone, or not ours to read: it is simply not offered
        }
    }

    private static String title(Path folder, Path file) throws IOException {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try (var in = Files.newInputStream(file)) {
            XMLStreamReader reader = factory.createXMLStreamReader(in);
            reader.nextTag();
            String title = reader.getAttributeValue(null, "title");
            reader.close();
            return title == null || title.isBlank() ? folder.getFileName().toString() : title;
        } catch (XMLStreamException e) {
            return folder.getFileName().toString(); // opening it will say what is wrong
        }
    }

    private static Optional<Path> picture(Path folder) throws IOException {
        Path photos = folder.resolve("photos");
        if (!Files.isDirectory(photos)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(photos)) {
            return files.filter(f -> f.getFileName().toString().toLowerCase(Locale.ROOT).matches(".*\\.(png|jpe?g)")).sorted().findFirst();
        }
    }
}
