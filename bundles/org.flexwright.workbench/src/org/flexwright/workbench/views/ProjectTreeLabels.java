package org.flexwright.workbench.views;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.graphics.TextStyle;
import org.flexwright.core.naming.Names;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.TrialMark;

/** Names in the project tree: headings with their count, trials with their verdict. */
final class ProjectTreeLabels extends StyledCellLabelProvider {

    private final Kit kit;
    private final ProjectService projects;
    private final Map<Trial, TrialMark> marks = new HashMap<>();

    ProjectTreeLabels(Kit kit, ProjectService projects) {
        super(COLORS_ON_SELECTION);
        this.kit = kit;
        this.projects = projects;
    }

    /** Forgets the verdicts; they are judged again when shown. */
    void forget() {
        marks.clear();
    }

    @Override
    public void update(ViewerCell cell) {
        StyledString words = words(cell.getElement());
        cell.setText(words.getString());
        cell.setStyleRanges(words.getStyleRanges());
        cell.setForeground(kit.color(Ink.INK));
        cell.setFont(kit.type().font(cell.getElement() instanceof Project ? Role.STRONG : Role.BODY));
        super.update(cell);
    }

    private StyledString words(Object element) {
        if (element instanceof Section section) {
            int count = projects.session().map(session -> section.things(session.project()).size()).orElse(0);
            return new StyledString(section.word()).append(count == 0 ? "" : "  " + count, in(Ink.QUIET));
        }
        if (element instanceof Trial trial) {
            TrialMark mark = marks.computeIfAbsent(trial, t -> TrialMark.of(t, projects));
            return new StyledString(mark.mark().shape() + " ", in(mark.mark().ink())).append(Names.tab(trial))
                    .append("  " + mark.words() + "  ", in(mark.mark().ink())).append(title(trial), in(Ink.QUIET));
        }
        return new StyledString(element instanceof EObject thing ? Names.of(thing) : "");
    }

    private static String title(Trial trial) {
        return trial.getTitle() == null ? "" : trial.getTitle();
    }

    private StyledString.Styler in(Ink ink) {
        return new StyledString.Styler() {
            @Override
            public void applyStyles(TextStyle style) {
                style.foreground = kit.color(ink);
            }
        };
    }
}
