package org.flexwright.curing;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.process.StepKind;
import org.flexwright.curing.data.CuringDataPackage;
import org.osgi.service.component.annotations.Component;

/** Taking a part out of its mould. */
@Component(service = StepKind.class)
public final class DemouldStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "curing.demould";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Demould";
    }

    @Override
    public String summary() {
        return "Open the mould once the leftover in the cup is firm to the nail and the planned time has passed.";
    }

    @Override
    public EClass details() {
        return CuringDataPackage.Literals.DEMOULD_DETAILS;
    }
}
