package org.flexwright.testing.rule;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.EList;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Specimen;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.testing.hardness.Decay;
import org.osgi.service.component.annotations.Component;

/** A durometer reading without its dwell, or with another one than the target or the other pieces of the trial. */
@Component(service = FindingRule.class)
public final class DwellRule extends ReadingRule {
    /** Id of this rule. */
    public static final String ID = "testing.dwell";

    private static final Source SOURCE = Source.published("ISO 48-4:2018, cl. 9.2: the time belongs to the value");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Durometer dwell missing or mixed";
    }

    @Override
    public void at(Project project, Trial trial, Specimen piece, Measurement measurement, Consumer<Finding> out) {
        PropertyKey key = measurement.getKey();
        String name = Pieces.name(trial, piece);
        if (key.getDwell() == null) {
            out.accept(finding(Severity.CAUTION, measurement, "key", "dwell.missing", List.of("dwell=null"), SOURCE, name));
            return;
        }
        String own = Rounded.text(key.getDwell(), "s");
        Optional<Double> wanted = targetDwell(project, key).filter(dwell -> !Decay.both(piece, key, dwell));
        if (wanted.isPresent() && !wanted.get().equals(key.getDwell())) {
            out.accept(finding(Severity.CAUTION, measurement, "key", "dwell.target", List.of("dwell=" + key.getDwell(), "target=" + wanted.get()), SOURCE, name, own,
                    Rounded.text(wanted.get(), "s")));
            return;
        }
        otherDwell(trial, key).filter(other -> !Decay.both(piece, key, other)).ifPresent(other -> out.accept(finding(Severity.CAUTION, measurement, "key", "dwell.mixed",
                List.of("dwell=" + key.getDwell(), "other=" + other), SOURCE, name, own, Rounded.text(other, "s"))));
    }

    /** The dwell the newest target sheet asks for; empty when it asks for that property at this dwell too, or not at all. */
    private static Optional<Double> targetDwell(Project project, PropertyKey key) {
        EList<TargetSheet> sheets = project.getTargetSheets();
        if (sheets.isEmpty()) {
            return Optional.empty();
        }
        List<Double> wanted = sheets.get(sheets.size() - 1).getTargets().stream().map(Target::getKey).filter(k -> sameProperty(k, key)).map(PropertyKey::getDwell).toList();
        return wanted.contains(key.getDwell()) ? Optional.empty() : wanted.stream().filter(Objects::nonNull).findFirst();
    }

    /** Another dwell at which the same property was read in this trial. */
    private static Optional<Double> otherDwell(Trial trial, PropertyKey key) {
        Stream<PropertyKey> keys = trial == null ? Stream.empty() : trial.getParts().stream().flatMap(p -> p.getMeasurements().stream()).map(Measurement::getKey);
        return keys.filter(k -> sameProperty(k, key)).map(PropertyKey::getDwell).filter(d -> d != null && !d.equals(key.getDwell())).findFirst();
    }

    private static boolean sameProperty(PropertyKey one, PropertyKey other) {
        return one != null && one.getProperty() != null && one.getProperty().equals(other.getProperty());
    }
}
