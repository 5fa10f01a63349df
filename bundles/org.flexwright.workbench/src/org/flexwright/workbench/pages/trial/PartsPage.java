package org.flexwright.workbench.pages.trial;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Dropping;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Moments;
import org.flexwright.workbench.pages.common.Photos;
import org.flexwright.workbench.pages.common.Properties;

/** The pieces of a trial; of the chosen one every reading. */
final class PartsPage extends BlockPage {

    private static final int MOST = 12;

    private final Trial trial;
    private final Prose none;
    private final Listing<Part> parts;
    private final Button read;
    private final PartBlock chosen;
    private final Photos photos;
    private final Prose noPhotos;

    PartsPage(Composite parent, PageContext context) {
        super(parent, context);
        trial = (Trial) context.subject();
        Block block = new Block(body(), kit(), "Parts and test pieces", 1, Spacing.FIELDS);
        read = writable() ? block.action("&Read them…", this::read) : null;
        if (writable()) {
            block.action("&Add a part", this::add);
        }
        none = Prose.quiet(block.body(), kit(), "No part yet. Add one when the first comes out of the mould or printer: readings belong to parts.");
        none.setLayoutData(Grid.wide());
        parts = new Listing<>(block.body(), kit(), "Parts", MOST, List.of(
                Column.text("Code", 7, part -> orDash(part.getCode())),
                Column.text("Piece", 11, part -> Properties.piece(part.getPieceKind())),
                Column.number("Thickness, mm", 15, part -> part.getThickness() == null ? "" : FieldText.digits(part.getThickness())),
                Column.text("Made", 17, part -> Moments.minute(part.getMadeAt())),
                Column.number("Readings", 10, part -> String.valueOf(part.getMeasurements().stream().mapToInt(m -> m.getReadings().size()).sum())),
                new Column<>("State", 20, false, PartsPage::state, part -> part.isFailed() ? Ink.OUT : Ink.QUIET)));
        parts.control().setLayoutData(Grid.wide());
        chosen = new PartBlock(body(), context, doing());
        parts.whenChosen(this::choose);
        Block pictures = new Block(body(), kit(), "Photos", 1, Spacing.FIELDS);
        if (writable()) {
            pictures.action("Attac&h a photo…", () -> Dropping.choose(body(), context, trial));
        }
        noPhotos = Prose.quiet(pictures.body(), kit(), "No photo yet. Drop one here: a scale bar in it lets it be measured later.");
        noPhotos.setLayoutData(Grid.wide());
        photos = new Photos(pictures.body(), kit(), context.session());
        photos.setLayoutData(Grid.wide());
        Dropping.on(control(), context, trial);
        show();
        choose(trial.getParts().isEmpty() ? null : trial.getParts().getFirst());
        settle();
    }

    private static String orDash(String words) {
        return words == null || words.isBlank() ? "–" : words;
    }

    private static String state(Part part) {
        return !part.isFailed() ? "" : "✕ failed" + (part.getFailReason() == null ? "" : ": " + part.getFailReason());
    }

    private void show() {
        boolean empty = trial.getParts().isEmpty();
        shown(none, empty);
        shown(parts.control(), !empty);
        parts.show(trial.getParts());
        if (read != null) {
            read.setEnabled(!empty);
        }
        photos.show(trial.getAttachments());
        shown(noPhotos, trial.getAttachments().stream().noneMatch(a -> a.getKind() == AttachmentKind.PHOTO));
    }

    private static void shown(Control control, boolean shown) {
        ((GridData) control.getLayoutData()).exclude = !shown;
        control.setVisible(shown);
    }

    private void choose(Part part) {
        parts.choose(part);
        chosen.show(part);
        settle();
    }

    private void add() {
        Part[] made = new Part[1];
        if (doing().edit("add a part", edit -> made[0] = Trials.addPart(edit, trial, null, PieceKind.PART, null, trial.getMadeAt()))) {
            choose(made[0]);
            chosen.setFocus();
        }
    }

    /** Goes to the entry of readings, in today's session or one that begins now. */
    private void read() {
        Session[] session = {today()};
        if (session[0] != null || doing().edit("begin a session", edit -> session[0] = BenchSessions.begin(edit))) {
            Editors.read(context(), session[0], parts.chosen() == null ? trial.getParts().getFirst() : parts.chosen());
        }
    }

    private Session today() {
        List<Session> sessions = context().session().project().getSessions();
        Session last = sessions.isEmpty() ? null : sessions.getLast();
        boolean isToday = last != null && last.getAt() != null && LocalDate.ofInstant(last.getAt(), ZoneId.systemDefault()).equals(LocalDate.now());
        return isToday ? last : null;
    }

    @Override
    protected void refresh() {
        show();
        if (parts.chosen() == null || chosen.part() != parts.chosen()) {
            choose(parts.chosen() == null && !trial.getParts().isEmpty() ? trial.getParts().getLast() : parts.chosen());
        } else {
            chosen.refresh();
        }
    }

    @Override
    public void findingsChanged() {
        chosen.refresh();
        reflow();
    }

    @Override
    public void reveal(EObject object, String feature) {
        trial.getParts().stream().filter(part -> EcoreUtil.isAncestor(part, object)).findFirst().ifPresent(this::choose);
    }

    @Override
    public void setFocus() {
        if (!trial.getParts().isEmpty()) {
            parts.control().setFocus();
        } else {
            super.setFocus();
        }
    }
}
