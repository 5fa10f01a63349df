package org.flexwright.workbench.pages.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.find.Finding;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.view.ReadingEntry;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.Settling;

/** Fast entry of readings: what is read above, one big field below. */
final class ReadingPage implements EditorPage {

    private final PageContext context;
    private final Kit kit;
    private final Session session;
    private final Composite root;
    private Doing doing;
    private ReadingSetup setup;
    private ScrollPane pane;
    private Composite notes;
    private ReadingDesk desk;
    private Composite turn;
    private Button apparent;
    private EmptyState empty;
    private ReadingPlan plan;
    private ReadingEntry entry;
    private List<Object> noted = List.of();

    ReadingPage(Composite parent, PageContext context) {
        this.context = context;
        this.kit = context.kit();
        this.session = (Session) context.subject();
        root = kit.pane(parent, 1, Spacing.NONE);
        build();
        Settling.keep(kit, root, () -> { });
    }

    private void build() {
        for (Control old : root.getChildren()) {
            old.dispose();
        }
        setup = null;
        if (context.session().readOnly() || ReadingPlan.groups(context.session().project(), PieceKind.PART).isEmpty()) {
            String words = context.session().readOnly() ? "Readings are typed here. " + context.session().readOnlyReason()
                    : "Readings are typed here, piece by piece. There is no piece yet: add parts to a trial, a reference part or a control piece.";
            empty = new EmptyState(root, kit, words, null, null);
            empty.setLayoutData(Grid.fill());
        } else {
            pane = new ScrollPane(root, kit, 1, Spacing.NONE);
            pane.setLayoutData(Grid.fill());
            setup = new ReadingSetup(pane.body(), context, this::begin);
            setup.setLayoutData(Grid.wide());
            kit.hairline(pane.body());
            Composite below = kit.pane(pane.body(), 1, new Spacing(6, 4, 0, 3));
            below.setLayoutData(Grid.wide());
            Notice notice = new Notice(below, kit, 1);
            doing = new Doing(context.session(), notice::say);
            desk = new ReadingDesk(below, kit);
            desk.setLayoutData(Grid.wide());
            notes = kit.pane(below, 1, Spacing.TIGHT);
            notes.setLayoutData(Grid.wide());
            turn = kit.pane(below, 2, Spacing.FIELDS);
            turn.setLayoutData(Grid.wide());
            Prose.quiet(turn, kit, "On a thin or curved piece the gauge shows an apparent hardness, comparable only at the same spot and support.")
                    .setLayoutData(Grid.wide());
            apparent = kit.action(turn, "Read as &apparent hardness", this::turnApparent);
            begin();
        }
        root.layout(true, true);
        Settling.later(kit, root);
    }

    private void begin() {
        plan = setup == null ? null : setup.plan().orElse(null);
        if (plan != null && desk != null) {
            entry = new ReadingEntry(context.session(), session, plan.property(), plan.key(), plan.instrument(), plan.pieces(), plan.wanted(), context.registries().properties());
            desk.show(entry, plan.property());
            boolean offered = ReadingPlan.apparent(plan.property(), context.registries().properties()) != null;
            ((GridData) turn.getLayoutData()).exclude = !offered;
            turn.setVisible(offered);
            showNotes();
            pane.reflow();
        }
    }

    /** Turns to the pieces among which this one is. */
    void read(Specimen piece) {
        if (setup != null) {
            setup.choose(piece);
            begin();
            int at = entry.pieces().indexOf(piece);
            if (at >= 0 && !entry.isControl()) {
                entry.goTo(at);
                desk.refresh();
            }
        }
    }

    /** What was read so far on this piece in this session counts as apparent hardness, and so does what follows. */
    private void turnApparent() {
        PropertyDef other = ReadingPlan.apparent(plan.property(), context.registries().properties());
        List<Measurement> read = entry.pieces().stream().flatMap(piece -> measurement(piece).stream()).toList();
        int place = entry.place();
        boolean done = read.isEmpty() || doing.edit("count as apparent hardness", edit -> read.forEach(measurement -> edit.set(measurement.getKey(),
                ModelPackage.Literals.PROPERTY_KEY__PROPERTY, other.id())));
        if (done) {
            setup.read(other);
            begin();
            entry.goTo(Math.min(place, entry.pieces().size() - 1));
            desk.refresh();
            desk.setFocus();
        }
    }

    private Optional<Measurement> measurement(Specimen piece) {
        return piece.getMeasurements().stream().filter(m -> m.getSession() == session && m.getKey() != null && plan.property().id().equals(m.getKey()
                .getProperty()) && PartValues.differences(plan.key(), m.getKey(), plan.property()).isEmpty()).findFirst();
    }

    /** What there is to know while reading: the control piece, and findings about what was just read. */
    private void showNotes() {
        String control = entry.controlNote();
        boolean unread = session.getControlPiece() != null && !plan.property().yesNo() && entry.pieces().contains(session.getControlPiece())
                && measurement(session.getControlPiece()).isEmpty() && !entry.isControl();
        List<Finding> findings = new ArrayList<>(context.projects().findings(session).stream().filter(f -> !f.feature().equals("controlPiece")).toList());
        measurement(entry.piece()).map(context.projects()::findings).ifPresent(findings::addAll);
        if (plan.instrument() != null) {
            findings.addAll(context.projects().findings(plan.instrument()));
        }
        List<Object> now = List.of(control, unread, findings);
        if (now.equals(noted)) {
            return;
        }
        noted = now;
        for (Control old : notes.getChildren()) {
            old.dispose();
        }
        if (!control.isEmpty()) {
            new Prose(notes, kit, "▲ caution  " + control, Ink.CAUTION, Role.STRONG).setLayoutData(Grid.wide());
        }
        if (unread) {
            new Prose(notes, kit, "▲ The control piece " + session.getControlPiece().getCode() + " was not read in this session yet.", Ink.CAUTION, Role.BODY)
                    .setLayoutData(Grid.wide());
        }
        findings.forEach(finding -> FindingStrip.of(notes, kit, finding).setLayoutData(Grid.wide()));
        boolean nothing = notes.getChildren().length == 0;
        ((GridData) notes.getLayoutData()).exclude = nothing;
        notes.setVisible(!nothing);
        pane.reflow();
    }

    @Override
    public Control control() {
        return root;
    }

    @Override
    public void changed(Set<EObject> touched) {
        boolean possible = !context.session().readOnly() && !ReadingPlan.groups(context.session().project(), PieceKind.PART).isEmpty();
        if (possible != (setup != null)) {
            build();
            return;
        }
        if (setup != null) {
            setup.refresh();
            List<Specimen> now = setup.plan().map(ReadingPlan::pieces).orElse(List.of());
            if (plan != null && !now.equals(plan.pieces())) {
                begin();
            } else if (entry != null) {
                desk.refresh();
                showNotes();
            }
        }
    }

    @Override
    public void findingsChanged() {
        if (entry != null) {
            showNotes();
        }
    }

    @Override
    public void reveal(EObject object, String feature) {
        if (object instanceof Specimen piece) {
            read(piece);
        }
    }

    @Override
    public void setFocus() {
        if (setup != null) {
            desk.setFocus();
        } else {
            root.setFocus();
        }
    }
}
