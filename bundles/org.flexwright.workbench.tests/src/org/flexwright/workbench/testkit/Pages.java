package org.flexwright.workbench.testkit;

import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.pages.SubjectEditors;

/** A person at the pages of the editors. */
public final class Pages {

    private Pages() {
    }

    /** Opens a thing at one of its pages; gives back the window's shell, where its controls are found. */
    public static Shell open(EObject thing, String page) {
        SubjectEditor editor = (SubjectEditor) SubjectEditors.open(Ui.window(), thing);
        if (!editor.show(page)) {
            throw new AssertionError("There is no page " + page + ".");
        }
        Ui.pump();
        return Ui.window().getShell();
    }

    /** The open project. */
    public static Project project() {
        return session().project();
    }

    /** The session of the open project. */
    public static ProjectSession session() {
        return Ui.projects().session().orElseThrow();
    }

    /** The trial with that code. */
    public static Trial trial(String code) {
        return project().getTrials().stream().filter(t -> code.equals(t.getCode())).findFirst().orElseThrow();
    }

    /** The first step of that kind. */
    public static Step step(Trial trial, String kind) {
        return trial.getSteps().stream().filter(s -> kind.equals(s.getKind())).findFirst().orElseThrow();
    }

    /** Presses Enter in a field. */
    public static void enter(Text field) {
        Event event = new Event();
        event.detail = SWT.TRAVERSE_RETURN;
        event.doit = true;
        field.notifyListeners(SWT.Traverse, event);
        Ui.pump();
    }

    /** Presses a key in a control. */
    public static void key(Control control, int code) {
        Event event = new Event();
        event.keyCode = code;
        event.character = code < 128 ? (char) code : 0;
        event.doit = true;
        control.notifyListeners(SWT.KeyDown, event);
        Ui.pump();
    }

    /** The visible control whose name begins so. */
    public static Control named(Control root, String beginning) {
        return Ui.find(root, Control.class, beginning + "…", control -> Kit.nameOf(control).startsWith(beginning));
    }

    /** True when a visible control's name begins so. */
    public static boolean hasNamed(Control root, String beginning) {
        return Ui.all(root, Control.class).stream().anyMatch(control -> Kit.nameOf(control).startsWith(beginning));
    }

    /** Plans a casting trial as a maker would: 3 x 12 ml, 100 to 90 by volume, 22.88 g of A and 21.57 g of B. */
    public static Trial cast() {
        Trial[] made = new Trial[1];
        session().execute("plan", edit -> {
            made[0] = Trials.create(edit, Ui.projects().registries().findProcessKind("moulding.cast").orElseThrow(), Ui.projects().registries()::findStepKind,
                    null, "cast for a test", "to see whether it snaps");
            Step weigh = step(made[0], "mixing.weigh");
            type(weigh.getDetails(), "ratioA", "100");
            type(weigh.getDetails(), "ratioB", "90");
            type(weigh.getDetails(), "basis", "volume");
            type(weigh.getDetails(), "densityA", "1.05");
            type(weigh.getDetails(), "densityB", "1.10");
            type(weigh.getDetails(), "ownLimit", "2 %");
            use(weigh, PartRole.COMPONENT_A, 22.88);
            use(weigh, PartRole.COMPONENT_B, 21.57);
        });
        Ui.pump();
        return made[0];
    }

    /** Types a value into a feature of an object that is being made in an edit. */
    public static void type(EObject details, String feature, String words) {
        EAttribute attribute = (EAttribute) details.eClass().getEStructuralFeature(feature);
        if (!(FieldDescriptors.of(attribute).read(words) instanceof FieldInput.Read read)) {
            throw new AssertionError(feature + " does not take " + words);
        }
        details.eSet(attribute, read.value());
    }

    private static void use(Step step, PartRole role, double grams) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.setPlanned(grams);
        step.getUses().add(use);
    }

    /** The use of that role. */
    public static MaterialUse use(Step step, PartRole role) {
        return step.getUses().stream().filter(u -> u.getRole() == role).findFirst().orElseThrow();
    }

    /** The kept version of what a person typed into a feature, as the field prints it. */
    public static Optional<Object> value(EObject object, String feature) {
        return Optional.ofNullable(object.eGet(object.eClass().getEStructuralFeature(feature)));
    }

    /** Sets a feature of an object of the project. */
    public static void set(EObject object, String feature, Object value) {
        session().execute("set " + feature, edit -> edit.set(object, object.eClass().getEStructuralFeature(feature), value));
        Ui.pump();
    }
}
