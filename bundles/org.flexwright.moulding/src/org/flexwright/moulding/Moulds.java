package org.flexwright.moulding;

import java.util.List;

import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.Steps;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Trial;
import org.flexwright.moulding.data.Filling;
import org.flexwright.moulding.data.MouldMaterial;
import org.flexwright.moulding.data.MouldTreatment;
import org.flexwright.moulding.data.Preparation;

/** What several rules want to know about a trial: which chemistry meets which mould. */
final class Moulds {
    private static final String ADDITION_SILICONE = "silicone-add";
    private static final String TIN_SILICONE = "silicone-tin";
    private static final String POLYURETHANE = "pu-";
    private static final String PHOTOPOLYMER = "photopolymer";

    private Moulds() {
    }

    static List<Steps.Detailed<Preparation>> preparations(Trial trial) {
        return Steps.of(trial, PrepareStep.ID, Preparation.class);
    }

    static List<Steps.Detailed<Filling>> fillings(Trial trial) {
        return Steps.of(trial, FillStep.ID, Filling.class);
    }

    /** What was done to the face, or what is planned while nothing is entered as done. */
    static MouldTreatment treatment(Preparation preparation) {
        return preparation.getActualTreatment() == MouldTreatment.UNKNOWN ? preparation.getPlannedTreatment() : preparation.getActualTreatment();
    }

    static boolean castsAdditionSilicone(Trial trial) {
        return casts(trial, ADDITION_SILICONE);
    }

    static boolean castsPolyurethane(Trial trial) {
        return casts(trial, POLYURETHANE);
    }

    static boolean isVatPrinted(Steps.Detailed<Preparation> mould) {
        return mould.details().getMouldMaterial() == MouldMaterial.VAT_PRINT || hasMouldOf(mould, PHOTOPOLYMER);
    }

    static boolean isTinSilicone(Steps.Detailed<Preparation> mould) {
        return hasMouldOf(mould, TIN_SILICONE);
    }

    private static boolean casts(Trial trial, String family) {
        return trial.getSteps().stream().flatMap(step -> Mixtures.materials(step).stream()).anyMatch(use -> isCast(use.getRole()) && isOf(use, family));
    }

    private static boolean isCast(PartRole role) {
        return role == PartRole.COMPONENT_A || role == PartRole.COMPONENT_B || role == PartRole.SINGLE;
    }

    private static boolean hasMouldOf(Steps.Detailed<Preparation> mould, String family) {
        return mould.step().getUses().stream().anyMatch(use -> use.getRole() == PartRole.MOULD && isOf(use, family));
    }

    private static boolean isOf(MaterialUse use, String family) {
        MaterialGrade grade = use.getGrade();
        return grade != null && grade.getFamily() != null && grade.getFamily().startsWith(family);
    }
}
