package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.flexwright.core.Message;
import org.flexwright.model.Project;

/** Makes the edits again that were made after the last save. */
final class Replay {
    private final Packages packages;
    private final Project project;
    private final ModelIndex index;
    private final String base;
    private final Disk disk;
    private final Path file;
    private final List<Message> notices = new ArrayList<>();
    private final Set<String> missing = new LinkedHashSet<>();
    private byte[] bytes = new byte[0];
    private long goodBytes;
    private boolean lineOpen;
    private boolean setAside;
    private long lastNumber;
    private Message needsPlugin;

    Replay(Packages packages, Project project, ModelIndex index, String base, Disk disk, Path file) {
        this.packages = packages;
        this.project = project;
        this.index = index;
        this.base = base;
        this.disk = disk;
        this.file = file;
        this.lastNumber = project.getJournalSeq();
    }

    /** Reads the journal and carries out what the saved file does not hold yet; stops at the first line that cannot be trusted. */
    void run() throws IOException {
        if (!disk.exists(file)) {
            return;
        }
        bytes = disk.read(file);
        Journal.Reading reading = Journal.read(bytes);
        goodBytes = reading.goodBytes();
        lineOpen = reading.lineOpen();
        if (reading.damagedAt() > 0) {
            setAside = !reading.torn();
            notices.add(Message.of(ProjectStore.class, reading.torn() ? "journal.torn" : "journal.damaged", file, reading.damagedAt()));
        }
        int came = 0;
        int at = 0;
        for (Journal.Line line : reading.lines()) {
            at++;
            if (line.number() <= project.getJournalSeq()) {
                continue;
            }
            if (line.number() != lastNumber + 1 || !line.bases().contains(base)) {
                stopBefore(reading.lines(), at, "journal.otherBase");
                break;
            }
            try {
                missing.addAll(ChangeText.apply(packages, index, line.body()));
            } catch (UnreadableException e) {
                if (e.what().key().equals(ChangeText.ABSENT)) {
                    needsPlugin = Message.of(ProjectStore.class, "journal.needsPlugin", e.what().args().getFirst());
                    break;
                }
                stopBefore(reading.lines(), at, "journal.damaged");
                break;
            } catch (RuntimeException e) {
                stopBefore(reading.lines(), at, "journal.damaged");
                break;
            }
            lastNumber = line.number();
            came++;
        }
        if (came > 0) {
            notices.addFirst(Message.of(ProjectStore.class, "journal.back", Integer.toString(came)));
        }
    }

    private void stopBefore(List<Journal.Line> lines, int at, String key) {
        goodBytes = 0;
        for (int i = 0; i < at - 1; i++) {
            goodBytes = endOfLine((int) goodBytes);
        }
        lineOpen = false;
        setAside = true;
        notices.clear();
        notices.add(Message.of(ProjectStore.class, key, file, at));
    }

    private long endOfLine(int from) {
        int i = from;
        while (bytes[i] != '\n') {
            i++;
        }
        return i + 1L;
    }

    /** The journal to go on with; what could not be trusted is put aside beside it first. */
    Journal journal(Instant now) throws IOException {
        if (setAside) {
            Path aside = file.resolveSibling("aside-" + now.toString().replace(":", "") + ".jsonl");
            try (Disk.Sink sink = disk.create(aside)) {
                sink.write(bytes);
                sink.force();
            }
            notices.add(Message.of(ProjectStore.class, "journal.aside", aside));
        }
        return new Journal(disk, file, goodBytes, lineOpen);
    }

    /** Why the journal can only be gone on with when a plugin is here; null when it can. */
    Message needsPlugin() {
        return needsPlugin;
    }

    long lastNumber() {
        return lastNumber;
    }

    List<Message> notices() {
        return notices;
    }

    /** Namespaces of details in the journal whose package is not here. */
    Set<String> missing() {
        return missing;
    }
}
