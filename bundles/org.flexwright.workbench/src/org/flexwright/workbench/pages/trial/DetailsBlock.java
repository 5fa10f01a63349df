package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.StepCard;
import org.flexwright.model.Identified;
import org.flexwright.model.Step;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FieldControl;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Block;

/** The fields of the step's kind, generated from their descriptions: what was meant beside what happened, then everything that has no counterpart. */
final class DetailsBlock implements StepPart {

    private final StepPlace place;
    private final List<Row> rows = new ArrayList<>();
    private final Map<String, Control> fields = new LinkedHashMap<>();
    private FormModel form;
    private FormPane rest;

    /** A row of the grid with what is told about it. */
    private final class Row {
        private final FieldDescriptor planned;
        private final FieldDescriptor actual;
        private final Label difference;
        private final Composite strips;
        private List<Finding> shown = List.of();

        Row(Composite parent, Columns columns, FieldDescriptor planned, FieldDescriptor actual) {
            this.planned = planned;
            this.actual = actual;
            Composite row = columns.row(parent);
            FieldDescriptor named = planned == null ? actual : planned;
            columns.label(row, named.label(), Role.BODY).setToolTipText(named.help());
            cell(row, columns, planned, "planned");
            cell(row, columns, actual, "actual");
            difference = columns.difference(row);
            strips = place.kit().pane(parent, 1, Spacing.TIGHT);
            strips.setLayoutData(Grid.wide());
        }

        private void cell(Composite row, Columns columns, FieldDescriptor field, String word) {
            if (field == null) {
                columns.cell(row);
                return;
            }
            String unit = field.unit().isEmpty() ? "" : ", " + field.unit();
            FieldControl control = columns.field(row, Bindings.of(form, field, !place.writable()), field.label() + ", " + word + unit);
            fields.put(field.name(), control.input());
        }

        private String name() {
            return (planned == null ? actual : planned).name();
        }

        private void show(List<CardLine> lines, List<Finding> all) {
            CardLine line = lines.stream().filter(l -> l.name().equals(name())).findFirst().orElse(null);
            String words = line == null ? "" : line.difference() + (line.outside() && !line.limit().isEmpty() ? ", own limit " + line.limit() : "");
            Columns.show(difference, (line != null && line.outside() ? "▲ " : "") + words);
            place.kit().ink(difference, line != null && line.outside() ? Ink.OUT : Ink.QUIET);
            List<Finding> own = all.stream().filter(f -> planned != null && f.feature().equals(planned.name())
                    || actual != null && f.feature().equals(actual.name())).toList();
            if (!own.equals(shown)) {
                shown = own;
                for (Control old : strips.getChildren()) {
                    old.dispose();
                }
                own.forEach(finding -> FindingStrip.of(strips, place.kit(), finding).setLayoutData(Grid.wide()));
            }
            ((GridData) strips.getLayoutData()).exclude = own.isEmpty();
            strips.setVisible(!own.isEmpty());
        }
    }

    DetailsBlock(Composite parent, StepPlace place) {
        this.place = place;
        EObject details = place.step().getDetails();
        if (place.kind().isEmpty()) {
            absent(parent);
        } else if (details != null && !(details instanceof AnyType)) {
            build(parent, details);
        }
        refresh();
    }

    private void absent(Composite parent) {
        Prose.quiet(parent, place.kit(), "The plugin that knows " + place.step().getKind()
                + " is not here. What it wrote is kept as it is and saved unchanged; install the plugin to see and edit it.").setLayoutData(Grid.wide());
    }

    private void build(Composite parent, EObject details) {
        List<FieldDescriptor> all = FieldDescriptors.ofClass(details.eClass());
        form = FormModel.bound(place.page().session(), details, all);
        parent.getChildren()[0].addListener(SWT.Dispose, event -> form.close());
        List<FieldDescriptor> actuals = all.stream().filter(f -> f.role() == FieldRole.ACTUAL).toList();
        List<FieldDescriptor> others = new ArrayList<>(all);
        others.removeAll(actuals);
        if (!actuals.isEmpty()) {
            Block block = new Block(parent, place.kit(), "Meant and done", 1, Spacing.FIELDS);
            if (place.writable() && actuals.stream().anyMatch(f -> !f.of().isEmpty())) {
                Button fill = block.action("As planned", this::asPlanned);
                fill.setToolTipText("Takes what was planned for every empty field of what happened");
            }
            Columns columns = new Columns(place.kit());
            columns.head(block.body());
            for (FieldDescriptor actual : actuals) {
                FieldDescriptor planned = all.stream().filter(f -> f.name().equals(actual.of())).findFirst().orElse(null);
                others.remove(planned);
                rows.add(new Row(block.body(), columns, planned, actual));
            }
        }
        if (!others.isEmpty()) {
            Block block = new Block(parent, place.kit(), others.stream().allMatch(f -> f.role() == FieldRole.PLANNED) ? "Plan" : "Also", 1, Spacing.FIELDS);
            rest = new FormPane(block.body(), place.kit(), others.stream().map(f -> Bindings.of(form, f, !place.writable())).toList());
            rest.setLayoutData(Grid.wide());
        }
    }

    /** True when a finding is shown beside one of the step's own fields instead of above them all. */
    static boolean shows(Step step, Finding finding) {
        boolean ours = step instanceof Identified known && finding.subject().equals(known.getId());
        EObject details = step.getDetails();
        if (!ours || finding.feature().isEmpty() || details == null || details instanceof AnyType) {
            return false;
        }
        List<FieldDescriptor> all = FieldDescriptors.ofClass(details.eClass());
        return all.stream().anyMatch(f -> f.role() == FieldRole.ACTUAL && (f.name().equals(finding.feature()) || f.of().equals(finding.feature())));
    }

    private List<Finding> findings() {
        return place.page().projects().findings(place.step()).stream().filter(f -> shows(place.step(), f))
                .filter(f -> FindingService.overridden(f, place.page().session().project()).isEmpty()).toList();
    }

    /** What was planned becomes what happened, where nothing was entered yet. */
    private void asPlanned() {
        EObject details = place.step().getDetails();
        List<FieldDescriptor> empty = rows.stream().filter(row -> row.planned != null && row.actual != null).map(row -> row.actual)
                .filter(actual -> form.text(actual.name()).isEmpty()).toList();
        place.doing().edit("take " + StepWords.title(place.step()).toLowerCase(java.util.Locale.ROOT) + " as planned", edit -> empty.forEach(actual -> {
            EStructuralFeature planned = details.eClass().getEStructuralFeature(actual.of());
            EStructuralFeature feature = details.eClass().getEStructuralFeature(actual.name());
            if (details.eGet(planned) != null && !feature.isMany()) {
                edit.set(details, feature, details.eGet(planned));
                org.flexwright.core.field.Provenances.keep(edit, details, feature, org.flexwright.model.Origin.TYPED, "as planned, said by a person", null);
            }
        }));
    }

    @Override
    public void refresh() {
        List<CardLine> lines = StepCard.lines(place.step(), place.kind().orElse(null));
        List<Finding> findings = findings();
        rows.forEach(row -> row.show(lines, findings));
    }

    @Override
    public void findingsChanged() {
        refresh();
    }

    /** Puts the focus into a field; false when there is none of that name here. */
    boolean reveal(String feature) {
        return Optional.ofNullable(fields.get(feature)).map(Control::setFocus).orElse(rest != null && rest.reveal(feature));
    }

    @Override
    public boolean takeFocus() {
        return rows.stream().filter(row -> form.text(row.actual.name()).isEmpty()).findFirst().map(row -> fields.get(row.actual.name()).setFocus()).orElse(false);
    }
}
