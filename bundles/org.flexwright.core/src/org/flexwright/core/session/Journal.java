package org.flexwright.core.session;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * The append-only file of edits since the last save: one JSON line each, numbered, with the wall clock and a CRC-32 of the line before
 * it. A line is on the medium before the edit counts.
 */
final class Journal implements Closeable {
    static final String FOLDER = "journal";
    static final String FILE = "edits.jsonl";
    private static final String CRC = ",\"crc\":\"";
    /** Eight digits, quote and brace behind {@link #CRC}. */
    private static final int CRC_TAIL = 10;

    private final Disk disk;
    private final Path file;
    private Disk.Sink sink;
    private long length;
    private boolean lineOpen;
    private boolean tailUnknown;

    /** A journal whose first {@code length} bytes are good; {@code lineOpen}: the last line lacks its end. */
    Journal(Disk disk, Path file, long length, boolean lineOpen) {
        this.disk = disk;
        this.file = file;
        this.length = length;
        this.lineOpen = lineOpen;
    }

    /**
     * A line.
     *
     * @param number 1, 2, 3 ... over the life of the project
     * @param at     when
     * @param bases  which saved files it builds on, see {@link #base}
     * @param name   name of the step
     * @param body   what was changed, see {@link ChangeText}
     */
    record Line(long number, Instant at, List<String> bases, String name, JsonObject body) {
        byte[] bytes() {
            JsonObject o = new JsonObject();
            o.addProperty("n", number);
            o.addProperty("at", at.toString());
            JsonArray b = new JsonArray();
            bases.forEach(b::add);
            o.add("base", b);
            o.addProperty("name", name);
            body.entrySet().forEach(e -> o.add(e.getKey(), e.getValue()));
            String text = o.toString();
            return (text.substring(0, text.length() - 1) + CRC + crc(text.getBytes(StandardCharsets.UTF_8)) + "\"}\n").getBytes(StandardCharsets.UTF_8);
        }
    }

    /**
     * A journal read.
     *
     * @param lines     the good lines from the start
     * @param goodBytes how many bytes they take
     * @param lineOpen  the last good line lacks its end
     * @param damagedAt number of the first line that is damaged, 0 when none is
     * @param torn      what is damaged is only the end of the last line: an edit that was being written when the program ended
     */
    record Reading(List<Line> lines, long goodBytes, boolean lineOpen, int damagedAt, boolean torn) {
    }

    /** Reads until the first line that is damaged. */
    static Reading read(byte[] bytes) {
        List<Line> lines = new ArrayList<>();
        int from = 0;
        while (from < bytes.length) {
            int to = from;
            while (to < bytes.length && bytes[to] != '\n') {
                to++;
            }
            Line line = line(new String(bytes, from, to - from, StandardCharsets.UTF_8));
            if (line == null || !lines.isEmpty() && line.number != lines.getLast().number + 1) {
                return new Reading(lines, from, false, lines.size() + 1, to == bytes.length);
            }
            lines.add(line);
            if (to == bytes.length) {
                return new Reading(lines, to, true, 0, false);
            }
            from = to + 1;
        }
        return new Reading(lines, from, false, 0, false);
    }

    private static Line line(String text) {
        int tail = text.length() - CRC.length() - CRC_TAIL;
        if (tail < 1 || !text.startsWith(CRC, tail)) {
            return null;
        }
        String body = text.substring(0, tail) + "}";
        String crc = text.substring(tail + CRC.length(), text.length() - 2);
        if (!crc(body.getBytes(StandardCharsets.UTF_8)).equals(crc)) {
            return null;
        }
        try {
            JsonObject o = JsonParser.parseString(body).getAsJsonObject();
            List<String> bases = new ArrayList<>();
            o.getAsJsonArray("base").forEach(b -> bases.add(b.getAsString()));
            return new Line(o.get("n").getAsLong(), Instant.parse(o.get("at").getAsString()), bases, o.get("name").getAsString(), o);
        } catch (RuntimeException notOurs) {
            // whatever a right checksum stands behind, it is no line of ours
            return null;
        }
    }

    private static String crc(byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return String.format(Locale.ROOT, "%08x", crc.getValue());
    }

    /** Short name of a saved file's exact content, so that a journal is never replayed on another state. */
    static String base(byte[] savedFile) {
        return crc(savedFile) + "-" + savedFile.length;
    }

    /** Writes a line through to the medium; when that fails the file holds what it held before, or is put right before the next line. */
    void append(Line line) throws IOException {
        if (sink == null) {
            disk.makeFolder(file.getParent());
            sink = disk.append(file);
            tailUnknown = true;
        }
        if (tailUnknown) {
            sink.truncate(length);
            tailUnknown = false;
        }
        byte[] bytes = line.bytes();
        try {
            if (lineOpen) {
                sink.write(new byte[] { '\n' });
            }
            sink.write(bytes);
            sink.force();
        } catch (IOException e) {
            tailUnknown = true;
            takeBack(e);
            throw e;
        }
        length += bytes.length + (lineOpen ? 1 : 0);
        lineOpen = false;
    }

    private void takeBack(IOException cause) {
        try {
            sink.truncate(length);
            tailUnknown = false;
        } catch (IOException e) {
            // tried again before the next line
            cause.addSuppressed(e);
        }
    }

    /** Forgets all lines: they are in the saved file. */
    void clear() throws IOException {
        length = 0;
        lineOpen = false;
        tailUnknown = true;
        if (sink == null && !disk.exists(file)) {
            return;
        }
        if (sink == null) {
            sink = disk.append(file);
        }
        sink.truncate(0);
        sink.force();
        tailUnknown = false;
    }

    boolean isEmpty() {
        return length == 0;
    }

    @Override
    public void close() throws IOException {
        if (sink != null) {
            sink.close();
        }
    }
}
