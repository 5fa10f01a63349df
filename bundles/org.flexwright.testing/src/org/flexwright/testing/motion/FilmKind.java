package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
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
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Recording;
import org.flexwright.model.RecordingMark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.data.FilmDetails;
import org.flexwright.testing.data.TestingDataFactory;
import org.flexwright.testing.data.TestingDataPackage;
import org.osgi.service.component.annotations.Component;

/**
 * Heights read off the pictures of a film. Marks lie along the pictures (or the seconds, when the file holds those): {@code from} and
 * {@code to} say what counts, {@code contact-} and the picture where a contact was found.
 */
@Component(service = RecordingKind.class)
public final class FilmKind implements RecordingKind {
    /** Id of this recording kind. */
    public static final String ID = "testing.film";

    private static final String FROM = "from";
    private static final String TO = "to";
    private static final String CONTACT = "contact-";
    private static final Source FALL = Source.derived("free fall, parabolas by least squares");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Heights from film pictures";
    }

    @Override
    public String summary() {
        return "A list of pictures and heights in pixels of something that falls and bounces. Parabolas give the heights between the pictures, "
                + "and how they bend checks the scale and the true number of pictures a second.";
    }

    @Override
    public EClass details() {
        return TestingDataPackage.Literals.FILM_DETAILS;
    }

    @Override
    public RecordingFormat format() {
        return RecordingFormat.TABLE;
    }

    @Override
    public List<ChannelWish> channels() {
        return List.of(new ChannelWish(ChannelRole.FRAME, "number of the picture", QuantityKind.NUMBER, "", false),
                new ChannelWish(ChannelRole.TIME, "time", QuantityKind.DURATION, "s", false),
                new ChannelWish(ChannelRole.HEIGHT, "height in pixels", QuantityKind.NUMBER, "", false),
                new ChannelWish(ChannelRole.TRAVEL, "height in mm", QuantityKind.LENGTH, "mm", false));
    }

    @Override
    public Optional<Message> missing(Set<ChannelRole> roles) {
        if (!roles.contains(ChannelRole.FRAME) && !roles.contains(ChannelRole.TIME)) {
            return Optional.of(Say.message("film.noTime"));
        }
        return roles.contains(ChannelRole.HEIGHT) || roles.contains(ChannelRole.TRAVEL) ? Optional.empty() : Optional.of(Say.message("film.noHeight"));
    }

    /** The columns as they are used: times in pictures or s, heights upwards in pixels or mm. */
    record Columns(double[] times, double[] heights, boolean inSeconds, boolean inMillimetres) {
        String across() {
            return inSeconds ? "s" : "";
        }
    }

    @Override
    public Look look(Recording recording, RecordingData data, Watch watch) {
        FilmDetails details = recording.getDetails() instanceof FilmDetails d ? d : TestingDataFactory.eINSTANCE.createFilmDetails();
        List<Remark> remarks = new ArrayList<>();
        Optional<RecordingData.Channel> frame = data.find(ChannelRole.FRAME);
        Optional<RecordingData.Channel> time = frame.or(() -> data.find(ChannelRole.TIME));
        Optional<RecordingData.Channel> pixels = data.find(ChannelRole.HEIGHT);
        Optional<RecordingData.Channel> height = pixels.or(() -> data.find(ChannelRole.TRAVEL));
        if (time.isEmpty() || height.isEmpty() || data.rows() == 0) {
            remarks.add(Say.caution(FALL, time.isEmpty() ? "film.noTime" : "film.noHeight"));
            return new Look(List.of(), List.of(), List.of(), remarks);
        }
        int back = back(time.get().values());
        if (back > 0) {
            remarks.add(Say.caution(FALL, "film.order", back + 1));
            return new Look(List.of(), List.of(), List.of(), remarks);
        }
        boolean down = Boolean.TRUE.equals(details.getHeightDown());
        double lowest = Arrays.stream(height.get().values()).max().orElse(0);
        double[] heights = Arrays.stream(height.get().values()).map(h -> down ? lowest - h : h).toArray();
        Columns all = new Columns(time.get().values(), heights, frame.isEmpty(), pixels.isEmpty());
        return look(recording, details, all, remarks);
    }

    private static Look look(Recording recording, FilmDetails details, Columns all, List<Remark> remarks) {
        double first = all.times[0];
        double last = all.times[all.times.length - 1];
        Optional<Double> from = set(recording, FROM);
        double begin = from.orElse(first);
        double end = set(recording, TO).orElse(last);
        int a = 0;
        while (a < all.times.length && all.times[a] < begin) {
            a++;
        }
        int b = a;
        while (b < all.times.length && all.times[b] <= end) {
            b++;
        }
        Columns used = new Columns(Arrays.copyOfRange(all.times, a, b), Arrays.copyOfRange(all.heights, a, b), all.inSeconds, all.inMillimetres);
        List<FoundMark> marks = new ArrayList<>(List.of(new FoundMark(FROM, "From here", begin, true, from.isPresent()), new FoundMark(TO, "Up to here", end, true, set(recording, TO)
                .isPresent())));
        List<Double> contacts = contacts(recording, used, marks);
        FilmedFlights flights = FilmedFlights.between(used.times, used.heights, contacts, from.isEmpty());
        FilmResults results = new FilmResults(flights, details, used);
        remarks.addAll(results.remarks());
        marks.sort(Comparator.comparingDouble(FoundMark::position));
        List<RecordingPlot> plots = List.of(FilmPlot.heights(all, flights), FilmPlot.residuals(all, flights));
        return new Look(plots, marks, results.results(), remarks);
    }

    private static Optional<Double> set(Recording recording, String name) {
        return recording.getMarks().stream().filter(m -> name.equals(m.getName()) && m.getLeftOut() == null && m.getPosition() != null && Double.isFinite(m.getPosition()))
                .map(RecordingMark::getPosition).findFirst();
    }

    /** The contacts found, as a person moved, left out or added them. */
    private static List<Double> contacts(Recording recording, Columns used, List<FoundMark> marks) {
        List<Double> contacts = new ArrayList<>();
        Set<String> found = new HashSet<>();
        for (double turn : FilmedFlights.turns(used.times, used.heights)) {
            String name = CONTACT + (used.inSeconds ? Math.round(turn * 1000) : Math.round(turn));
            found.add(name);
            Optional<RecordingMark> mark = recording.getMarks().stream().filter(m -> name.equals(m.getName())).findFirst();
            double position = mark.map(RecordingMark::getPosition).filter(Double::isFinite).orElse(turn);
            String leftOut = mark.map(RecordingMark::getLeftOut).orElse(null);
            marks.add(new FoundMark(name, "Contact", position, true, position != turn, true));
            if (leftOut == null) {
                contacts.add(position);
            }
        }
        for (RecordingMark mark : recording.getMarks()) {
            if (mark.getName() != null && mark.getName().startsWith(CONTACT) && !found.contains(mark.getName()) && Boolean.TRUE.equals(mark.getByHand()) && mark.getLeftOut() == null
                    && mark.getPosition() != null && Double.isFinite(mark.getPosition())) {
                marks.add(new FoundMark(mark.getName(), "Contact", mark.getPosition(), true, true, true));
                contacts.add(mark.getPosition());
            }
        }
        contacts.sort(null);
        return contacts;
    }

    /** Index of the first row whose time does not rise; 0 when all do. */
    private static int back(double[] times) {
        for (int i = 1; i < times.length; i++) {
            if (!(times[i] > times[i - 1])) {
                return i;
            }
        }
        return 0;
    }
}
