package org.flexwright.workbench.pages.common;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.DetailsText;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.reading.ReadingSummary;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.model.Censoring;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Reading;
import org.flexwright.numerics.Descriptive;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;

/** One measurement: what was read under which conditions, every single reading, and the way to leave one out with a reason. */
public final class MeasurementRow extends Composite {

    private final PageContext context;
    private final Kit kit;
    private final Measurement measurement;
    private final Doing doing;
    private final PropertyDef property;
    private final Prose about;
    private Composite leaving;
    private HowRead howRead;

    /** A row for a measurement. */
    public MeasurementRow(Composite parent, PageContext context, Measurement measurement, Doing doing) {
        super(parent, SWT.NONE);
        this.context = context;
        this.kit = context.kit();
        this.measurement = measurement;
        this.doing = doing;
        this.property = measurement.getKey() == null || measurement.getKey().getProperty() == null ? null
                : context.registries().findProperty(measurement.getKey().getProperty()).orElse(null);
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 2, new Spacing(0, 0, 4, 0));
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        Composite words = kit.pane(this, 1, new Spacing(0, 0, 0, 0));
        words.setLayoutData(Grid.wide());
        String title = Properties.words(measurement.getKey(), context.registries().properties());
        new Prose(words, kit, title, Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        Prose numbers = Prose.text(words, kit, readings());
        numbers.setLayoutData(Grid.wide());
        about = Prose.quiet(words, kit, about());
        about.setLayoutData(Grid.wide());
        Doubts.sentence(measurement, context.registries().properties())
                .ifPresent(doubt -> new Prose(words, kit, Doubts.word() + "  " + doubt, Ink.CAUTION, Role.BODY).setLayoutData(Grid.wide()));
        Kit.name(this, title + ": " + readings());
        if (property != null && !context.session().readOnly() && measurement.getReadings().size() > 0) {
            Composite actions = kit.pane(this, 1, Spacing.TIGHT);
            actions.setLayoutData(new GridData(SWT.END, SWT.BEGINNING, false, false));
            Button leave = kit.action(actions, "Leave one out…", this::unfold);
            Kit.name(leave, "Leave out a reading of " + title);
            leave.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
            context.registries().measurementDetails(property.id()).filter(type -> measurement.getDetails() == null || measurement.getDetails().eClass() == type)
                    .ifPresent(type -> {
                        Button how = kit.action(actions, "How it was read…", () -> how(type));
                        Kit.name(how, "How " + title + " was read");
                        how.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
                    });
        }
    }

    private String print(Reading reading) {
        return property == null ? reading.getTypedAs() == null ? "?" : reading.getTypedAs() : property.yesNo() ? ReadingPrinter.print(property, reading)
                : bare(ReadingPrinter.print(property, reading));
    }

    /** The unit stands once behind all of them. */
    private String bare(String printed) {
        String unit = property.kind().unit().display();
        return !unit.isEmpty() && printed.endsWith(" " + unit) ? printed.substring(0, printed.length() - unit.length() - 1) : printed;
    }

    private static boolean leftOut(Reading reading) {
        return reading.getLeftOut() != null && !reading.getLeftOut().isBlank();
    }

    private String readings() {
        String unit = property == null || property.yesNo() ? "" : property.kind().unit().display();
        List<Reading> counting = measurement.getReadings().stream().filter(r -> !leftOut(r)).toList();
        StringBuilder words = new StringBuilder(counting.isEmpty() ? "no reading counts" : counting.stream().map(this::print).collect(Collectors.joining("  ")));
        words.append(counting.isEmpty() || unit.isEmpty() ? "" : " " + unit);
        middle(counting).ifPresent(median -> words.append("   →  median ").append(FieldText.digits(median)).append(unit.isEmpty() ? "" : " " + unit));
        measurement.getReadings().stream().filter(MeasurementRow::leftOut)
                .forEach(r -> words.append("   (").append(print(r)).append(" left out: ").append(r.getLeftOut()).append(")"));
        return words.toString();
    }

    private Optional<Double> middle(List<Reading> counting) {
        boolean plain = counting.size() > 1 && counting.stream().allMatch(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE);
        return plain ? Optional.of(Descriptive.median(counting.stream().mapToDouble(Reading::getValue).toArray())) : Optional.empty();
    }

    private String about() {
        List<String> words = new ArrayList<>();
        Knowledge known = measurement.getKnowledge();
        words.add(known == null ? "measured" : known.getLiteral());
        if (measurement.getSession() != null) {
            words.add("session " + Sessions.words(measurement.getSession()));
        } else if (measurement.getAt() != null) {
            words.add(Moments.minute(measurement.getAt()));
        }
        Double age = Measurements.ageHours(measurement);
        if (age != null) {
            words.add("age " + Moments.age(age));
        }
        if (measurement.getInstrument() != null && measurement.getInstrument().getName() != null) {
            words.add(measurement.getInstrument().getName());
        }
        String held = DetailsText.of(measurement.getDetails());
        if (!held.isEmpty()) {
            words.add(held);
        }
        if (measurement.getRecording() != null) {
            words.add("from recording " + Recordings.name(measurement.getRecording()));
        }
        if (measurement.getNote() != null && !measurement.getNote().isBlank()) {
            words.add(measurement.getNote());
        }
        return String.join(", ", words);
    }

    private void how(EClass type) {
        if (howRead != null) {
            howRead.dispose();
            howRead = null;
            about.setWords(about());
        } else {
            howRead = new HowRead(this, context, measurement, type, ReadingSummary.of(property, measurement), doing);
            howRead.setLayoutData(Grid.wide(2));
            howRead.setFocus();
        }
        ScrollPane.reflowAround(this);
    }

    private void unfold() {
        if (leaving != null) {
            leaving.dispose();
            leaving = null;
            ScrollPane.reflowAround(this);
            return;
        }
        leaving = kit.pane(this, 4, Spacing.FIELDS, Ink.PANEL);
        kit.columns(leaving, 4, new Spacing(2, 2, 2, 0));
        leaving.setLayoutData(Grid.wide(2));
        PickBox<Reading> which = new PickBox<>(leaving, kit, "Reading to leave out", null, r -> measurement.getReadings().indexOf(r) + 1 + ".  "
                + ReadingPrinter.print(property, r) + (leftOut(r) ? " (left out)" : ""));
        which.show(measurement.getReadings(), measurement.getReadings().getLast());
        kit.text(leaving, "because");
        Text reason = kit.field(leaving, "Reason to leave the reading out", SWT.SINGLE);
        reason.setLayoutData(Grid.wide());
        kit.action(leaving, "Leave it out", () -> leave(which.chosen(), reason.getText().strip()));
        which.control().setFocus();
        ScrollPane.reflowAround(this);
    }

    /** An empty reason lets a reading count again. */
    private void leave(Reading reading, String reason) {
        if (reason.isEmpty() && !leftOut(reading)) {
            doing.say("A reading is left out for a reason; write it into the field. It stays in the record.");
            return;
        }
        doing.edit(reason.isEmpty() ? "count a reading again" : "leave out a reading",
                edit -> edit.set(reading, ModelPackage.Literals.READING__LEFT_OUT, reason.isEmpty() ? null : reason));
    }
}
