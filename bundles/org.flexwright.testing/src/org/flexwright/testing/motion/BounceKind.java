package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.core.find.Remark;
import org.flexwright.core.recording.ChannelWish;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingFormat;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.RecordingResult;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.testing.Say;
import org.flexwright.testing.data.BounceDetails;
import org.flexwright.testing.data.TestingDataFactory;
import org.flexwright.testing.data.TestingDataPackage;
import org.flexwright.testing.motion.ImpactFinder.Impact;
import org.osgi.service.component.annotations.Component;

/**
 * Bounces by their sound, one drop or several in one recording. A mark is named {@code impact-} and the milliseconds at which it was
 * found, so it keeps its name when other sounds are found as well.
 */
@Component(service = RecordingKind.class)
public final class BounceKind implements RecordingKind {
    /** Id of this recording kind. */
    public static final String ID = "testing.bounce";

    private static final String MARK = "impact-";
    private static final double MILLI = 1000;
    /** Standard uncertainty, s, of a mark set by hand. */
    private static final double BY_HAND = 0.001;
    private static final Source HAND = Source.commonPractice("a mark set by hand is taken to be known to 1 ms");
    /** s within which a mark set by hand is one that was found under a slightly other name. */
    private static final double SAME = 0.005;
    /** A sound at full scale was cut off. */
    private static final double FULL_SCALE = 0.999;
    private static final int CUT_SAMPLES = 3;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Bounces by their sound";
    }

    @Override
    public String summary() {
        return "A part or a ball is dropped on a firm plate or on the part and bounces; the times between the impacts tell how much energy comes back. "
                + "Record as WAV near the plate, in a quiet room, three impacts or more, as many drops as you like with a pause between them.";
    }

    @Override
    public EClass details() {
        return TestingDataPackage.Literals.BOUNCE_DETAILS;
    }

    @Override
    public RecordingFormat format() {
        return RecordingFormat.SOUND;
    }

    @Override
    public List<ChannelWish> channels() {
        return List.of();
    }

    /** An impact with the name of its mark. */
    private record Named(String name, Impact impact, boolean byHand) {
    }

    @Override
    public Look look(Recording recording, RecordingData data, Watch watch) {
        BounceDetails details = recording.getDetails() instanceof BounceDetails d ? d : TestingDataFactory.eINSTANCE.createBounceDetails();
        double quiet = details.getQuiet() == null ? ImpactFinder.QUIET : details.getQuiet() / MILLI;
        double threshold = details.getThreshold() == null ? ImpactFinder.THRESHOLD : details.getThreshold();
        List<Remark> remarks = new ArrayList<>();
        double[] sound = sound(data, details.getChannel(), remarks);
        if (sound.length == 0) {
            return new Look(List.of(), List.of(), List.of(), remarks);
        }
        ImpactFinder.Found found = ImpactFinder.find(sound, data.rate(), threshold, quiet, watch);
        List<FoundMark> marks = new ArrayList<>();
        List<Named> sounds = byHand(found.impacts(), recording.getMarks(), marks);
        Double drop = details.getDrop() == null ? null : details.getDrop() / MILLI;
        List<BounceSeries> drops = BounceSeries.among(sounds.stream().map(Named::impact).toList(), quiet);
        sounds.forEach(s -> marks.add(new FoundMark(s.name, title(s.impact, drops), s.impact.time(), true, s.byHand, true)));
        marks.sort(Comparator.comparingDouble(FoundMark::position));
        remarks.addAll(aboutSound(sound, found, threshold, drops));
        if (sounds.stream().anyMatch(Named::byHand)) {
            remarks.add(Say.note(HAND, "bounce.byHand", sounds.stream().filter(Named::byHand).count()));
        }
        BounceResults results = new BounceResults(drops, drop);
        remarks.addAll(results.remarks());
        List<RecordingPlot> plots = new ArrayList<>(List.of(new SoundPlot(sound, data.rate())));
        results.plot().ifPresent(plots::add);
        return new Look(plots, marks, results.results(), remarks);
    }

    /** The channel asked for, or all of them mixed; empty when there is none. */
    private static double[] sound(RecordingData data, Integer asked, List<Remark> remarks) {
        List<double[]> channels = data.channels().stream().filter(c -> c.role() == ChannelRole.SOUND).map(RecordingData.Channel::values).toList();
        if (channels.isEmpty() || asked != null && asked > channels.size()) {
            remarks.add(Say.caution(BouncingBall.SOURCE, channels.isEmpty() ? "bounce.noSound" : "bounce.channel", asked, channels.size()));
            return new double[0];
        }
        if (asked != null || channels.size() == 1) {
            return channels.get(asked == null ? 0 : asked - 1);
        }
        double[] mixed = new double[data.rows()];
        for (double[] channel : channels) {
            for (int i = 0; i < mixed.length; i++) {
                mixed[i] += channel[i] / channels.size();
            }
        }
        return mixed;
    }

    /** What was found, with the marks a person moved, left out or added. What was left out goes to the marks at once. */
    private static List<Named> byHand(List<Impact> found, List<RecordingMark> set, List<FoundMark> leftOut) {
        List<Named> sounds = new ArrayList<>(found.stream().map(i -> new Named(MARK + Math.round(i.time() * MILLI), i, false)).toList());
        double loudest = found.stream().mapToDouble(Impact::above).max().orElse(1);
        for (RecordingMark mark : set) {
            Optional<Named> same = sounds.stream().filter(s -> !s.byHand && isSame(s, mark)).findFirst();
            boolean moved = Boolean.TRUE.equals(mark.getByHand()) && mark.getPosition() != null && Double.isFinite(mark.getPosition());
            if (mark.getLeftOut() != null) {
                Double where = moved ? mark.getPosition() : same.map(s -> s.impact.time()).orElse(null);
                same.ifPresent(sounds::remove);
                if (where != null) {
                    leftOut.add(new FoundMark(mark.getName(), "Sound", where, true, moved, true));
                }
            } else if (moved && mark.getPosition() >= 0 && mark.getName() != null) {
                same.ifPresent(sounds::remove);
                sounds.add(new Named(mark.getName(), new Impact(mark.getPosition(), BY_HAND, loudest, 0), true));
            }
        }
        sounds.sort(Comparator.comparingDouble(s -> s.impact.time()));
        return sounds;
    }

    private static boolean isSame(Named sound, RecordingMark mark) {
        if (sound.name.equals(mark.getName())) {
            return true;
        }
        String name = mark.getName() == null ? "" : mark.getName();
        return name.matches(MARK + "\\d{1,9}") && Math.abs(Integer.parseInt(name.substring(MARK.length())) / MILLI - sound.impact.time()) <= SAME;
    }

    private static String title(Impact impact, List<BounceSeries> drops) {
        for (int d = 0; d < drops.size(); d++) {
            int number = drops.get(d).impacts().indexOf(impact);
            if (number >= 0) {
                return drops.size() == 1 ? "Impact " + (number + 1) : "Drop " + (d + 1) + ", impact " + (number + 1);
            }
        }
        return "Other sound";
    }

    private static List<Remark> aboutSound(double[] sound, ImpactFinder.Found found, double threshold, List<BounceSeries> drops) {
        List<Remark> remarks = new ArrayList<>();
        if (found.impacts().isEmpty()) {
            remarks.add(Say.caution(ImpactFinder.SOURCE, "bounce.none", Rounded.text(threshold, "")));
        } else if (drops.isEmpty()) {
            remarks.add(Say.caution(ImpactFinder.SOURCE, "bounce.noDrop", found.impacts().size()));
        }
        if (found.more() > 0) {
            remarks.add(Say.caution(ImpactFinder.SOURCE, "bounce.many", ImpactFinder.MOST, found.more()));
        }
        for (int d = 0; d < drops.size(); d++) {
            List<Impact> impacts = drops.get(d).impacts();
            String where = BounceResults.which(d, drops.size());
            IntStream.range(0, impacts.size()).filter(i -> impacts.get(i).again() > 0).forEach(i -> remarks.add(Say.caution(ImpactFinder.SOURCE, "bounce.twice", where, i + 1,
                    Rounded.text(impacts.get(i).again() * MILLI, "ms"))));
        }
        if (cut(sound)) {
            remarks.add(Say.note(ImpactFinder.SOURCE, "bounce.cut"));
        }
        return remarks;
    }

    private static boolean cut(double[] sound) {
        int run = 0;
        for (double v : sound) {
            run = Math.abs(v) >= FULL_SCALE ? run + 1 : 0;
            if (run >= CUT_SAMPLES) {
                return true;
            }
        }
        return false;
    }
}
