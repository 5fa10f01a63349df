package org.flexwright.report;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.field.DetailsText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.Importance;
import org.flexwright.model.Measurement;
import org.flexwright.model.Need;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Specimen;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.quantity.QuantityFormat;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;
import org.flexwright.report.photo.Photos;

/** Job, needs, reference part and target sheets; and the readings of any piece. */
final class JobSection {
    private final Project project;
    private final Registries registries;
    private final Photos photos;
    private final Blocks blocks;

    JobSection(Project project, Registries registries, Photos photos, Blocks blocks) {
        this.photos = photos;
        this.project = project;
        this.registries = registries;
        this.blocks = blocks;
    }

    void write() {
        blocks.heading(2, "The job").say(project.getJob());
        blocks.items(needs(project.getNeeds()));
        for (ReferencePart part : project.getReferenceParts()) {
            blocks.heading(2, "Reference part: " + part.getName());
            reference(part);
        }
        for (TargetSheet sheet : project.getTargetSheets()) {
            blocks.heading(2, "Target sheet v" + sheet.getVersion());
            blocks.say(sheet.getFrozenAt() == null ? "Open." : "Frozen " + Report.moment(sheet.getFrozenAt()) + " by " + sheet.getFrozenBy() + "."
                    + (sheet.getReason() == null ? "" : " " + sheet.getReason()));
            blocks.table(List.of("Property", "Limits", "Conditions", "#Weight", "Reject"), sheet.getTargets().stream().map(this::target).toList());
        }
    }

    /** Needs in the user's words, what must be apart from what would be nice. */
    static List<String> needs(List<Need> needs) {
        return needs.stream().map(n -> (n.getImportance() == Importance.MUST ? "Must: " : "Nice: ") + n.getText()).toList();
    }

    /** What is known of a reference part. */
    void reference(ReferencePart part) {
        blocks.say(String.join(" ", about(part)));
        readings(part, registries, blocks);
        part.getPhotos().forEach(photo -> blocks.add(photos.figure(photo)));
    }

    private static List<String> about(ReferencePart part) {
        List<String> sentences = new ArrayList<>();
        if (part.getCondition() != null) {
            String condition = part.getCondition().strip();
            sentences.add(condition.endsWith(".") ? condition : condition + ".");
        }
        if (part.getAgeYears() != null) {
            sentences.add("Age: " + QuantityFormat.plain(part.getAgeYears()) + " years.");
        }
        if (part.getThickness() != null) {
            sentences.add("Thickness at the spot that is measured: " + QuantityFormat.plain(part.getThickness()) + " mm.");
        }
        return sentences;
    }

    private List<String> target(Target target) {
        String id = target.getKey().getProperty();
        PropertyDef def = registries.findProperty(id).orElse(null);
        String unit = def == null || def.yesNo() ? "" : " " + def.kind().unit().display();
        String reject = (target.getRejectBelow() == null ? "" : "below " + QuantityFormat.plain(target.getRejectBelow()) + unit + " ") + (target
                .getRejectAbove() == null ? "" : "above " + QuantityFormat.plain(target.getRejectAbove()) + unit);
        return List.of(def == null ? id + " (its plugin is absent)" : def.title(), def == null ? "" : Limits.text(target, def), conditions(target
                .getKey()), target.getWeight() == null ? "" : QuantityFormat.plain(target.getWeight()), reject);
    }

    static String conditions(PropertyKey key) {
        StringBuilder words = new StringBuilder();
        if (key.getSpot() != null) {
            words.append(key.getSpot());
        }
        if (key.getSupport() != null) {
            words.append(words.isEmpty() ? "" : ", ").append(key.getSupport());
        }
        if (key.getDwell() != null) {
            words.append(words.isEmpty() ? "" : ", ").append("read after ").append(QuantityFormat.plain(key.getDwell())).append(" s");
        }
        return words.toString();
    }

    /** Every single reading of a piece. */
    static void readings(Specimen piece, Registries registries, Blocks blocks) {
        if (piece.isFailed()) {
            blocks.say("Failed" + (piece.getFailReason() == null ? "." : ": " + piece.getFailReason()));
        }
        if (piece.getMeasurements().isEmpty()) {
            blocks.say("Nothing was read yet.", Tone.QUIET);
            return;
        }
        blocks.table(List.of("Property", "Every reading", "Unit", "Conditions", "Session", "Gauge", "Known"), piece.getMeasurements().stream().map(m -> reading(m,
                registries)).toList());
    }

    private static String readings(int count) {
        return count == 1 ? "1 reading is" : count + " readings are";
    }

    /** A reading without its unit, which stands in a column of its own. */
    private static String bare(PropertyDef def, Reading reading) {
        String printed = ReadingPrinter.print(def, reading);
        String unit = " " + def.kind().unit().display();
        return !def.yesNo() && printed.endsWith(unit) ? printed.substring(0, printed.length() - unit.length()) : printed;
    }

    /** All readings of a measurement without their unit, what was left out with its reason; {@code def} is null when its plugin is absent. */
    static String values(Measurement measurement, PropertyDef def) {
        return def == null ? readings(measurement.getReadings().size()) + " kept; the plugin of this property is absent" : String.join("; ", measurement.getReadings().stream()
                .map(r -> bare(def, r) + (r.getLeftOut() == null ? "" : " (left out: " + r.getLeftOut() + ")")).toList());
    }

    private static List<String> reading(Measurement measurement, Registries registries) {
        String id = measurement.getKey().getProperty();
        PropertyDef def = registries.findProperty(id).orElse(null);
        String held = DetailsText.of(measurement.getDetails());
        return List.of(def == null ? id : def.title(), values(measurement, def), def == null || def.yesNo() ? "" : def.kind().unit().display(), (conditions(
                measurement.getKey()) + (held.isEmpty() ? "" : "\n" + held)).strip(), session(measurement, registries), measurement.getInstrument() == null ? ""
                        : measurement.getInstrument().getName(), measurement.getKnowledge() == null ? "" : measurement.getKnowledge().getLiteral());
    }

    /** Code of the session, with a mark when its control piece read off. */
    private static String session(Measurement measurement, Registries registries) {
        return measurement.getSession() == null ? "" : measurement.getSession().getCode()
                + Doubts.of(measurement.getSession(), registries.properties()).map(c -> "\n" + Doubts.word()).orElse("");
    }
}
