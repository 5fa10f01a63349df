package org.flexwright.core.trial;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Identified;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;

/** Target sheets: open until frozen; a change to a frozen one makes a new version. */
public final class TargetSheets {
    private TargetSheets() {
    }

    /** The newest sheet, or null. */
    public static TargetSheet current(Project project) {
        List<TargetSheet> sheets = project.getTargetSheets();
        return sheets.isEmpty() ? null : sheets.get(sheets.size() - 1);
    }

    /** Adds a target to the newest sheet; makes the first sheet, or a new version of a frozen one, for which a reason is needed. */
    public static TargetSheet add(Edit edit, Target target, String reason) {
        TargetSheet sheet = current(edit.project());
        if (sheet == null) {
            sheet = ModelFactory.eINSTANCE.createTargetSheet();
            sheet.setVersion(1);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__TARGET_SHEETS, sheet);
        } else if (sheet.getFrozenAt() != null) {
            sheet = newVersion(edit, reason);
        }
        if (target.getKey() != null && find(sheet, target.getKey()).isPresent()) {
            throw PlanException.of("target.twice", sheet.getVersion(), target.getKey().getProperty());
        }
        edit.add(sheet, ModelPackage.Literals.TARGET_SHEET__TARGETS, target);
        return sheet;
    }

    /** The target for that property read under those conditions; a sheet has one at most. */
    public static Optional<Target> find(TargetSheet sheet, PropertyKey key) {
        return sheet.getTargets().stream().filter(t -> EcoreUtil.equals(t.getKey(), key)).findFirst();
    }

    /** Takes a target out of the newest sheet; of a frozen one, out of its new version, for which a reason is needed. */
    public static TargetSheet remove(Edit edit, PropertyKey key, String reason) {
        TargetSheet sheet = current(edit.project());
        if (sheet == null || find(sheet, key).isEmpty()) {
            throw PlanException.of("target.none", key.getProperty());
        }
        if (sheet.getFrozenAt() != null) {
            sheet = newVersion(edit, reason);
        }
        find(sheet, key).ifPresent(edit::remove);
        return sheet;
    }

    /** Makes the next version from the newest sheet, open again; a reason is needed. */
    public static TargetSheet newVersion(Edit edit, String reason) {
        TargetSheet old = current(edit.project());
        if (reason == null || reason.isBlank()) {
            throw PlanException.of("sheet.frozen", old.getVersion(), old.getVersion() + 1);
        }
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        sheet.setVersion(old.getVersion() + 1);
        sheet.setReason(reason.strip());
        for (Target target : old.getTargets()) {
            Target copy = EcoreUtil.copy(target);
            ((Identified) copy).setId(null);
            sheet.getTargets().add(copy);
        }
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__TARGET_SHEETS, sheet);
        return sheet;
    }

    /** Throws PlanException when the sheet is frozen. Call it before any change to a target. */
    public static void requireOpen(TargetSheet sheet) {
        if (sheet.getFrozenAt() != null) {
            throw PlanException.of("sheet.frozen", sheet.getVersion(), sheet.getVersion() + 1);
        }
    }

    /** Freezes a sheet; it needs at least one target and a name. */
    public static void freeze(Edit edit, TargetSheet sheet, String who) {
        if (sheet.getFrozenAt() != null) {
            throw PlanException.of("sheet.already", sheet.getVersion());
        }
        if (sheet.getTargets().isEmpty()) {
            throw PlanException.of("sheet.empty", sheet.getVersion());
        }
        if (who == null || who.isBlank()) {
            throw PlanException.of("who.empty");
        }
        edit.set(sheet, ModelPackage.Literals.TARGET_SHEET__FROZEN_AT, edit.now());
        edit.set(sheet, ModelPackage.Literals.TARGET_SHEET__FROZEN_BY, who.strip());
    }
}
