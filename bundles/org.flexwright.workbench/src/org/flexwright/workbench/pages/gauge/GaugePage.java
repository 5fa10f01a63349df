package org.flexwright.workbench.pages.gauge;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.gauge.GaugeAnalysis;
import org.flexwright.core.gauge.GaugeOutcome;
import org.flexwright.core.gauge.GaugeResult;
import org.flexwright.core.gauge.GaugeStudies;
import org.flexwright.core.gauge.GaugeTable;
import org.flexwright.core.gauge.GaugeViews;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.workbench.kit.BarsPane;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.ChartFiles;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;

/** A gauge study: what is read with which gauge, a field for each piece and person, and what it says with its components drawn. */
final class GaugePage extends BlockPage {
    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.GAUGE_STUDY__CODE, ModelPackage.Literals.GAUGE_STUDY__TITLE, ModelPackage.Literals.GAUGE_STUDY__AT,
            ModelPackage.Literals.GAUGE_STUDY__TOLERANCE, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();
    private static final int CHART = 72;

    private final GaugeStudy study;
    private final FormPane form;
    private final PickBox<PropertyDef> property;
    private final PickBox<Instrument> gauge;
    private final GaugeGrid grid;
    private final Composite said;
    private final BarsPane bars;
    private final Button keep;
    private final Block drawn;
    private final ChartPane chart;

    GaugePage(Composite parent, PageContext context) {
        super(parent, context);
        study = (GaugeStudy) context.subject();
        Block what = new Block(body(), kit(), "Gauge study", 1, Spacing.FIELDS);
        Composite bar = Flow.pane(what.body(), kit(), Ink.PAPER);
        bar.setLayoutData(Grid.wide());
        kit().text(bar, "What is read");
        property = new PickBox<>(bar, kit(), "What is read", null, PropertyDef::title);
        property.whenChosen(this::setProperty);
        kit().text(bar, "with");
        gauge = new PickBox<>(bar, kit(), "Gauge", "no gauge named", i -> i.getName() == null ? "gauge without a name" : i.getName());
        gauge.whenChosen(chosen -> doing().edit("choose the gauge", edit -> edit.set(study, ModelPackage.Literals.GAUGE_STUDY__INSTRUMENT, chosen)));
        property.control().setEnabled(writable());
        gauge.control().setEnabled(writable());
        FormModel model = FormModel.bound(context.session(), study, FIELDS);
        form = new FormPane(what.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        Block readings = new Block(body(), kit(), "Readings", 1, Spacing.FIELDS);
        Prose.quiet(readings.body(), kit(), "One field for each piece and person: readings separated by semicolons. Enter writes them down and goes on to the next piece. "
                + "Mix the order of the pieces, and do not look at what was read before.").setLayoutData(Grid.wide());
        grid = new GaugeGrid(readings.body(), context, study, doing(), writable());
        grid.setLayoutData(Grid.wide());
        if (writable()) {
            Composite add = Flow.pane(readings.body(), kit(), Ink.PAPER);
            add.setLayoutData(Grid.wide());
            adder(add, "New piece", "Add a &piece", name -> doing().edit("add a piece", edit -> GaugeStudies.addPiece(edit, study, name)));
            adder(add, "New person", "Add a p&erson", name -> doing().edit("add a person", edit -> GaugeStudies.addPerson(edit, study, name)));
        }
        Block result = new Block(body(), kit(), "What it says", 1, Spacing.FIELDS);
        keep = writable() ? result.action("&Keep as own spread of the gauge", this::keep) : null;
        bars = new BarsPane(result.body(), kit());
        bars.setLayoutData(Grid.wide());
        said = kit().pane(result.body(), 1, Spacing.FIELDS);
        said.setLayoutData(Grid.wide());
        drawn = new Block(body(), kit(), "By piece and person", 1, Spacing.FIELDS);
        chart = new ChartPane(drawn.body(), kit());
        GridData data = Grid.wide();
        data.heightHint = kit().grid().steps(CHART);
        chart.setLayoutData(data);
        Composite files = Flow.pane(drawn.body(), kit(), Ink.PAPER);
        files.setLayoutData(Grid.wide());
        ChartFiles.actions(files, kit(), context, chart, doing()::say);
        show();
        settle();
    }

    /** Adds what was typed; true when it went through. */
    private interface Adding {
        boolean add(String name);
    }

    private void adder(Composite parent, String name, String words, Adding adding) {
        Text field = kit().field(parent, name, SWT.SINGLE);
        Flow.grow(field, 12);
        Runnable add = () -> {
            if (adding.add(field.getText())) {
                field.setText("");
            }
            field.setFocus();
        };
        field.addListener(SWT.DefaultSelection, event -> add.run());
        kit().action(parent, words, add);
    }

    private void setProperty(PropertyDef chosen) {
        doing().edit("choose what is read", edit -> {
            if (study.getKey() == null) {
                PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
                key.setProperty(chosen.id());
                edit.set(study, ModelPackage.Literals.GAUGE_STUDY__KEY, key);
            } else {
                edit.set(study.getKey(), ModelPackage.Literals.PROPERTY_KEY__PROPERTY, chosen.id());
            }
        });
    }

    private Optional<PropertyDef> chosen() {
        return study.getKey() == null || study.getKey().getProperty() == null ? Optional.empty() : context().registries().findProperty(study.getKey().getProperty());
    }

    private void keep() {
        chosen().map(def -> GaugeAnalysis.of(study, def)).filter(GaugeResult.class::isInstance).map(GaugeResult.class::cast)
                .ifPresent(result -> doing().edit("keep the spread with the gauge", edit -> GaugeStudies.keepWithGauge(edit, result)));
    }

    private void show() {
        List<PropertyDef> offered = context().registries().properties().all().stream().filter(def -> !def.yesNo()).toList();
        Optional<PropertyDef> def = chosen();
        property.show(offered, def.orElse(null));
        gauge.show(context().session().project().getInstruments(), study.getInstrument());
        grid.show(def.orElse(null));
        for (var child : said.getChildren()) {
            child.dispose();
        }
        GaugeOutcome outcome = def.map(d -> GaugeAnalysis.of(study, d)).orElse(null);
        bars.show(outcome instanceof GaugeResult result ? GaugeViews.components(result) : null);
        if (outcome instanceof GaugeResult result) {
            say("Standard deviations; line: 95 % interval.", Ink.QUIET);
            GaugeViews.sentences(result).forEach(sentence -> say(sentence, Ink.INK));
            if (GaugeStudies.keptWithGauge(result)) {
                say("Its repeatability stands with the gauge as its own spread.", Ink.IN);
            }
            say("[" + GaugeResult.SOURCE.display() + "; " + GaugeResult.INTERVALS.display() + "]", Ink.QUIET);
        } else {
            say(outcome instanceof GaugeOutcome.Refused no ? no.sentence().text() : "Choose what is read first.", Ink.INK);
        }
        if (keep != null) {
            keep.setEnabled(outcome instanceof GaugeResult result && study.getInstrument() != null && !GaugeStudies.keptWithGauge(result));
        }
        Optional<PlotModel> plot = def.flatMap(d -> GaugeViews.readings(GaugeTable.of(study), d));
        drawn.setShown(plot.isPresent());
        plot.ifPresent(chart::show);
    }

    private void say(String sentence, Ink ink) {
        new Prose(said, kit(), sentence, ink, Role.BODY).setLayoutData(Grid.wide());
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        form.reveal(feature);
    }
}
