package org.flexwright.workbench.pages.gauge;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.trial.Instruments;
import org.flexwright.core.verdict.ControlScatter;
import org.flexwright.core.verdict.GaugeAmounts;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelPackage;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;

/** A gauge: what it shows, how well single readings repeat, and when it was checked against something known. */
final class InstrumentPage extends BlockPage {
    private static final List<FieldDescriptor> FACTS = facts();
    private static final List<FieldDescriptor> SPREAD = List.of(FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__SPREAD),
            FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__SPREAD_FROM));
    private static final List<FieldDescriptor> CHECKS = List.of(FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__CHECKED_ON),
            FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__CHECK_EVERY_DAYS), FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__CHECK_NOTE));

    private final Instrument instrument;
    private final FindingStrips findings;
    private final List<FormPane> forms = new ArrayList<>();
    private final Prose check;
    private final Prose scatter;
    private final Button take;

    InstrumentPage(Composite parent, PageContext context) {
        super(parent, context);
        instrument = (Instrument) context.subject();
        findings = new FindingStrips(body(), context);
        form(new Block(body(), kit(), "Gauge", 1, Spacing.FIELDS), FACTS);
        Block checked = new Block(body(), kit(), "Check against something known", 1, Spacing.FIELDS);
        check = new Prose(checked.body(), kit(), "", Ink.INK, Role.STRONG);
        check.setLayoutData(Grid.wide());
        if (writable()) {
            Composite row = kit().pane(checked.body(), 3, Spacing.FIELDS);
            row.setLayoutData(Grid.wide());
            kit().text(row, "Against what, and what it read");
            Text note = kit().field(row, "Against what it was checked today and what it read", SWT.SINGLE);
            note.setLayoutData(Grid.wide());
            kit().action(row, "&Checked today", () -> {
                if (doing().edit("check of " + Names.of(instrument), edit -> Instruments.check(edit, instrument, Instruments.day(edit.now()), note.getText()))) {
                    note.setText("");
                }
            });
        }
        form(checked, CHECKS);
        Block spread = new Block(body(), kit(), "Own spread: how single readings of one piece scatter", 1, Spacing.FIELDS);
        form(spread, SPREAD);
        Composite known = kit().pane(spread.body(), 2, Spacing.FIELDS);
        known.setLayoutData(Grid.wide());
        scatter = Prose.quiet(known, kit(), "");
        scatter.setLayoutData(Grid.wide());
        take = kit().action(known, "&Take it as own spread", this::take);
        take.setLayoutData(new GridData(SWT.END, SWT.BEGINNING, false, false));
        show();
        findings.show();
        settle();
    }

    /** The unit stands among the facts: without it the other numbers say nothing. */
    private static List<FieldDescriptor> facts() {
        List<FieldDescriptor> fields = new ArrayList<>(List.of(FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__NAME), FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__KIND)));
        fields.add(FieldDescriptor.of("unit", "Unit it shows", FieldType.TEXT).withHelp("Resolution, accuracy and spread are in this unit."));
        fields.add(FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__SCALE));
        fields.add(FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__RESOLUTION));
        fields.add(FieldDescriptors.of(ModelPackage.Literals.INSTRUMENT__ACCURACY));
        fields.add(FieldDescriptors.of(ModelPackage.Literals.ENTRY__NOTE));
        return List.copyOf(fields);
    }

    private void form(Block block, List<FieldDescriptor> fields) {
        FormModel model = FormModel.bound(context().session(), instrument, fields);
        FormPane form = new FormPane(block.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        forms.add(form);
    }

    private void show() {
        LocalDate today = LocalDate.now();
        boolean overdue = Instruments.overdue(instrument, today);
        String last = instrument.getCheckedOn() == null ? "No check is noted" : "Last checked on " + instrument.getCheckedOn();
        String held = Instruments.due(instrument).map(due -> overdue ? "; that held until " + due : "; holds until " + due)
                .orElse(instrument.getCheckEveryDays() == null ? "; how long a check holds is not said" : "");
        check.setWords((overdue ? "▲ Check overdue. " : "") + last + held + ".", overdue ? Ink.CAUTION : Ink.INK);
        Optional<ControlScatter> known = known();
        scatter.setWords(known.map(s -> "Readings on control pieces scatter by " + number(s) + " (standard deviation of one reading; " + s.from() + ")."
                + (instrument.getStudy() == null ? "" : " The spread above comes from gauge study " + Names.of(instrument.getStudy()) + "."))
                .orElse("Too few readings on control pieces with this gauge to say how it scatters: four repeats are needed, or a gauge study."));
        boolean offered = writable() && known.isPresent() && instrument.getStudy() == null && !Objects.equals(rounded(known.get()), instrument.getSpread());
        Grid.shown(take, offered);
    }

    private Optional<ControlScatter> known() {
        return ControlScatter.of(context().session().project(), instrument, context().registries().properties()).filter(s -> GaugeAmounts.canonical(instrument, 1.0, s.property()) > 0);
    }

    private String number(ControlScatter known) {
        return FieldText.digits(rounded(known)) + (instrument.getUnit() == null || instrument.getUnit().isBlank() ? "" : " " + instrument.getUnit());
    }

    /** In the gauge's unit, two digits: a standard deviation is not known better. */
    private double rounded(ControlScatter known) {
        return BigDecimal.valueOf(known.sd() / GaugeAmounts.canonical(instrument, 1.0, known.property())).round(new MathContext(2)).doubleValue();
    }

    private void take() {
        known().ifPresent(known -> doing().edit("take the spread of readings on control pieces", edit -> {
            edit.set(instrument, ModelPackage.Literals.INSTRUMENT__SPREAD, rounded(known));
            edit.set(instrument, ModelPackage.Literals.INSTRUMENT__SPREAD_FROM, known.from());
        }));
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        forms.forEach(form -> form.reveal(feature));
    }

    @Override
    public void setFocus() {
        forms.getFirst().setFocus();
    }
}
