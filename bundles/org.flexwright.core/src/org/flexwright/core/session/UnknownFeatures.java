package org.flexwright.core.session;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.eclipse.emf.ecore.xml.type.XMLTypeFactory;

/** Attributes and elements of a known object that this program does not know; they stay with the object and are written again. */
final class UnknownFeatures extends AdapterImpl {
    private final AnyType content = XMLTypeFactory.eINSTANCE.createAnyType();

    private UnknownFeatures() {
    }

    /** What is kept for an object, or null. */
    static AnyType of(EObject object) {
        // asking an object for its adapters makes it hold a list; most have none
        if (((InternalEObject) object).eNotificationRequired()) {
            for (Adapter a : object.eAdapters()) {
                if (a instanceof UnknownFeatures u) {
                    return u.content;
                }
            }
        }
        return null;
    }

    /** What is kept for an object, made when needed. */
    static AnyType on(EObject object) {
        AnyType present = of(object);
        if (present != null) {
            return present;
        }
        UnknownFeatures made = new UnknownFeatures();
        object.eAdapters().add(made);
        return made.content;
    }
}
