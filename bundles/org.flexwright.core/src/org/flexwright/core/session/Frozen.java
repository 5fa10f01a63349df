package org.flexwright.core.session;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Message;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recipe;
import org.flexwright.model.TargetSheet;

/** Target sheets and recipes are not changed once they are frozen, whoever asks: an old print must come out the same again. */
final class Frozen {
    private Frozen() {
    }

    /** Refuses a change to what was frozen before it. */
    static void check(Change change) {
        List<EObject> arriving = change.arriving();
        change.slots().keySet().forEach(slot -> frozen(slot.owner(), change, arriving).ifPresent(Frozen::refuse));
        change.leaving().forEach(o -> frozen(o, change, arriving).ifPresent(Frozen::refuse));
    }

    private static Optional<EObject> frozen(EObject object, Change change, List<EObject> arriving) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (arriving.contains(at)) {
                return Optional.empty();
            }
            if (at instanceof TargetSheet && before(at, ModelPackage.Literals.TARGET_SHEET__FROZEN_AT, change) != null
                    || at instanceof Recipe && before(at, ModelPackage.Literals.RECIPE__FROZEN_AT, change) != null) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private static Object before(EObject object, EStructuralFeature feature, Change change) {
        Change.Slot slot = new Change.Slot(object, feature);
        return change.slots().containsKey(slot) ? change.slots().get(slot).before() : object.eGet(feature);
    }

    /** The frozen sheet or recipe an object is or is in. */
    static Optional<EObject> holder(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof TargetSheet s && s.getFrozenAt() != null || at instanceof Recipe r && r.getFrozenAt() != null) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private static void refuse(EObject frozen) {
        throw new RefusedException(sentence(frozen));
    }

    static Message sentence(EObject frozen) {
        return frozen instanceof TargetSheet sheet
                ? Message.of(ProjectStore.class, "edit.frozenSheet", Integer.toString(sheet.getVersion()))
                : Message.of(ProjectStore.class, "edit.frozenRecipe", ((Recipe) frozen).getCode(), Integer.toString(((Recipe) frozen).getVersion()));
    }
}
