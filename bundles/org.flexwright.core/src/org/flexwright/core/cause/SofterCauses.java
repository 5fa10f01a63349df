package org.flexwright.core.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.rubber.HardnessModel;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.model.Measurement;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;

/** Why the parts of a trial may be softer, from its own records, the likeliest first. */
public final class SofterCauses {

    private static final Source GENT = Source.derived("Gent 1958: change of modulus to a point of hardness");
    private static final int SAME_GAUGE = 1;

    private SofterCauses() {
    }

    /**
     * The causes that its steps and its control piece speak of; pure.
     *
     * @param than the trial it is compared with, whose own share of a cause does not count; null for none
     */
    public static List<SofterCause> of(Trial trial, Trial than, StepKinds kinds, PropertyCatalogue properties) {
        List<SofterCause> causes = new ArrayList<>();
        trial.getSteps().forEach(step -> kinds.findStepKind(step.getKind()).ifPresent(kind -> causes.addAll(kind.softer(step, trial, than))));
        gauge(trial, than, properties).ifPresent(causes::add);
        causes.sort(Comparator.comparingDouble(SofterCause::weight).reversed());
        return List.copyOf(causes);
    }

    /** A gauge that reads low looks like a soft part: its control piece against what it usually reads. */
    private static Optional<SofterCause> gauge(Trial trial, Trial than, PropertyCatalogue properties) {
        List<ControlReading> mine = controls(trial, properties);
        if (readIn(trial, properties).isEmpty()) {
            return Optional.empty();
        }
        if (mine.isEmpty()) {
            return Optional.of(cause(trial, Standing.OPEN, "gauge.open", null));
        }
        double off = mine.stream().mapToDouble(ControlReading::difference).min().orElseThrow();
        double before = than == null ? 0 : controls(than, properties).stream().mapToDouble(ControlReading::difference).max().orElse(0);
        double points = off - before;
        double hardness = Math.clamp(mine.getFirst().before(), 5, 95);
        double likely = Math.exp(points * HardnessModel.perPoint(hardness));
        double low = Math.exp((points - SAME_GAUGE) * HardnessModel.perPoint(hardness));
        double high = Math.exp((points + SAME_GAUGE) * HardnessModel.perPoint(hardness));
        return Optional.of(cause(trial, points <= -ControlReading.POINTS ? Standing.RECORDED : Standing.CLEARED, "gauge.read",
                new Estimate(low, likely, high, GENT), Figures.of(points, "", 2)));
    }

    private static SofterCause cause(Trial trial, Standing standing, String key, Estimate stiffness, Object... args) {
        return new SofterCause("gauge", standing, words("gauge"), words(key, args), stiffness, words("gauge.check"), GENT, trial.getId() == null ? "" : trial.getId());
    }

    private static List<ControlReading> controls(Trial trial, PropertyCatalogue properties) {
        return readIn(trial, properties).stream()
                .flatMap(session -> properties.all().stream().filter(SofterCauses::isHardness).flatMap(p -> ControlReading.of(session, p).stream())).toList();
    }

    /** Sessions in which a hardness of the trial was read. */
    private static Set<Session> readIn(Trial trial, PropertyCatalogue properties) {
        Set<Session> sessions = new LinkedHashSet<>();
        trial.getParts().stream().flatMap(p -> p.getMeasurements().stream()).filter(m -> isHardness(m, properties)).map(Measurement::getSession)
                .filter(Objects::nonNull).forEach(sessions::add);
        return sessions;
    }

    private static boolean isHardness(Measurement measurement, PropertyCatalogue properties) {
        return measurement.getKey() != null && properties.find(measurement.getKey().getProperty()).filter(SofterCauses::isHardness).isPresent();
    }

    private static boolean isHardness(PropertyDef property) {
        return property.kind().name().startsWith("SHORE");
    }


    private static Message words(String key, Object... args) {
        return Message.of(SofterCauses.class, key, args);
    }
}
