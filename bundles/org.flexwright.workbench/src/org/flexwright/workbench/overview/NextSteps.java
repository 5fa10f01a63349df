package org.flexwright.workbench.overview;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.TargetSheet;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.Stages;
import org.flexwright.workbench.commands.Commands;
import org.flexwright.workbench.pages.PageContext;

/** Does what the button of the next step says. */
final class NextSteps {

    private NextSteps() {
    }

    static void take(NextStep step, PageContext context, NeedList needs) {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        switch (step.kind()) {
            case ADD_NEED -> needs.add();
            case ADD_REFERENCE -> add(context, "add a reference part", ModelPackage.Literals.PROJECT__REFERENCE_PARTS);
            case ADD_TARGETS -> add(context, "add a target sheet", ModelPackage.Literals.PROJECT__TARGET_SHEETS);
            case NEW_TRIAL -> Commands.run(window.getService(IHandlerService.class), Commands.NEW_TRIAL);
            case OPEN -> context.open(step.thing());
            case COMPARE -> Stages.go(window, Stage.DECIDE);
        }
    }

    private static void add(PageContext context, String name, EReference list) {
        EObject made = EcoreUtil.create(list.getEReferenceType());
        if (made instanceof TargetSheet sheet) {
            sheet.setVersion(1);
        }
        context.session().execute(name, edit -> edit.add(edit.project(), list, made));
        context.open(made);
    }
}
