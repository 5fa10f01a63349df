package org.flexwright.core.recording;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.Watch;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.trial.Attachments;
import org.flexwright.core.trial.Codes;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Provenance;
import org.flexwright.model.Reading;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingChannel;
import org.flexwright.model.RecordingMark;
import org.flexwright.model.Specimen;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/**
 * Recordings in a project: taken in, looked at, marked, and turned into readings. The raw file is kept as it came, with its checksum; what it
 * says is computed anew each time. All changes go through an {@link Edit}.
 */
public final class Recordings {
    /** Two numbers that are the same but for how they were stored. */
    private static final double SAME = 1e-9;

    private Recordings() {
    }

    /**
     * A file that was read through, found fit and copied into the project's folder; {@link Recordings#add(Edit, Specimen, Prepared)} makes a
     * recording of it.
     *
     * @param kind     what reads it
     * @param settings how it is read
     * @param stored   the copy
     * @param data     its figures
     */
    public record Prepared(RecordingKind kind, ImportSettings settings, Attachments.Stored stored, RecordingData data) {
    }

    // taking in

    /**
     * First settings for a file: what the file says, and of the last recording of the kind the details and, where a column has the same heading,
     * its meaning and unit.
     *
     * @param guess what the file says; null for a sound
     */
    public static ImportSettings defaults(Project project, RecordingKind kind, TableGuess guess) {
        Optional<Recording> last = last(project, kind.id());
        EObject details = kind.details() == null ? null : EcoreUtil.create(kind.details());
        Set<String> remembered = new HashSet<>();
        if (details != null && last.isPresent() && last.get().getDetails() != null && last.get().getDetails().eClass() == kind.details()) {
            EObject former = last.get().getDetails();
            for (EStructuralFeature feature : kind.details().getEAllAttributes()) {
                if (former.eIsSet(feature) && !kind.asksAnew().contains(feature.getName())) {
                    details.eSet(feature, former.eGet(feature));
                    remembered.add(feature.getName());
                }
            }
        }
        List<ColumnUse> columns = guess == null ? List.of() : guess.columns().stream().map(c -> asLast(c, guess.columns(), last)).toList();
        return new ImportSettings(guess == null ? null : guess.format(), columns, details, remembered, null, null, null, last.map(Recording::getInstrument).orElse(
                null), null);
    }

    private static ColumnUse asLast(ColumnUse column, List<ColumnUse> all, Optional<Recording> last) {
        if (last.isEmpty() || column.name().isEmpty() || all.stream().filter(c -> c.name().equals(column.name())).count() > 1) {
            return column;
        }
        return last.get().getChannels().stream().filter(c -> column.name().equals(c.getName())).findFirst().map(c -> new ColumnUse(c.getRole(), column.column(), column
                .name(), column.unit() == null ? c.getUnit() : column.unit(), Boolean.TRUE.equals(c.getReversed()))).orElse(column);
    }

    /** The recording of a kind that was added last. */
    public static Optional<Recording> last(Project project, String kind) {
        return all(project).filter(r -> kind.equals(r.getKind())).max(Comparator.comparingInt(Recordings::number));
    }

    private static int number(Recording recording) {
        String digits = recording.getCode() == null ? "" : recording.getCode().replaceAll("\\D", "");
        return digits.isEmpty() || digits.length() > 9 ? 0 : Integer.parseInt(digits);
    }

    /**
     * Reads a file through with these settings and copies it into the project's folder. On any thread; nothing in the project changes. Throws
     * RefusedException with one sentence when something is missing or the file cannot be read so, and ends with CancellationException.
     *
     * @param folder the project's folder
     */
    public static Prepared prepare(Path folder, Path file, RecordingKind kind, ImportSettings settings, Watch watch) {
        if (kind.format() == RecordingFormat.TABLE) {
            List<Message> asked = TableGuess.asked(settings.columns(), kind);
            if (!asked.isEmpty()) {
                throw new RefusedException(asked.get(0));
            }
            settings.columns().forEach(c -> kind.channels().stream().filter(w -> w.role() == c.role()).findFirst().ifPresent(w -> TableFile.unit(c, w)));
        }
        String name = file.getFileName().toString();
        RecordingData data;
        try (InputStream in = Files.newInputStream(file)) {
            if (kind.format() == RecordingFormat.TABLE && Files.size(file) > TableGuess.MOST_BYTES) {
                throw TableFile.refused("file.big", name, Files.size(file) >> 20, TableGuess.MOST_BYTES >> 20);
            }
            data = RecordingFile.read(in, file, name, kind, settings.table(), settings.columns(), watch);
        } catch (IOException e) {
            throw TableFile.refused("file.unreadable", name);
        }
        return new Prepared(kind, settings, Attachments.store(folder, file, AttachmentKind.CURVE, watch), data);
    }

    /** Makes a recording of a prepared file on a piece. */
    public static Recording add(Edit edit, Specimen piece, Prepared prepared) {
        ImportSettings s = prepared.settings();
        Instant at = s.at() == null ? edit.now() : s.at();
        if (at.isAfter(edit.now())) {
            throw TableFile.refused("future", at);
        }
        Recording recording = ModelFactory.eINSTANCE.createRecording();
        recording.setCode(Codes.next("C", 1, all(edit.project()).map(Recording::getCode).toList()));
        recording.setKind(prepared.kind().id());
        recording.setTitle(s.title());
        recording.setAt(at);
        recording.setSession(s.session());
        recording.setInstrument(s.instrument());
        recording.setCycle(s.cycle());
        if (s.table() != null) {
            recording.setSeparator(s.table().separator());
            recording.setDecimalComma(s.table().decimalComma());
            recording.setSkipLines(s.table().skipLines());
        }
        for (ColumnUse use : s.columns()) {
            recording.getChannels().add(channel(use));
        }
        if (s.details() != null) {
            recording.setDetails(EcoreUtil.copy(s.details()));
            Optional<Recording> last = last(edit.project(), prepared.kind().id());
            s.remembered().stream().sorted().forEach(name -> recording.getProvenance().add(Provenances.create(edit, Provenances.DETAILS + name, Origin.COPIED, last.map(
                    r -> say("as.last", name(r))).orElse(null), null)));
        }
        recording.setFile(Attachments.add(edit, prepared.stored(), s.title()));
        edit.add(piece, ModelPackage.Literals.SPECIMEN__RECORDINGS, recording);
        return recording;
    }

    private static RecordingChannel channel(ColumnUse use) {
        RecordingChannel channel = ModelFactory.eINSTANCE.createRecordingChannel();
        channel.setRole(use.role());
        channel.setColumn(use.column());
        channel.setName(use.name().isEmpty() ? null : use.name());
        channel.setUnit(use.unit());
        channel.setReversed(use.reversed() ? Boolean.TRUE : null);
        return channel;
    }

    /** Takes a file in, in one go: {@link #prepare} and {@link #add(Edit, Specimen, Prepared)}. On the model thread; a window prepares on another one. */
    public static Recording add(ProjectSession session, Specimen piece, RecordingKind kind, Path file, ImportSettings settings, Watch watch) {
        if (session.readOnly()) {
            throw new RefusedException(Message.of(Recordings.class, "file.taken", file.getFileName(), session.readOnlyReason()));
        }
        Prepared prepared = prepare(session.folder(), file, kind, settings, watch);
        Recording[] made = new Recording[1];
        session.execute("Add recording " + prepared.stored().fileName(), edit -> made[0] = add(edit, piece, prepared));
        return made[0];
    }

    // looking

    /** Its figures, read anew; see {@link RecordingFile#data}. On the model thread. */
    public static RecordingData data(ProjectSession session, Recording recording, RecordingKind kind, Watch watch) {
        return RecordingFile.of(session.folder(), recording, kind).data(watch);
    }

    /** What the kind makes of it, read anew. On the model thread. */
    public static Look look(ProjectSession session, Recording recording, RecordingKind kind, Watch watch) {
        RecordingFile file = RecordingFile.of(session.folder(), recording, kind);
        return file.look(file.data(watch), watch);
    }

    /** All recordings of a project: on its reference parts, the parts of its trials and its control pieces, in this order. */
    public static Stream<Recording> all(Project project) {
        return Stream.of(project.getReferenceParts(), project.getTrials().stream().flatMap(t -> t.getParts().stream()).toList(), project.getControlPieces()).flatMap(
                List::stream).flatMap(piece -> piece.getRecordings().stream());
    }

    /** The piece it was taken on; null when it is in no project. */
    public static Specimen piece(Recording recording) {
        return recording.eContainer() instanceof Specimen piece ? piece : null;
    }

    /** Code and title. */
    public static String name(Recording recording) {
        return Stream.of(recording.getCode(), recording.getTitle()).filter(Objects::nonNull).reduce((a, b) -> a + " " + b).orElse("");
    }

    /** The mark a person set or left out under this name. */
    public static Optional<RecordingMark> mark(Recording recording, String name) {
        return recording.getMarks().stream().filter(m -> name.equals(m.getName())).findFirst();
    }

    /** Where a person set that mark; empty when nobody did. */
    public static Optional<Double> place(Recording recording, String name) {
        return mark(recording, name).filter(m -> Boolean.TRUE.equals(m.getByHand())).map(RecordingMark::getPosition).filter(Double::isFinite);
    }

    // marks

    /** Sets a mark by hand, in the unit of the axis the marks lie on. */
    public static void mark(Edit edit, Recording recording, String name, double position) {
        if (!Double.isFinite(position)) {
            throw TableFile.refused("mark.number", name);
        }
        RecordingMark mark = markFor(edit, recording, name);
        edit.set(mark, ModelPackage.Literals.RECORDING_MARK__POSITION, position);
        edit.set(mark, ModelPackage.Literals.RECORDING_MARK__BY_HAND, Boolean.TRUE);
    }

    /** Leaves a mark that {@link FoundMark#leavable} out for a reason, or lets it count again when the reason is null. */
    public static void leaveOut(Edit edit, Recording recording, String name, String why) {
        if (why != null && why.isBlank()) {
            throw TableFile.refused("mark.why", name);
        }
        edit.set(markFor(edit, recording, name), ModelPackage.Literals.RECORDING_MARK__LEFT_OUT, why);
        mark(recording, name).filter(m -> why == null && !Boolean.TRUE.equals(m.getByHand())).ifPresent(edit::remove);
    }

    /** Forgets what a person did with a mark: it lies again where it is found. */
    public static void unmark(Edit edit, Recording recording, String name) {
        mark(recording, name).ifPresent(edit::remove);
    }

    private static RecordingMark markFor(Edit edit, Recording recording, String name) {
        return mark(recording, name).orElseGet(() -> {
            RecordingMark made = ModelFactory.eINSTANCE.createRecordingMark();
            made.setName(name);
            edit.add(recording, ModelPackage.Literals.RECORDING__MARKS, made);
            return made;
        });
    }

    /** Leaves a whole recording out for a reason, and takes away what was kept of it; or lets it count again when the reason is null. */
    public static void leaveOut(Edit edit, Recording recording, String why) {
        if (why != null && why.isBlank()) {
            throw TableFile.refused("mark.why", name(recording));
        }
        edit.set(recording, ModelPackage.Literals.RECORDING__LEFT_OUT, why);
        if (why != null) {
            kept(recording).forEach(edit::remove);
        }
    }

    // keeping

    /** What was kept of a recording as readings. */
    public static List<Measurement> kept(Recording recording) {
        Specimen piece = piece(recording);
        return piece == null ? List.of() : piece.getMeasurements().stream().filter(m -> m.getRecording() == recording).toList();
    }

    /** What was kept of one result: readings of its property that came from the recording. */
    public static List<Reading> kept(Recording recording, RecordingResult result) {
        return result.property() == null ? List.of() : kept(recording).stream().filter(m -> m.getKey() != null && result.property().equals(m.getKey().getProperty()))
                .flatMap(m -> m.getReadings().stream()).filter(reading -> reading.getValue() != null).toList();
    }

    /** True when one of the readings is the result as it is now; false when a mark was moved or something else changed since it was kept. */
    public static boolean stands(RecordingResult result, PropertyDef property, List<Reading> kept) {
        double now = Units.find(property.kind(), result.unit()).map(unit -> unit.toCanonical(result.value())).orElse(Double.NaN);
        return kept.stream().anyMatch(reading -> Math.abs(reading.getValue() - now) <= SAME * Math.abs(now));
    }

    /**
     * Keeps results as readings of the piece, measured, with their source and band: one measurement a property, its results are its readings.
     * What was kept of the same property of this recording before is replaced. Results that are no reading of a property are passed over.
     *
     * @param results    which ones
     * @param conditions spot, support and the like, copied to each; may be null
     */
    public static List<Measurement> keep(Edit edit, Recording recording, List<RecordingResult> results, PropertyCatalogue properties, PropertyKey conditions) {
        if (recording.getLeftOut() != null) {
            throw TableFile.refused("keep.leftOut", name(recording), recording.getLeftOut());
        }
        Map<String, List<RecordingResult>> byProperty = new LinkedHashMap<>();
        results.stream().filter(r -> r.property() != null).forEach(r -> byProperty.computeIfAbsent(r.property(), p -> new ArrayList<>()).add(r));
        if (byProperty.isEmpty()) {
            throw TableFile.refused("keep.none", name(recording));
        }
        List<Measurement> made = new ArrayList<>();
        byProperty.forEach((id, of) -> {
            PropertyDef property = properties.find(id).orElseThrow(() -> TableFile.refused("keep.property", of.getFirst().title(), id));
            kept(recording).stream().filter(m -> id.equals(m.getKey().getProperty())).toList().forEach(edit::remove);
            made.add(keep(edit, recording, of, property, conditions));
        });
        return made;
    }

    private static Measurement keep(Edit edit, Recording recording, List<RecordingResult> results, PropertyDef property, PropertyKey conditions) {
        Specimen piece = piece(recording);
        PropertyKey key = conditions == null ? ModelFactory.eINSTANCE.createPropertyKey() : EcoreUtil.copy(conditions);
        key.setProperty(property.id());
        if (conditions == null) {
            key.setPieceKind(piece.getPieceKind());
        }
        Map<Reading, RecordingResult> readings = new LinkedHashMap<>();
        for (RecordingResult result : results) {
            Reading reading = ModelFactory.eINSTANCE.createReading();
            reading.setValue(unit(result, property).toCanonical(result.value()));
            reading.setCensoring(result.censoring());
            reading.setAt(recording.getAt());
            readings.put(reading, result);
        }
        Measurement measurement = Measurements.add(edit, piece, key, List.copyOf(readings.keySet()), recording.getSession(), recording.getInstrument(), recording.getAt());
        measurement.setRecording(recording);
        readings.forEach((reading, result) -> {
            Provenance from = Provenances.keep(edit, reading, ModelPackage.Literals.READING__VALUE, Origin.MEASURED, say("kept.from", name(recording), recording.getFile()
                    .getFileName(), result.source().display()), null);
            if (result.halfWidth() != null) {
                edit.set(from, ModelPackage.Literals.PROVENANCE__UNCERTAINTY, result.halfWidth() * unit(result, property).factor());
            }
        });
        return measurement;
    }

    private static Unit unit(RecordingResult result, PropertyDef property) {
        return Units.find(property.kind(), result.unit()).orElseThrow(() -> TableFile.refused("keep.unit", result.title(), result.unit(), property.kind().withArticle()));
    }

    private static String say(String key, Object... args) {
        return Message.of(Recordings.class, key, args).text();
    }
}
