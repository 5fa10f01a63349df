package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Specimen;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Descriptive;

/**
 * A property over the spots of a part: one hue in five steps from light to dark with each value written, so that it is read in grey too.
 * Many readings at a spot of one piece are one value; several pieces give the median of theirs. What was read only as a bound is written
 * and not shaded.
 *
 * @param title    whose and what
 * @param property what was read
 * @param dots     one for each spot of the map, read or not, in its order
 * @param low      value at the light end; NaN when nothing was read
 * @param high     value at the dark end
 * @param notes    what belongs to it: values at spots that are not on the map, a scale that was widened
 */
public record SpotView(String title, PropertyDef property, List<Dot> dots, double low, double high, List<Message> notes) {
    /** Steps of the hue, from 0, the lightest. */
    public static final int STEPS = 5;
    /** Points of hardness the hue spans at least, so that the scatter of a hand gauge does not look like a pattern (common practice). */
    private static final double LEAST_POINTS = 10;
    /** Any other property: share of the middle value the hue spans at least (common practice). */
    private static final double LEAST_SHARE = 0.2;

    public SpotView {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(property, "property");
        dots = List.copyOf(dots);
        notes = List.copyOf(notes);
    }

    /**
     * A spot.
     *
     * @param place   where on the map
     * @param figure  the value alone, as written into the dot; a dash when nothing was read
     * @param words   the whole: spot, value with unit, band, number of pieces and readings
     * @param value   median over the pieces; NaN when there is none or only a bound
     * @param step    step of the hue, 0 to {@link #STEPS} - 1; -1 when there is no value
     */
    public record Dot(SpotPlace place, String figure, String words, double value, int step) {
        /** True when there is a value. */
        public boolean read() {
            return step >= 0;
        }
    }

    /**
     * What can be drawn on a map.
     *
     * @param property what was read
     * @param key      its support and dwell; spot and piece are open
     * @param whose    words: a trial, one piece, the reference part
     * @param pieces   the pieces
     * @param spots    how many spots of the map were read
     */
    public record Offer(PropertyDef property, PropertyKey key, String whose, List<Specimen> pieces, int spots) {
        public Offer {
            pieces = List.copyOf(pieces);
        }

        /** {@code Hardness, Shore A, after 3 s}. */
        public String what() {
            return SpotView.what(property, key);
        }

        /** One line. */
        public String words() {
            return what() + " · " + whose;
        }
    }

    /** What was read at spots of the map, the one with most spots first; of a trial all parts together, then each by itself. */
    public static List<Offer> offers(Project project, SpotMap map, PropertyCatalogue properties) {
        Map<String, List<Specimen>> groups = new LinkedHashMap<>();
        project.getReferenceParts().forEach(part -> groups.put(say("whose.reference", text(part.getName())).text(), List.of(part)));
        for (Trial trial : project.getTrials()) {
            List<Specimen> parts = trial.getParts().stream().filter(p -> !p.isFailed()).map(Specimen.class::cast).toList();
            if (parts.size() > 1) {
                groups.put(say("whose.trial", text(trial.getCode())).text(), parts);
            }
            parts.forEach(part -> groups.put(say("whose.part", text(trial.getCode()), text(part.getCode())).text(), List.of(part)));
        }
        project.getControlPieces().forEach(piece -> groups.put(say("whose.control", text(piece.getCode())).text(), List.of(piece)));
        List<Offer> offers = new ArrayList<>();
        groups.forEach((whose, pieces) -> keys(map, pieces).forEach(key -> properties.find(key.getProperty()).filter(property -> !property.yesNo()).ifPresent(property -> {
            int spots = (int) map.getPlaces().stream().filter(place -> !values(property, key, pieces, place.getSpot()).isEmpty()).count();
            if (spots > 0) {
                offers.add(new Offer(property, key, whose, pieces, spots));
            }
        })));
        return offers.stream().sorted((a, b) -> Integer.compare(b.spots(), a.spots())).toList();
    }

    /** Keys read at spots of the map, each once, without spot and piece. */
    private static List<PropertyKey> keys(SpotMap map, List<Specimen> pieces) {
        List<String> spots = map.getPlaces().stream().map(place -> plain(place.getSpot())).toList();
        Map<List<Object>, PropertyKey> keys = new LinkedHashMap<>();
        pieces.stream().flatMap(piece -> piece.getMeasurements().stream()).map(Measurement::getKey)
                .filter(key -> key != null && key.getProperty() != null && spots.contains(plain(key.getSpot()))).forEach(key -> {
                    PropertyKey open = EcoreUtil.copy(key);
                    open.setSpot(null);
                    keys.putIfAbsent(Arrays.asList(open.getProperty(), plain(open.getSupport()), open.getDwell()), open);
                });
        return List.copyOf(keys.values());
    }

    /** What an offer looks like on the map. */
    public static SpotView of(SpotMap map, Offer offer) {
        Map<SpotPlace, List<PartValue>> values = new LinkedHashMap<>();
        map.getPlaces().forEach(place -> values.put(place, values(offer.property(), offer.key(), offer.pieces(), place.getSpot())));
        double[] middles = values.values().stream().mapToDouble(SpotView::middle).filter(Double::isFinite).sorted().toArray();
        double[] ends = ends(offer.property(), middles);
        List<Dot> dots = new ArrayList<>();
        values.forEach((place, read) -> dots.add(dot(offer.property(), place, read, ends)));
        List<Message> notes = new ArrayList<>();
        if (middles.length > 0 && ends[1] - ends[0] > middles[middles.length - 1] - middles[0]) {
            notes.add(say("widened", FieldText.number(ends[1] - ends[0], offer.property().kind(), "")));
        }
        List<String> elsewhere = elsewhere(map, offer);
        if (!elsewhere.isEmpty()) {
            notes.add(say("elsewhere", String.join(", ", elsewhere)));
        }
        return new SpotView(offer.words(), offer.property(), dots, ends[0], ends[1], notes);
    }

    /** The spots of a map nothing was read at. */
    public static List<Dot> unread(SpotMap map) {
        return map.getPlaces().stream().map(place -> new Dot(place, "–", say("dot.none", text(place.getSpot())).text(), Double.NaN, -1)).toList();
    }

    private static List<PartValue> values(PropertyDef property, PropertyKey key, List<Specimen> pieces, String spot) {
        List<PartValue> values = new ArrayList<>();
        for (Specimen piece : pieces) {
            PropertyKey asked = EcoreUtil.copy(key);
            asked.setSpot(spot);
            asked.setPieceKind(piece.getPieceKind());
            PartValue value = PartValues.of(piece, asked, property);
            if (value != null && !value.failed() && !value.notComparable() && value.hasNumber()) {
                values.add(value);
            }
        }
        return values;
    }

    private static double middle(List<PartValue> values) {
        return values.isEmpty() || values.stream().anyMatch(PartValue::censored) ? Double.NaN : Descriptive.median(values.stream().mapToDouble(PartValue::value).toArray());
    }

    /** Ends of the hue: lowest and highest value, widened about their middle to what is worth a colour. */
    private static double[] ends(PropertyDef property, double[] sorted) {
        if (sorted.length == 0) {
            return new double[] {Double.NaN, Double.NaN};
        }
        double low = sorted[0];
        double high = sorted[sorted.length - 1];
        double middle = (low + high) / 2;
        double span = Math.max(high - low, property.kind().shore() ? LEAST_POINTS : LEAST_SHARE * Math.abs(middle));
        span = span > 0 ? span : 1;
        return new double[] {middle - span / 2, middle + span / 2};
    }

    private static Dot dot(PropertyDef property, SpotPlace place, List<PartValue> values, double[] ends) {
        String spot = text(place.getSpot());
        if (values.isEmpty()) {
            return new Dot(place, "–", say("dot.none", spot).text(), Double.NaN, -1);
        }
        double middle = middle(values);
        int readings = values.stream().mapToInt(PartValue::readings).sum();
        if (Double.isNaN(middle)) {
            return new Dot(place, "><", say("dot.bound", spot, values.size(), readings).text(), Double.NaN, -1);
        }
        int step = Math.clamp((int) Math.floor((middle - ends[0]) / (ends[1] - ends[0]) * STEPS), 0, STEPS - 1);
        String figure = FieldText.digits(middle);
        String number = FieldText.number(middle, property.kind(), "");
        double[] all = values.stream().mapToDouble(PartValue::value).toArray();
        String words = values.size() == 1 ? say("dot.one", spot, number, readings, spread(values.getFirst(), property)).text()
                : say("dot.many", spot, number, values.size(), FieldText.digits(Descriptive.min(all)), FieldText.digits(Descriptive.max(all)),
                        readings).text();
        return new Dot(place, figure, words, middle, step);
    }

    private static String spread(PartValue value, PropertyDef property) {
        double[] numbers = value.numbers();
        return numbers.length < 2 ? "" : say("dot.spread", FieldText.digits(Descriptive.min(numbers)), FieldText.digits(Descriptive.max(numbers))).text();
    }

    private static List<String> elsewhere(SpotMap map, Offer offer) {
        List<String> known = map.getPlaces().stream().map(place -> plain(place.getSpot())).toList();
        return offer.pieces().stream().flatMap(piece -> piece.getMeasurements().stream()).map(Measurement::getKey).filter(Objects::nonNull)
                .filter(key -> offer.property().id().equals(key.getProperty()) && !known.contains(plain(key.getSpot()))).map(key -> text(key.getSpot())).filter(spot -> !spot.isEmpty())
                .distinct().toList();
    }

    private static String what(PropertyDef property, PropertyKey key) {
        return String.join(", ", Stream.of(property.title(), text(key.getSupport()), key.getDwell() == null ? "" : say("dwell", FieldText.digits(key.getDwell())).text())
                .filter(words -> !words.isEmpty()).toList());
    }

    /** Value at the lower end of a step, for the legend. */
    public double from(int step) {
        return low + (high - low) * step / STEPS;
    }

    /** The spots as a table. */
    public TableModel table() {
        return new TableModel(List.of(TableModel.Column.text("spot"), TableModel.Column.number(property.title() + ", " + property.kind().unit().display()), TableModel.Column.text("read")),
                dots.stream().map(dot -> List.of(text(dot.place().getSpot()), dot.read() ? dot.figure() : "", dot.words())).toList());
    }

    private static String plain(String words) {
        return text(words).toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    private static String text(String words) {
        return words == null ? "" : words.strip();
    }

    private static Message say(String key, Object... arguments) {
        return Message.of(SpotView.class, "spots." + key, arguments);
    }
}
