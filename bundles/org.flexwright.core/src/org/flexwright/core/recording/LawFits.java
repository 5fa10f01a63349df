package org.flexwright.core.recording;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.naming.Names;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.rubber.LawRanking;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.rubber.RubberFit.Point;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.StretchCurve;
import org.flexwright.core.rubber.Weighting;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.LawFit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Recording;

/**
 * Rubber laws fitted to recordings of a project. Kept is what was asked, {@link LawFit}: recordings, law, weights, range; what comes out is
 * computed anew from the raw files each time.
 */
public final class LawFits {
    /** Curves of more points are evened out: the density of a recorder's clock is no evidence. */
    private static final int MOST_POINTS = 120;
    private static final Source PRACTICE = Source.commonPractice();

    private LawFits() {
    }

    /**
     * What is asked, ready to be computed on any thread.
     *
     * @param form      the law; null for all of them beside each other
     * @param weighting which points count how much
     * @param from      least stretch used; null for all
     * @param to        largest stretch used; null for all
     * @param curves    the recordings as they are now
     * @param remarks   what to know about this choice of recordings
     */
    public record Question(RubberForm form, Weighting weighting, Double from, Double to, List<RecordingFile> curves, List<Remark> remarks) {
        public Question {
            curves = List.copyOf(curves);
            remarks = List.copyOf(remarks);
        }

        /** The same recordings, range and weights with another law; null for all laws. */
        public Question with(RubberForm other) {
            return new Question(other, weighting, from, to, curves, remarks);
        }

        /**
         * All points, read from the raw files. Throws RefusedException with one sentence when a recording cannot be read or gives no curve, and
         * when nothing lies in the range.
         */
        public List<Point> points(Watch watch) {
            List<Point> all = new ArrayList<>();
            for (RecordingFile file : curves) {
                watch.check();
                StretchCurve curve = file.curve(file.data(watch), watch).orElseThrow(() -> refused("curve.none", Recordings.name(file.recording())));
                List<Point> own = LawFits.points(curve, from, to);
                if (own.isEmpty()) {
                    throw refused("range.none", Recordings.name(file.recording()), number(from), number(to));
                }
                all.addAll(own);
            }
            return all;
        }

        /** The fit of the one law. Throws RefusedException also when the points do not determine its coefficients. */
        public RubberFit fit(Watch watch) {
            List<Point> points = points(watch);
            return RubberFit.of(form, weighting, points, watch).orElseThrow(() -> refused("undetermined", form.title(), form.coefficients(), points.size()));
        }

        /** All laws beside each other. */
        public LawRanking ranking(Watch watch) {
            return LawRanking.of(weighting, points(watch), watch);
        }

        private static String number(Double stretch) {
            return stretch == null ? "…" : org.flexwright.core.Figures.of(stretch, "");
        }
    }

    /** What a kept fit asks. On the model thread. Throws RefusedException with one sentence when it cannot be asked so. */
    public static Question question(Path folder, LawFit fit, Registries registries) {
        RubberForm form = RubberForm.find(fit.getLaw()).orElseThrow(() -> refused("law", fit.getLaw(), RubberForm.ids()));
        return question(folder, fit.getRecordings(), form, weighting(fit.getWeighting()), fit.getFromStretch(), fit.getToStretch(), registries);
    }

    /** What such a choice asks, without keeping it. On the model thread. Throws RefusedException with one sentence when it cannot be asked so. */
    public static Question question(Path folder, List<Recording> recordings, RubberForm form, Weighting weighting, Double from, Double to, Registries registries) {
        if (recordings.isEmpty()) {
            throw refused("recordings.none");
        }
        if (from != null && to != null && !(from < to)) {
            throw refused("range", from, to);
        }
        List<RecordingFile> curves = new ArrayList<>();
        for (Recording recording : recordings) {
            if (recording.getLeftOut() != null) {
                throw refused("left.out", Recordings.name(recording), recording.getLeftOut());
            }
            RecordingKind kind = registries.findRecordingKind(recording.getKind()).orElseThrow(() -> refused("kind.absent", Recordings.name(recording), recording.getKind()));
            curves.add(RecordingFile.of(folder, recording, kind));
        }
        return new Question(form, weighting, from, to, curves, remarks(recordings));
    }

    private static List<Remark> remarks(List<Recording> recordings) {
        List<Remark> all = new ArrayList<>();
        Set<Object> pieces = new HashSet<>(recordings.stream().map(Recordings::piece).toList());
        if (pieces.size() == 1) {
            all.add(new Remark(Severity.NOTE, say("one.piece", Names.path(Recordings.piece(recordings.get(0)))), PRACTICE));
        }
        Map<Integer, String> cycles = new LinkedHashMap<>();
        recordings.forEach(r -> cycles.merge(r.getCycle() == null || r.getCycle() == 1 ? 1 : 2, Recordings.name(r), (a, b) -> a + ", " + b));
        if (cycles.size() > 1) {
            all.add(new Remark(Severity.CAUTION, say("cycles", cycles.get(1), cycles.get(2)), Source.derived("softening by the first loading (L. Mullins)")));
        }
        return all;
    }

    /** The points of a curve inside a range, ends included: as they are, or evened out over equal steps of stretch when they are many. */
    public static List<Point> points(StretchCurve curve, Double from, Double to) {
        double low = from == null ? 0 : from;
        double high = to == null ? Double.MAX_VALUE : to;
        double least = Double.MAX_VALUE;
        double largest = 0;
        int inside = 0;
        for (double stretch : curve.stretch()) {
            if (stretch >= low && stretch <= high && stretch > 0) {
                least = Math.min(least, stretch);
                largest = Math.max(largest, stretch);
                inside++;
            }
        }
        int bins = inside <= MOST_POINTS || !(largest > least) ? 0 : MOST_POINTS;
        double[][] sums = new double[bins][3];
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < curve.stretch().length; i++) {
            double stretch = curve.stretch()[i];
            if (stretch >= low && stretch <= high && stretch > 0) {
                if (bins == 0) {
                    points.add(new Point(curve.loading(), stretch, curve.stress()[i]));
                } else {
                    double[] sum = sums[(int) Math.min(bins - 1, bins * (stretch - least) / (largest - least))];
                    sum[0]++;
                    sum[1] += stretch;
                    sum[2] += curve.stress()[i];
                }
            }
        }
        for (double[] sum : sums) {
            if (sum[0] > 0) {
                points.add(new Point(curve.loading(), sum[1] / sum[0], sum[2] / sum[0]));
            }
        }
        return points;
    }

    /** Keeps a question in the project; without a title it is called by law and recordings. */
    public static LawFit add(Edit edit, String title, RubberForm form, Weighting weighting, Double from, Double to, List<Recording> recordings) {
        if (recordings.isEmpty()) {
            throw refused("recordings.none");
        }
        String name = title == null || title.isBlank() ? form.title() + " on " + recordings.stream().map(r -> Objects.toString(r.getCode(), "")).collect(Collectors.joining(", ")) : title.strip();
        if (edit.project().getLawFits().stream().anyMatch(f -> name.equalsIgnoreCase(f.getTitle()))) {
            throw refused("title.twice", name);
        }
        LawFit fit = ModelFactory.eINSTANCE.createLawFit();
        fit.setTitle(name);
        fit.setLaw(form.id());
        fit.setWeighting(weighting.id());
        fit.setFromStretch(from);
        fit.setToStretch(to);
        fit.setAt(edit.now());
        fit.getRecordings().addAll(recordings);
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__LAW_FITS, fit);
        return fit;
    }

    /** Recordings whose kind stretches something: those a law can be fitted to. */
    public static List<Recording> fitting(Project project, Registries registries) {
        return Recordings.all(project).filter(r -> r.getLeftOut() == null && r.getFile() != null && registries.findRecordingKind(r.getKind()).filter(RecordingKind::givesCurve).isPresent()).toList();
    }

    private static Weighting weighting(String id) {
        return id == null ? Weighting.EQUAL : Weighting.find(id).orElseThrow(() -> refused("weighting", id, Weighting.ids()));
    }

    private static RefusedException refused(String key, Object... args) {
        return new RefusedException(say(key, args));
    }

    private static Message say(String key, Object... args) {
        return Message.of(LawFits.class, "fit." + key, args);
    }
}
