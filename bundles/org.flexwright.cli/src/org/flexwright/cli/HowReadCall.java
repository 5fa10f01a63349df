package org.flexwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.Approximation;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingSummary;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Measurement;
import org.flexwright.model.Part;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How readings were taken, beyond the numbers. */
@Command(name = "how-read", description = "Say or show how readings were taken: standard, plies, distances; with what the protocol has to say about them.",
        mixinStandardHelpOptions = true, footer = { "", "Example: flexwright trial how-read T05 --part P1 --property shore-a --set rule=iso-48-4 --set edge=13mm",
                "Example: flexwright trial how-read T05 --part P1 --about" })
final class HowReadCall extends TrialNoun.OneTrial {
    @Option(names = "--part", description = "Code of the part; every part when left out.")
    String part;
    @Option(names = "--property", description = "Only this property; id or title.")
    String property;
    @Option(names = "--spot", description = "Only this spot.")
    String spot;
    @Option(names = "--dwell", description = "Only this dwell, e.g. 3s.")
    String dwell;
    @Option(names = "--set", paramLabel = "FIELD=VALUE", description = "A field, by its name or the words beside it; repeat for more.")
    List<String> set = List.of();
    @Option(names = "--about", description = "What the medians would be about on other scales: a guide, never kept.")
    boolean about;

    @Override
    protected boolean writes() {
        return !set.isEmpty();
    }

    @Override
    protected Reply work(CliServices services, ProjectSession session) {
        Trial trial = trial(session);
        List<Part> pieces = part == null ? trial.getParts() : List.of(Find.part(trial, part));
        String name = part == null ? trial.getCode() : trial.getCode() + " " + pieces.getFirst().getCode();
        List<Measurement> chosen = chosen(services, pieces, name);
        if (!set.isEmpty()) {
            write(services, session, name, chosen);
        }
        Reply reply = new Reply(id()).words("trial", trial.getCode());
        List<Finding> findings = services.registries().findings().check(session.project(), services.clock().instant());
        for (Measurement measurement : chosen) {
            show(services, measurement, reply);
            findings.stream().filter(f -> f.subject().equals(measurement.getId())).forEach(f -> reply.finding(f, Names.path(measurement), FindingService.overridden(f, session
                    .project()).isPresent()));
        }
        return reply;
    }

    private List<Measurement> chosen(CliServices services, List<Part> pieces, String name) {
        PropertyDef only = property == null ? null : Find.property(services.registries().properties(), property);
        Double after = TargetNoun.Conditions.dwell(dwell, services);
        List<Measurement> chosen = pieces.stream().flatMap(piece -> piece.getMeasurements().stream()).filter(m -> m.getKey() != null && (only == null || only.id().equals(m.getKey().getProperty())))
                .filter(m -> spot == null || spot.strip().equalsIgnoreCase(m.getKey().getSpot())).filter(m -> after == null || after.equals(m.getKey().getDwell()))
                .filter(m -> services.registries().measurementDetails(m.getKey().getProperty()).isPresent()).toList();
        if (chosen.isEmpty()) {
            throw new UsageException("Nothing was read on " + name + (only == null ? " of which more than the readings is kept." : " of " + only.title()
                    + " under these conditions."));
        }
        return chosen;
    }

    private void write(CliServices services, ProjectSession session, String name, List<Measurement> chosen) {
        List<MeasurementDetails> read = new ArrayList<>();
        for (Measurement measurement : chosen) {
            read.add(MeasurementDetails.read(services, Find.property(services.registries().properties(), measurement.getKey().getProperty()), set));
        }
        session.execute("Say how " + name + " was read", edit -> {
            for (int i = 0; i < chosen.size(); i++) {
                read.get(i).write(edit, chosen.get(i));
            }
        });
    }

    private void show(CliServices services, Measurement measurement, Reply reply) {
        PropertyDef def = Find.property(services.registries().properties(), measurement.getKey().getProperty());
        ReadingSummary summary = ReadingSummary.of(def, measurement);
        String piece = measurement.eContainer() instanceof Specimen specimen && specimen.getCode() != null ? specimen.getCode() : "";
        reply.line((piece + "  ").stripLeading() + def.title() + (measurement.getKey().getSpot() == null ? "" : ", " + measurement.getKey().getSpot()) + ": " + summary.words());
        summary.prints().ifPresent(print -> reply.line("  in print: " + print.both().text()));
        EClass type = services.registries().measurementDetails(def.id()).orElseThrow();
        EObject details = measurement.getDetails();
        List<FieldDescriptor> open = new ArrayList<>();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("part", piece);
        row.put("property", def.id());
        row.put("readings", summary.words());
        for (FieldDescriptor field : FieldDescriptors.ofClass(type)) {
            EStructuralFeature feature = type.getEStructuralFeature(field.name());
            if (details == null || details.eClass() != type || !details.eIsSet(feature)) {
                open.add(field);
            } else {
                reply.line("  " + field.label() + ": " + FieldText.show(field, details.eGet(feature)));
                row.put(field.name(), FieldText.show(field, details.eGet(feature)));
            }
        }
        if (!open.isEmpty()) {
            reply.line("  may be set: " + Inputs.names(open));
        }
        if (about) {
            List<Approximation> guides = summary.median().isEmpty() ? List.of() : services.registries().about(def.id(), summary.median().getAsDouble());
            guides.forEach(guide -> reply.line("  " + guide.words() + "   [" + guide.value().source().display() + "]   " + guide.note().text()));
            row.put("about", guides.stream().map(Approximation::words).toList());
            if (guides.isEmpty()) {
                reply.line("  No chart converts this reading: read the piece on the other scale.");
            }
        }
        reply.item(row);
    }
}
