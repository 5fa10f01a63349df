package org.flexwright.workbench.pages.reference;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ParsedReading;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.ReferencePart;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;

/** Writes down what is known of the reference part without reading it: an estimate with its reason, or that it is unknown. */
final class KnownBlock {

    private final ReferencePart part;
    private final Doing doing;
    private final PickBox<PropertyDef> property;
    private final PickBox<Knowledge> knowledge;
    private final Text value;
    private final Text reason;

    KnownBlock(Composite parent, PageContext context, ReferencePart part, Doing doing) {
        this.part = part;
        this.doing = doing;
        Kit kit = context.kit();
        Block block = new Block(parent, kit, "Write down what is known", 1, Spacing.FIELDS);
        Composite body = Flow.pane(block.body(), kit, Ink.PAPER);
        body.setLayoutData(Grid.wide());
        property = new PickBox<>(body, kit, "Property that is known", null, PropertyDef::title);
        List<PropertyDef> all = context.registries().properties().all();
        property.show(all, all.isEmpty() ? null : all.getFirst());
        knowledge = new PickBox<>(body, kit, "How well it is known", null, Knowledge::getLiteral);
        knowledge.show(List.of(Knowledge.MEASURED, Knowledge.ESTIMATED, Knowledge.UNKNOWN), Knowledge.ESTIMATED);
        knowledge.whenChosen(how -> enable());
        value = kit.field(body, "Value that is known", SWT.SINGLE);
        value.setMessage("value, several with ;");
        Flow.grow(value, 20);
        kit.action(body, "&Write it down", this::write);
        Composite line = kit.pane(block.body(), 2, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        kit.text(line, "How it is known");
        reason = kit.field(line, "How it is known", SWT.SINGLE);
        reason.setLayoutData(Grid.wide());
        Prose.quiet(block.body(), kit, "Readings with a gauge are better typed in a session, where room, gauge and control piece stand beside them.")
                .setLayoutData(Grid.wide());
    }

    private void enable() {
        value.setEnabled(knowledge.chosen() != Knowledge.UNKNOWN);
    }

    private void write() {
        PropertyDef of = property.chosen();
        if (of == null) {
            doing.say("No property is known; a plugin brings them.");
            return;
        }
        List<ParsedReading> readings = List.of();
        Double dwell = null;
        if (knowledge.chosen() != Knowledge.UNKNOWN) {
            switch (ReadingParser.parse(of, value.getText())) {
                case ReadingInput.Rejected no -> {
                    doing.say(no.sentence().text());
                    value.setFocus();
                    return;
                }
                case ReadingInput.Understood yes -> {
                    readings = yes.readings();
                    dwell = yes.dwell();
                }
            }
        }
        List<ParsedReading> taken = readings;
        Double after = dwell;
        Knowledge how = knowledge.chosen();
        String why = reason.getText().strip();
        if (doing.edit("write down " + of.title().toLowerCase(java.util.Locale.ROOT), edit -> {
            PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
            key.setProperty(of.id());
            key.setPieceKind(PieceKind.PART);
            key.setDwell(after);
            Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
            measurement.setKey(key);
            measurement.setKnowledge(how);
            measurement.setAt(edit.now());
            measurement.setNote(why.isEmpty() ? null : why);
            taken.forEach(reading -> measurement.getReadings().add(reading.toReading(edit.now())));
            edit.add(part, ModelPackage.Literals.SPECIMEN__MEASUREMENTS, measurement);
        })) {
            value.setText("");
            reason.setText("");
        }
    }
}
