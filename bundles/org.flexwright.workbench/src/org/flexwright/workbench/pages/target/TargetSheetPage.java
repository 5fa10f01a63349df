package org.flexwright.workbench.pages.target;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.core.verdict.Limits;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.TargetSheet;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Moments;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Properties;

/** What must be reached: one row a target. A frozen sheet is only read; a change makes the next version, with its reason. */
final class TargetSheetPage extends BlockPage {

    private static final int MOST = 14;

    private final TargetSheet sheet;
    private final FindingStrips findings;
    private final Block block;
    private final Prose state;
    private final Prose none;
    private final Listing<Target> targets;
    private final TargetBlock chosen;
    private final Block adding;
    private final Block freezing;
    private PickBox<PropertyDef> property;
    private Boolean shownFrozen;

    TargetSheetPage(Composite parent, PageContext context) {
        super(parent, context);
        sheet = (TargetSheet) context.subject();
        block = new Block(body(), kit(), "Targets", 1, Spacing.FIELDS);
        state = Prose.quiet(block.body(), kit(), "");
        state.setLayoutData(Grid.wide());
        none = Prose.quiet(block.body(), kit(), "No target yet. Two to four behaviours that matter are enough; add the first below.");
        none.setLayoutData(Grid.wide());
        PropertyCatalogue catalogue = context.registries().properties();
        targets = new Listing<>(block.body(), kit(), "Targets", MOST, List.of(
                Column.text("Property", 26, target -> Properties.title(target.getKey(), catalogue)),
                Column.text("Conditions", 20, target -> Properties.conditions(target.getKey(), catalogue)),
                Column.text("Target", 18, target -> limits(target, catalogue)),
                Column.number("Weight", 8, target -> target.getWeight() == null ? "" : FieldText.digits(target.getWeight())),
                new Column<>("Rejects a part", 18, false, target -> rejects(target, catalogue), target -> Ink.QUIET)));
        targets.control().setLayoutData(Grid.wide());
        targets.whenChosen(this::choose);
        chosen = new TargetBlock(body(), context, doing());
        adding = new Block(body(), kit(), "Another target", 1, Spacing.FIELDS);
        freezing = new Block(body(), kit(), "Agree on it", 3, Spacing.FIELDS);
        findings = new FindingStrips(body(), context);
        show();
        choose(sheet.getTargets().isEmpty() ? null : sheet.getTargets().getFirst());
        findings.show();
        settle();
    }

    static String limits(Target target, PropertyCatalogue catalogue) {
        return target.getRule() == null || target.getKey() == null || target.getKey().getProperty() == null ? "–"
                : catalogue.find(target.getKey().getProperty()).map(property -> Limits.text(target, property)).orElse("its plugin is not here");
    }

    private static String rejects(Target target, PropertyCatalogue catalogue) {
        String unit = Properties.unit(target.getKey(), catalogue);
        String below = target.getRejectBelow() == null ? "" : "below " + FieldText.digits(target.getRejectBelow()) + " " + unit;
        String above = target.getRejectAbove() == null ? "" : "above " + FieldText.digits(target.getRejectAbove()) + " " + unit;
        return (below + (below.isEmpty() || above.isEmpty() ? "" : ", ") + above).strip();
    }

    private boolean open() {
        return writable() && sheet.getFrozenAt() == null;
    }

    private void show() {
        boolean frozen = sheet.getFrozenAt() != null;
        block.setTitle("Target sheet version " + sheet.getVersion());
        String why = sheet.getReason() == null || sheet.getReason().isBlank() ? "" : " This version: " + sheet.getReason();
        state.setWords((frozen ? "Frozen " + Moments.minute(sheet.getFrozenAt()) + " by " + sheet.getFrozenBy() + ": it is only read."
                : "Open: targets can be changed until it is frozen.") + why);
        Grid.shown(none, sheet.getTargets().isEmpty());
        Grid.shown(targets.control(), !sheet.getTargets().isEmpty());
        targets.show(sheet.getTargets());
        adding.setShown(open());
        freezing.setShown(writable());
        if (shownFrozen == null || shownFrozen != frozen) {
            shownFrozen = frozen;
            fillAdding();
            fillFreezing(frozen);
        }
    }

    private void fillAdding() {
        Composite body = Flow.pane(adding.emptied(), kit(), Ink.PAPER);
        body.setLayoutData(Grid.wide());
        property = new PickBox<>(body, kit(), "Property of the new target", null, PropertyDef::title);
        property.show(context().registries().properties().all(), context().registries().properties().all().stream().findFirst().orElse(null));
        kit().action(body, "&Add a target", this::add);
    }

    private void add() {
        PropertyDef wanted = property.chosen();
        if (wanted == null) {
            doing().say("No property is known; a plugin brings them.");
            return;
        }
        Target target = ModelFactory.eINSTANCE.createTarget();
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(wanted.id());
        key.setPieceKind(PieceKind.PART);
        target.setKey(key);
        target.setRule(wanted.yesNo() ? TargetRule.NEVER : TargetRule.BETWEEN);
        target.setWeight(1.0);
        if (doing().edit("add a target", edit -> {
            TargetSheets.requireOpen(sheet);
            edit.add(sheet, ModelPackage.Literals.TARGET_SHEET__TARGETS, target);
        })) {
            choose(target);
            chosen.setFocus();
        }
    }

    private void fillFreezing(boolean frozen) {
        Composite body = freezing.emptied();
        if (frozen) {
            freezing.setTitle("Change it");
            kit().text(body, "Why a new version");
            Text reason = field(body, "Why a new version", 40, true);
            kit().action(body, "Make the &next version", () -> next(reason.getText()));
        } else {
            freezing.setTitle("Agree on it");
            kit().text(body, "Agreed by");
            Text who = field(body, "Agreed by", 24, false);
            Button freeze = kit().action(body, "&Freeze this sheet", () -> doing().edit("freeze the target sheet", edit -> TargetSheets.freeze(edit, sheet,
                    who.getText())));
            freeze.setToolTipText("A frozen sheet is never changed; a change makes the next version");
        }
    }

    private Text field(Composite body, String name, int chars, boolean wide) {
        Text text = kit().field(body, name, SWT.SINGLE);
        text.setLayoutData(new GridData(wide ? SWT.FILL : SWT.BEGINNING, SWT.CENTER, wide, false));
        kit().chars(text, chars);
        return text;
    }

    private void next(String reason) {
        TargetSheet[] made = new TargetSheet[1];
        if (sheet != TargetSheets.current(context().session().project())) {
            doing().say("There is a newer version already: " + TargetSheets.current(context().session().project()).getVersion() + "; change that one.");
        } else if (doing().edit("make target sheet version " + (sheet.getVersion() + 1), edit -> made[0] = TargetSheets.newVersion(edit, reason))) {
            context().open(made[0]);
        }
    }

    private void choose(Target target) {
        targets.choose(target);
        chosen.show(target, open());
        settle();
    }

    @Override
    protected void refresh() {
        show();
        Target still = targets.chosen();
        if (still != chosen.target()) {
            choose(still == null && !sheet.getTargets().isEmpty() ? sheet.getTargets().getLast() : still);
        } else {
            chosen.show(still, open());
        }
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        sheet.getTargets().stream().filter(target -> EcoreUtil.isAncestor(target, object)).findFirst().ifPresent(target -> {
            choose(target);
            chosen.reveal(feature);
        });
    }

    @Override
    public void setFocus() {
        if (sheet.getTargets().isEmpty()) {
            if (open()) {
                property.control().setFocus();
            }
        } else {
            targets.control().setFocus();
        }
    }
}
