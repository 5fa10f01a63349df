package org.flexwright.workbench.views;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;
import org.flexwright.workbench.commands.Commands;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.SubjectEditors;
import org.flexwright.workbench.project.FileDrop;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;

/** The project as a tree; Enter or a double click opens a thing, Delete takes it out (and Undo brings it back). */
public final class ProjectTreeView extends ViewPart {

    private final ProjectListener watcher = new Watcher();
    private Kit kit;
    private ProjectService projects;
    private Composite root;
    private EmptyState empty;
    private TreeViewer tree;
    private ProjectTreeLabels labels;

    @Override
    public void createPartControl(Composite parent) {
        kit = getSite().getService(Kit.class);
        projects = getSite().getService(ProjectService.class);
        root = kit.pane(parent, 1, Spacing.NONE);
        root.setLayout(new StackLayout());
        empty = new EmptyState(root, kit, "The project's needs, parts, targets, materials and trials stand here.", "Open a project…",
                () -> Commands.run(getSite().getService(IHandlerService.class), Commands.OPEN));
        projects.addListener(watcher);
        showProject();
    }

    /** Made only when there is a project to show. */
    private void makeTree() {
        tree = new TreeViewer(root, SWT.SINGLE | SWT.FULL_SELECTION);
        tree.setUseHashlookup(true);
        kit.dress(tree.getTree(), Ink.INK, Ink.PAPER, Role.BODY);
        Kit.name(tree.getTree(), "Project");
        labels = new ProjectTreeLabels(kit, projects);
        tree.setContentProvider(new ProjectTreeContent());
        tree.setLabelProvider(labels);
        kit.rows(tree.getTree());
        kit.whenDressed(tree.getTree(), () -> tree.refresh(true));
        tree.addOpenListener(event -> open(selected()));
        tree.getTree().addListener(SWT.KeyDown, this::key);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fillMenu);
        tree.getTree().setMenu(menu.createContextMenu(tree.getTree()));
        getSite().registerContextMenu(menu, tree);
        getSite().setSelectionProvider(tree);
        new FileDrop(tree.getTree(), projects, null);
    }

    private void showProject() {
        Control top = empty;
        if (projects.session().isPresent()) {
            if (tree == null) {
                makeTree();
            }
            Project project = projects.session().get().project();
            tree.setInput(project);
            tree.expandToLevel(Section.TRIALS, 1);
            tree.expandToLevel(Section.TARGETS, 1);
            top = tree.getTree();
        } else if (tree != null) {
            tree.setInput(null);
        }
        ((StackLayout) root.getLayout()).topControl = top;
        root.layout();
    }

    private Object selected() {
        return ((IStructuredSelection) tree.getSelection()).getFirstElement();
    }

    private void open(Object element) {
        if (element instanceof EObject thing) {
            SubjectEditors.open(window(), thing);
        } else if (element instanceof Section section) {
            enter(section);
        }
    }

    /** An empty heading is an invitation to add the first. */
    private void enter(Section section) {
        ProjectSession session = projects.session().orElseThrow();
        if (section.things(session.project()).isEmpty() && !section.addWords().isEmpty() && !session.readOnly()) {
            add(session, section);
        } else {
            tree.setExpandedState(section, !tree.getExpandedState(section));
        }
    }

    private void key(Event event) {
        if (event.keyCode == SWT.DEL && selected() instanceof EObject thing && removable(thing)) {
            remove(thing);
        }
    }

    private boolean removable(EObject thing) {
        return !(thing instanceof Project) && projects.session().filter(session -> !session.readOnly()).isPresent();
    }

    private void remove(EObject thing) {
        projects.session().ifPresent(session -> session.execute("remove " + Names.of(thing), edit -> edit.remove(thing)));
    }

    private void fillMenu(IMenuManager menu) {
        Object element = selected();
        ProjectSession session = projects.session().orElse(null);
        if (element instanceof EObject thing) {
            menu.add(new Item("Open", true, () -> open(thing)));
        }
        boolean writable = session != null && !session.readOnly();
        Section section = section(element);
        if (section != null && !section.addWords().isEmpty()) {
            menu.add(new Item(section.addWords(), writable, () -> add(session, section)));
        }
        if (element instanceof MaterialGrade grade) {
            menu.add(new Item("Add a lot", writable, () -> Additions.addLot(window(), session, grade)));
        }
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        if (element instanceof EObject thing && removable(thing)) {
            menu.add(new Separator());
            menu.add(new Item("Remove\tDel", true, () -> remove(thing)));
        }
    }

    private void add(ProjectSession session, Section section) {
        switch (section) {
            case ATTACHMENTS -> Commands.run(getSite().getService(IHandlerService.class), Commands.ATTACH);
            case TRIALS -> Commands.run(getSite().getService(IHandlerService.class), Commands.NEW_TRIAL);
            default -> Additions.add(window(), session, section);
        }
    }

    private static Section section(Object element) {
        if (element instanceof Section section) {
            return section;
        }
        if (element instanceof EObject thing && thing.eContainer() instanceof Project) {
            for (Section section : Section.values()) {
                if (section.feature() == thing.eContainingFeature()) {
                    return section;
                }
            }
        }
        return null;
    }

    private IWorkbenchWindow window() {
        return getSite().getWorkbenchWindow();
    }

    @Override
    public void setFocus() {
        if (tree != null && projects.session().isPresent()) {
            tree.getTree().setFocus();
        } else if (empty != null) {
            empty.setFocus();
        }
    }

    @Override
    public void dispose() {
        if (projects != null) {
            projects.removeListener(watcher);
        }
        super.dispose();
    }

    /** A line of the context menu. */
    private static final class Item extends Action {
        private final Runnable work;

        Item(String words, boolean enabled, Runnable work) {
            super(words);
            this.work = work;
            setEnabled(enabled);
        }

        @Override
        public void run() {
            work.run();
        }
    }

    private final class Watcher implements ProjectListener {
        @Override
        public void opened() {
            showProject();
        }

        @Override
        public void closed() {
            showProject();
        }

        @Override
        public void changed(Set<EObject> touched) {
            labels.forget();
            Object before = selected();
            tree.refresh(true);
            if (before != null) {
                tree.setSelection(new StructuredSelection(before));
            }
        }
    }
}
