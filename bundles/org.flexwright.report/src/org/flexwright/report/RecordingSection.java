package org.flexwright.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.Watch;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Names;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingFile;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.Project;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingChannel;
import org.flexwright.model.RecordingMark;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Tone;

/** Curves and sounds of pieces: drawn, with what was taken from them. */
final class RecordingSection {
    /** Recordings that are drawn; the rest is named. */
    private static final int MOST = 12;
    /** Longer files are not read for a report. */
    private static final long MOST_BYTES = 32L << 20;
    private static final int POINTS = 500;

    private final Registries registries;
    private final Path folder;
    private final Blocks blocks;

    private RecordingSection(Registries registries, Path folder, Blocks blocks) {
        this.registries = registries;
        this.folder = folder;
        this.blocks = blocks;
    }

    static void write(Project project, Registries registries, Path folder, Blocks blocks) {
        List<Recording> all = Recordings.all(project).toList();
        if (all.isEmpty()) {
            return;
        }
        blocks.heading(2, Say.it("recordings"));
        RecordingSection section = new RecordingSection(registries, folder, blocks);
        all.stream().limit(MOST).forEach(section::one);
        if (all.size() > MOST) {
            blocks.say(Say.it("recording.more", all.size() - MOST, all.stream().skip(MOST).map(Recordings::name).collect(Collectors.joining("; "))), Tone.QUIET);
        }
    }

    private void one(Recording recording) {
        Optional<RecordingKind> kind = registries.findRecordingKind(recording.getKind());
        blocks.heading(3, Say.it("recording.of", Names.path(Recordings.piece(recording)), kind.map(RecordingKind::title).orElse(recording.getKind()), Recordings.name(recording)));
        if (recording.getFile() != null) {
            blocks.say(Say.it("recording.file", recording.getFile().getFileName(), recording.getFile().getSha256()), Tone.QUIET);
        }
        if (recording.getLeftOut() != null) {
            blocks.say(Say.it("recording.left", recording.getLeftOut()));
        }
        asSaid(recording);
        if (kind.isEmpty()) {
            blocks.say(Say.it("recording.noPlugin"), Tone.QUIET);
            return;
        }
        try {
            RecordingFile file = RecordingFile.of(folder, recording, kind.get());
            if (isLong(file.file())) {
                blocks.say(Say.it("recording.long"), Tone.QUIET);
            } else {
                seen(file.look(file.data(Watch.NONE), Watch.NONE));
            }
        } catch (RefusedException e) {
            // gone or changed since: the report says so and goes on
            blocks.say(e.getMessage());
        }
    }

    /** How it is read and what a person did with its marks. */
    private void asSaid(Recording recording) {
        List<Block.Cell> lines = new ArrayList<>();
        if (recording.getSeparator() != null) {
            lines.add(Block.Cell.of(Say.it("recording.parted", recording.getSeparator())));
        }
        for (RecordingChannel channel : recording.getChannels()) {
            lines.add(Block.Cell.of(Say.it("recording.column", String.valueOf(channel.getColumn()), Objects.toString(channel.getName(), ""), Names.word(channel.getRole()), Objects.toString(channel
                    .getUnit(), ""))));
        }
        for (RecordingMark mark : recording.getMarks()) {
            if (mark.getPosition() != null && Boolean.TRUE.equals(mark.getByHand())) {
                lines.add(Block.Cell.of(Say.it("recording.mark", mark.getName(), FieldText.digits(mark.getPosition()))));
            }
            if (mark.getLeftOut() != null) {
                lines.add(Block.Cell.of(Say.it("recording.markOut", mark.getName(), mark.getLeftOut())));
            }
        }
        if (!lines.isEmpty()) {
            blocks.add(new Block.Items(lines));
        }
    }

    private static boolean isLong(Path file) {
        try {
            return Files.size(file) > MOST_BYTES;
        } catch (IOException e) {
            return false;
        }
    }

    private void seen(Look look) {
        look.plots().stream().limit(2).forEach(plot -> blocks.add(Drawings.plot(plot.whole(POINTS))));
        List<Block.Cell> lines = new ArrayList<>();
        for (RecordingResult result : look.results()) {
            lines.add(Block.Cell.of(Say.it("recording.result", result.title(), result.words(), result.source().display())));
        }
        if (!lines.isEmpty()) {
            blocks.add(new Block.Items(lines));
        }
        look.remarks().forEach(remark -> blocks.say(remark.message().text(), Tone.QUIET));
    }
}
