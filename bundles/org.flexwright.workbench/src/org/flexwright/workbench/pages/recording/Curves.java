package org.flexwright.workbench.pages.recording;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.naming.Names;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingFile;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recording;
import org.flexwright.workbench.project.LongJob;

/** What recordings say: read off the screen's thread, kept while they are shown, read or looked at anew when something they rest on changed. */
final class Curves {

    private final Display display;
    private final Registries registries;
    private final ProjectSession session;
    private final Runnable listener;
    private final Map<Recording, Held> held = new IdentityHashMap<>();

    /**
     * What there is of a recording.
     *
     * @param look    null while it is being read and when it cannot be read
     * @param trouble one sentence when it cannot be read, else empty
     * @param busy    whether it is being read
     */
    record State(Look look, String trouble, boolean busy) {
        private static final State NOTHING = new State(null, "", false);
    }

    private static final class Held {
        private String readAs;
        private String lookedAs;
        private RecordingData data;
        private State state = State.NOTHING;
        private LongJob<Read> job;
    }

    private record Read(RecordingData data, Look look) {
    }

    /** @param listener told on the screen's thread when something has come */
    Curves(Display display, ProjectSession session, Registries registries, Runnable listener) {
        this.display = display;
        this.session = session;
        this.registries = registries;
        this.listener = listener;
    }

    /** From now on those are shown and no others; what changed is read again. */
    void want(Collection<Recording> shown) {
        for (Recording gone : new ArrayList<>(held.keySet())) {
            if (!shown.contains(gone)) {
                cancel(held.remove(gone));
            }
        }
        shown.forEach(recording -> read(recording, held.computeIfAbsent(recording, r -> new Held())));
    }

    /** The figures of a recording that has just been read through; they need not be read again. */
    void given(Recording recording, RecordingData data) {
        Held one = held.computeIfAbsent(recording, r -> new Held());
        if (one.job != null) { // it was seen by the page before
            cancel(one);
            one.lookedAs = null;
        }
        one.data = data;
        one.readAs = signature(recording, true);
    }

    /** What there is of one; nothing for those that are not wanted. */
    State of(Recording recording) {
        Held one = held.get(recording);
        return one == null ? State.NOTHING : one.state;
    }

    /** Ends all reading. */
    void close() {
        held.values().forEach(Curves::cancel);
        held.clear();
    }

    private static void cancel(Held one) {
        if (one.job != null) {
            one.job.cancel();
            one.job = null;
        }
    }

    private void read(Recording recording, Held one) {
        String readAs = signature(recording, true);
        String lookedAs = signature(recording, false);
        if (lookedAs.equals(one.lookedAs)) {
            return;
        }
        cancel(one);
        if (!readAs.equals(one.readAs)) {
            one.data = null;
        }
        one.readAs = readAs;
        one.lookedAs = lookedAs;
        RecordingKind kind = registries.findRecordingKind(Objects.toString(recording.getKind(), "")).orElse(null);
        if (kind == null) {
            one.state = new State(null, "The plugin that knows " + recording.getKind() + " is not here: the file is kept, but it cannot be drawn.", false);
            return;
        }
        Path folder = session.folder();
        RecordingFile file;
        try {
            file = RecordingFile.of(folder, recording, kind);
        } catch (RefusedException e) {
            one.state = new State(null, e.getMessage(), false);
            return;
        }
        one.state = new State(one.state.look(), "", true);
        RecordingData before = one.data;
        LongJob<Read>[] mine = newJobs();
        mine[0] = new LongJob<>("Reading " + Names.of(recording), display, watch -> {
            RecordingData data = before == null ? file.data(watch) : before;
            return new Read(data, file.look(data, watch));
        }, read -> take(one, mine[0], read, ""), why -> take(one, mine[0], new Read(null, null), why));
        one.job = mine[0];
        mine[0].schedule();
    }

    @SuppressWarnings("unchecked")
    private static LongJob<Read>[] newJobs() {
        return new LongJob[1];
    }

    private void take(Held one, LongJob<Read> job, Read read, String trouble) {
        if (one.job != job) {
            return; // something else is wanted by now
        }
        one.job = null;
        one.data = read.data();
        one.state = new State(read.look(), trouble, false);
        listener.run();
    }

    /** All that reading the file rests on, or all that looking at it does. */
    static String signature(Recording recording, boolean readingOnly) {
        StringBuilder words = new StringBuilder();
        if (readingOnly) {
            words.append(recording.getKind()).append('|').append(recording.getSeparator()).append('|').append(recording.getDecimalComma()).append('|')
                    .append(recording.getSkipLines()).append('|').append(recording.getFile() == null ? "" : recording.getFile().getPath());
            recording.getChannels().forEach(channel -> append(channel, words));
        } else {
            append(recording, words);
            words.append(recording.getFile() == null ? "" : recording.getFile().getPath());
        }
        return words.toString();
    }

    private static void append(EObject object, StringBuilder words) {
        words.append('{');
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (object.eIsSet(attribute)) {
                words.append(attribute.getName()).append('=').append(object.eGet(attribute)).append(';');
            }
        }
        for (EReference reference : object.eClass().getEAllContainments()) {
            if (reference != ModelPackage.Literals.ENTRY__PROVENANCE && object.eIsSet(reference)) {
                Object there = object.eGet(reference);
                List<?> all = there instanceof List<?> list ? list : List.of(there);
                all.forEach(child -> append((EObject) child, words));
            }
        }
        words.append('}');
    }
}
