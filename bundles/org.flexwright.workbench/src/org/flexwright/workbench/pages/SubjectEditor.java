package org.flexwright.workbench.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.flexwright.core.find.Finding;
import org.flexwright.core.naming.Names;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Entry;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.kit.WordRow;
import org.flexwright.workbench.project.FileDrop;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.StatusWords;
import org.flexwright.workbench.project.Trouble;

/** The editor of one thing of the project: its name, a word for each page, the page. Pages are made when first looked at. */
public final class SubjectEditor extends EditorPart {

    /** Id of this editor. */
    public static final String ID = "org.flexwright.workbench.subject";

    private final Map<String, EditorPage> made = new LinkedHashMap<>();
    private final ProjectListener watcher = new Watcher();
    private ProjectService projects;
    private Kit kit;
    private EObject subject;
    private List<EditorPageProvider> providers = List.of();
    private Composite root;
    private Label heading;
    private WordRow words;
    private Composite stack;
    private boolean dirty;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        kit = site.getService(Kit.class);
        projects = site.getService(ProjectService.class);
        subject = projects.find(((SubjectInput) input).address())
                .orElseThrow(() -> new PartInitException("There is no " + input.getName() + " in the project any more."));
        List<EditorPageProvider> accepting = site.getService(EditorPages.class).pagesFor(subject);
        providers = accepting.isEmpty() ? List.of(new FieldsPageProvider()) : accepting;
        setPartName(Names.tab(subject));
        setTitleToolTip(Names.of(subject));
    }

    @Override
    public void createPartControl(Composite parent) {
        root = kit.pane(parent, 1, Spacing.NONE);
        Composite head = kit.pane(root, 2, new Spacing(6, 3, 2, 1));
        head.setLayoutData(Grid.wide());
        kit.label(head, Names.kind(subject), Ink.QUIET, Role.HEADING);
        heading = kit.heading(head, Names.of(subject));
        heading.setLayoutData(Grid.wide());
        if (providers.size() > 1) {
            words = new WordRow(head, kit, "Pages", Ink.PAPER);
            providers.forEach(p -> words.add(p.id(), p.title(), p.title()));
            words.whenChosen(this::showPage);
            GridData left = Grid.wide(2);
            left.horizontalIndent = -kit.grid().gap();
            words.setLayoutData(left);
        }
        kit.hairline(root);
        if (subject instanceof Entry entry) {
            new FileDrop(head, projects, entry);
        }
        stack = kit.pane(root, 1, Spacing.NONE);
        stack.setLayout(new StackLayout());
        stack.setLayoutData(Grid.fill());
        projects.addListener(watcher);
        showPage(first().id());
    }

    /** The page that belongs to the present stage, or the leftmost. */
    private EditorPageProvider first() {
        IPerspectiveDescriptor perspective = getSite().getPage().getPerspective();
        Stage now = perspective == null ? Stage.PLAN : Stage.of(perspective.getId()).orElse(Stage.PLAN);
        return providers.stream().filter(p -> p.stage() == now).findFirst().orElse(providers.get(0));
    }

    /** Turns to the page of that stage; false when the subject has none. */
    public boolean show(Stage stage) {
        return providers.stream().filter(p -> p.stage() == stage).findFirst().map(p -> {
            showPage(p.id());
            return true;
        }).orElse(false);
    }

    /** Turns to the page with that id, or empty when there is none; for plugins that know each other's pages. */
    public boolean show(String page) {
        if (providers.stream().noneMatch(p -> p.id().equals(page))) {
            return false;
        }
        showPage(page);
        return true;
    }

    /** What the editor is about. */
    public EObject subject() {
        return subject;
    }

    /** Brings a place into sight on every page made so far. */
    public void reveal(EObject object, String feature) {
        made.values().forEach(page -> page.reveal(object, feature));
    }

    private void showPage(String id) {
        EditorPage page = made.computeIfAbsent(id, this::make);
        ((StackLayout) stack.getLayout()).topControl = page.control();
        stack.layout();
        if (words != null) {
            words.select(id);
        }
    }

    private EditorPage make(String id) {
        EditorPageProvider provider = providers.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
        try {
            return provider.create(stack, new Context());
        } catch (RuntimeException | LinkageError e) {
            ILog.get().error("Page " + id + " failed.", e);
            EmptyState failed = new EmptyState(stack, kit, "This page did not open. " + Trouble.unexpected(), null, null);
            return () -> failed;
        }
    }

    private EditorPage top() {
        return made.values().stream().filter(p -> p.control() == ((StackLayout) stack.getLayout()).topControl).findFirst().orElseThrow();
    }

    @Override
    public void setFocus() {
        top().setFocus();
        Display display = stack.getDisplay();
        display.asyncExec(() -> { // what was not drawn yet did not take the focus, and without a focus no key is heard
            if (!stack.isDisposed() && display.getFocusControl() == null && display.getActiveShell() == stack.getShell() && stack.isVisible()) {
                top().setFocus();
            }
        });
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        projects.save(e -> Trouble.tell(getSite().getShell(), "Not saved", e.getMessage()));
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("A project is saved where it is.");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public boolean isDirty() {
        return dirty;
    }

    /** Nothing is lost on closing: edits are in the journal, so nothing is asked. */
    @Override
    public boolean isSaveOnCloseNeeded() {
        return false;
    }

    @Override
    public void dispose() {
        if (projects != null) {
            projects.removeListener(watcher);
        }
        super.dispose();
    }

    private void markDirty() {
        boolean now = projects.unsaved(subject);
        if (now != dirty) {
            dirty = now;
            firePropertyChange(PROP_DIRTY);
        }
    }

    private void close() {
        getSite().getShell().getDisplay().asyncExec(() -> {
            if (!root.isDisposed()) {
                getSite().getPage().closeEditor(this, false);
            }
        });
    }

    private final class Watcher implements ProjectListener {
        @Override
        public void closed() {
            close();
        }

        @Override
        public void saved() {
            markDirty();
        }

        @Override
        public void changed(Set<EObject> touched) {
            if (projects.find(((SubjectInput) getEditorInput()).address()).filter(found -> found == subject).isEmpty()) {
                close();
                return;
            }
            setPartName(Names.tab(subject));
            setTitleToolTip(Names.of(subject));
            heading.setText(Kit.plain(Names.of(subject)));
            made.values().forEach(page -> page.changed(touched));
            markDirty();
        }

        @Override
        public void findingsChanged() {
            made.values().forEach(EditorPage::findingsChanged);
        }
    }

    private final class Context implements PageContext {
        private final ProjectSession session = projects.session().orElseThrow();

        @Override
        public EObject subject() {
            return subject;
        }

        @Override
        public ProjectSession session() {
            return session;
        }

        @Override
        public Registries registries() {
            return projects.registries();
        }

        @Override
        public Kit kit() {
            return kit;
        }

        @Override
        public ProjectService projects() {
            return projects;
        }

        @Override
        public List<Finding> findings() {
            return projects.findings(subject);
        }

        @Override
        public void open(EObject other) {
            SubjectEditors.open(getSite().getWorkbenchWindow(), other);
        }

        @Override
        public void status(String line) {
            getSite().getService(StatusWords.class).say(line);
        }
    }
}
