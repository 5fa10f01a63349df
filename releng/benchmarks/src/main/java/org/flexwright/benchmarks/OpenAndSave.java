package org.flexwright.benchmarks;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.ref.Reference;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.model.ModelPackage;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Opens and saves a project again and again, and in between does the least that must be done with the same bytes. */
final class OpenAndSave {

    private static final int WARM_UP = 4;
    private static final int RUNS = 11;

    private final ProjectStore store;
    private final Path folder;
    private final Path file;

    /** Reading the file and parsing it, with nobody listening. */
    final Series parse = new Series();
    /** Opening the project for editing. */
    final Series open = new Series();
    /** Writing the same bytes to a new file, without waiting for the disk. */
    final Series write = new Series();
    /** The same, until the disk has them: what a save must do too. */
    final Series forced = new Series();
    /** Saving the project. */
    final Series save = new Series();

    OpenAndSave(ProjectStore store, Path folder) {
        this.store = store;
        this.folder = folder;
        this.file = folder.resolve("project.xmi");
    }

    void run() throws IOException, ParserConfigurationException, SAXException {
        for (int i = 0; i < WARM_UP; i++) {
            once(new Series(), new Series(), new Series(), new Series(), new Series());
        }
        for (int i = 0; i < RUNS; i++) {
            once(parse, open, write, forced, save);
        }
    }

    private void once(Series parsed, Series opened, Series written, Series held, Series saved)
            throws IOException, ParserConfigurationException, SAXException {
        parsed.add(parse());
        System.gc(); // nobody pays for what another one left
        long begun = System.nanoTime();
        try (ProjectSession session = store.open(folder)) {
            opened.add(System.nanoTime() - begun);
            byte[] bytes = Files.readAllBytes(file);
            written.add(write(bytes, false));
            held.add(write(bytes, true));
            String note = "run " + begun;
            session.execute("note", edit -> edit.set(edit.project(), ModelPackage.Literals.ENTRY__NOTE, note));
            System.gc();
            begun = System.nanoTime();
            session.save();
            saved.add(System.nanoTime() - begun);
        }
    }

    private long parse() throws IOException, ParserConfigurationException, SAXException {
        System.gc();
        long begun = System.nanoTime();
        SAXParser parser = SAXParserFactory.newDefaultNSInstance().newSAXParser();
        parser.parse(new ByteArrayInputStream(Files.readAllBytes(file)), new DefaultHandler());
        return System.nanoTime() - begun;
    }

    private long write(byte[] bytes, boolean force) throws IOException {
        Path beside = folder.resolveSibling("plain.bin");
        long begun = System.nanoTime();
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            if (force) {
                channel.force(true);
            }
        }
        long taken = System.nanoTime() - begun;
        Files.delete(beside);
        return taken;
    }

    /** What the open project holds of the memory, in bytes. */
    long held() {
        long before = used();
        try (ProjectSession session = store.openReadOnly(folder)) {
            long held = used() - before;
            Reference.reachabilityFence(session);
            return held;
        }
    }

    private static long used() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
