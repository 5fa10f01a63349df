package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.Message;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.StripCanvas;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.kit.VerdictLabel;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;

/** The trial against every target of the newest sheet: value with interval, verdict, strip, and the reason in a sentence. */
final class VerdictBlock {

    private static final int NARROW = 84;

    private final PageContext context;
    private final Kit kit;
    private final Trial trial;
    private final Block block;
    private Object shown;

    VerdictBlock(Composite parent, PageContext context, Trial trial) {
        this.context = context;
        this.kit = context.kit();
        this.trial = trial;
        block = new Block(parent, kit, "Against the targets", 1, new Spacing(0, 0, 0, 3));
    }

    void show() {
        Comparison all = Comparison.of(context.session().project(), context.registries());
        Set<String> others = all.columns().stream().map(Comparison.Column::id).filter(id -> !id.equals(trial.getId())).collect(Collectors.toSet());
        Comparison own = all.hiding(others);
        if (own.equals(shown)) {
            return;
        }
        shown = own;
        Composite body = block.emptied();
        if (own.rows().isEmpty()) {
            block.setTitle("Against the targets");
            Prose.quiet(body, kit, "There are no targets yet. A target sheet says what must be reached; then the verdicts stand here.").setLayoutData(Grid.wide());
            return;
        }
        if (own.columns().isEmpty()) { // only what is made is compared
            block.setTitle("Against target sheet v" + own.sheetVersion());
            Prose.quiet(body, kit, "There is nothing to judge yet. When the trial is made and its parts are read, the verdicts stand here.").setLayoutData(Grid.wide());
            return;
        }
        block.setTitle("Against target sheet v" + own.sheetVersion() + ": " + own.columns().getFirst().summary());
        for (int i = 0; i < own.rows().size(); i++) {
            row(body, own.rows().get(i), own.cell(i, 0));
        }
    }

    private void row(Composite body, Comparison.Row target, Comparison.Cell cell) {
        Composite row = kit.pane(body, 3, new Spacing(0, 0, 4, 1));
        row.setLayoutData(Grid.wide());
        Composite left = kit.pane(row, 1, Spacing.NONE);
        left.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        kit.chars(left, 30);
        kit.label(left, target.title(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        kit.quiet(left, target.limits()).setLayoutData(Grid.wide());
        Composite middle = kit.pane(row, 1, Spacing.NONE);
        middle.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        kit.chars(middle, 24);
        Judgement judgement = cell.judgement();
        kit.label(middle, cell.value().isEmpty() ? "–" : cell.value(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        if (judgement != null) {
            VerdictLabel verdict = new VerdictLabel(middle, kit, Role.BODY);
            verdict.show(judgement.verdict(), target.title());
            verdict.setLayoutData(Grid.wide());
        }
        StripCanvas strip = new StripCanvas(row, kit);
        strip.show(cell.strip(), judgement == null ? Ink.QUIET : Mark.of(judgement.verdict()).ink(), target.title() + ": " + cell.value() + ", " + cell.word());
        strip.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        strip.setVisible(cell.strip() != null);
        row.addListener(SWT.Resize, event -> fold(row, strip));
        if (judgement != null) {
            List<String> words = new ArrayList<>(List.of(judgement.reason().text()));
            judgement.notes().stream().map(Message::text).filter(Objects::nonNull).forEach(words::add);
            Prose.quiet(row, kit, String.join(" ", words)).setLayoutData(Grid.wide(3));
        }
    }

    /** Where there is little room the strip stands below the words. */
    private void fold(Composite row, StripCanvas strip) {
        boolean narrow = row.getClientArea().width < kit.type().chars(Role.BODY, NARROW);
        GridLayout layout = (GridLayout) row.getLayout();
        int columns = narrow ? 2 : 3;
        if (layout.numColumns != columns) {
            layout.numColumns = columns;
            ((GridData) strip.getLayoutData()).horizontalSpan = narrow ? 2 : 1;
            ((GridData) strip.getLayoutData()).exclude = narrow && !strip.isVisible();
            Control last = row.getChildren()[row.getChildren().length - 1];
            if (last != strip) {
                ((GridData) last.getLayoutData()).horizontalSpan = columns;
            }
            ScrollPane.reflowAround(row);
        }
    }
}
