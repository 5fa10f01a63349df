package org.flexwright.core.recording;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Watch;
import org.flexwright.core.rubber.StretchCurve;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.trial.Attachments;
import org.flexwright.model.Attachment;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingChannel;

/**
 * A recording of a project as it was at one moment, to be read and looked at on any thread.
 *
 * @param file      the raw file inside the project folder
 * @param fileName  its own name, for sentences
 * @param sha256    what its checksum was when it came in
 * @param recording a copy with its settings, details and marks; in no project
 * @param kind      what reads it
 */
public record RecordingFile(Path file, String fileName, String sha256, Recording recording, RecordingKind kind) {

    /** As the project has it now; on the model thread. */
    public static RecordingFile of(Path folder, Recording recording, RecordingKind kind) {
        Attachment raw = recording.getFile();
        if (raw == null || raw.getPath() == null) {
            throw TableFile.refused("file.nowhere", Recordings.name(recording));
        }
        return new RecordingFile(folder.resolve(raw.getPath()), raw.getFileName(), raw.getSha256(), EcoreUtil.copy(recording), kind);
    }

    /** The same file under other settings, marks or details. */
    public RecordingFile with(Recording other) {
        return new RecordingFile(file, fileName, sha256, EcoreUtil.copy(other), kind);
    }

    /**
     * The figures. Throws RefusedException with one sentence when the raw file is gone, is no longer what came in, or cannot be read with these
     * settings.
     */
    public RecordingData data(Watch watch) {
        MessageDigest digest = Attachments.digest();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            RecordingData data;
            try {
                data = read(in, file, fileName, kind, table(), columns(), watch);
            } catch (RefusedException e) {
                // a file that was changed may not be readable any more: that it was changed is what matters then
                requireUnchanged(in, digest);
                throw e;
            }
            requireUnchanged(in, digest);
            return data;
        } catch (IOException e) {
            throw TableFile.refused("file.gone", Recordings.name(recording), file.getFileName());
        }
    }

    private void requireUnchanged(InputStream in, MessageDigest digest) throws IOException {
        in.transferTo(OutputStream.nullOutputStream());
        if (!HexFormat.of().formatHex(digest.digest()).equals(sha256)) {
            throw TableFile.refused("file.changed", Recordings.name(recording), fileName);
        }
    }

    /**
     * What the kind makes of it. Ends with CancellationException when the watch was cancelled. Throws RefusedException with one sentence when the
     * kind breaks off, which it never should: a mistake in one plugin keeps nobody from the rest of the project.
     */
    public Look look(RecordingData data, Watch watch) {
        return guarded(() -> Objects.requireNonNull(kind.look(recording, data, watch), "look"));
    }

    /** The loading branch for fits of rubber laws, as the kind gives it; empty when it gives none. Otherwise as {@link #look}. */
    public Optional<StretchCurve> curve(RecordingData data, Watch watch) {
        return guarded(() -> kind.curve(recording, data, watch));
    }

    private <T> T guarded(Supplier<T> asked) {
        try {
            return asked.get();
        } catch (RefusedException | CancellationException e) {
            throw e;
        } catch (RuntimeException | LinkageError e) {
            String said = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            RefusedException refused = TableFile.refused("look.broken", Recordings.name(recording), kind.id(), said);
            refused.initCause(e);
            throw refused;
        }
    }

    private TableFormat table() {
        return kind.format() == RecordingFormat.SOUND ? null
                : new TableFormat(recording.getSeparator() == null ? "," : recording.getSeparator(), Boolean.TRUE.equals(recording.getDecimalComma()), recording
                        .getSkipLines() == null ? 0 : recording.getSkipLines());
    }

    private List<ColumnUse> columns() {
        return recording.getChannels().stream().filter(c -> c.getColumn() != null).map(RecordingFile::use).toList();
    }

    private static ColumnUse use(RecordingChannel c) {
        return new ColumnUse(c.getRole(), c.getColumn(), c.getName() == null ? "" : c.getName(), c.getUnit() == null ? "" : c.getUnit(), Boolean.TRUE.equals(c
                .getReversed()));
    }

    /** Reads a file of either sort from its beginning. A sound is asked for by the kind's own details, so all of its channels are given. */
    static RecordingData read(InputStream in, Path file, String fileName, RecordingKind kind, TableFormat table, List<ColumnUse> columns, Watch watch) throws IOException {
        return switch (kind.format()) {
            case TABLE -> TableFile.read(in, fileName, Files.size(file), table, columns, kind.channels(), watch);
            case SOUND -> SoundFile.open(file).read(watch);
        };
    }
}
