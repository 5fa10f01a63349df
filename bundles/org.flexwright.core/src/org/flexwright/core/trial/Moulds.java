package org.flexwright.core.trial;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.session.Edit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;

/** Moulds: each cast counted, how the parts came out, and the limit that its owner set by own experience. */
public final class Moulds {
    /** Casts left until the own limit at which it is said; common practice, no source. */
    public static final int FEW = 2;

    private Moulds() {
    }

    /** The next free code: M1, M2... */
    public static String nextCode(Project project) {
        return Codes.next("M", 1, project.getMoulds().stream().map(Mould::getCode).toList());
    }

    /** Adds a mould that is filled in; without a code it gets the next free one. Throws PlanException when its code is taken. */
    public static Mould add(Edit edit, Mould mould) {
        String free = nextCode(edit.project());
        mould.setCode(Codes.free(mould.getCode() == null ? free : mould.getCode().strip(), edit.project().getMoulds().stream().map(Mould::getCode).toList(), "mould.taken",
                free));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__MOULDS, mould);
        return mould;
    }

    /** Casts it has seen: those counted here and those before. */
    public static int casts(Mould mould) {
        return mould.getCasts().size() + (mould.getCastsBefore() == null ? 0 : mould.getCastsBefore());
    }

    /** Casts that are left until its owner's limit, below zero when it is past it; null when there is no limit. */
    public static Integer left(Mould mould) {
        return mould.getCastsLimit() == null ? null : Integer.valueOf(mould.getCastsLimit() - casts(mould));
    }

    /**
     * Counts a cast now.
     *
     * @param trial        the trial that was cast, or null
     * @param release      what released the parts, or null
     * @param releasedWell whether they came out without force or damage; null while nobody knows
     * @param parts        parts that came out, or null; not negative
     */
    public static MouldCast cast(Edit edit, Mould mould, Trial trial, String release, Boolean releasedWell, Integer parts) {
        if (trial != null && mould.getCasts().stream().anyMatch(cast -> cast.getTrial() == trial)) {
            throw PlanException.of("mould.counted", mould.getCode(), trial.getCode());
        }
        if (parts != null && parts < 0) {
            throw PlanException.of("mould.parts", parts);
        }
        MouldCast cast = ModelFactory.eINSTANCE.createMouldCast();
        cast.setAt(edit.now());
        cast.setTrial(trial);
        cast.setRelease(release == null || release.isBlank() ? null : release.strip());
        cast.setReleasedWell(releasedWell);
        cast.setParts(parts);
        edit.add(mould, ModelPackage.Literals.MOULD__CASTS, cast);
        if (trial != null && trial.getMould() != mould && EcoreUtil.getRootContainer(trial) == edit.project()) {
            edit.set(trial, ModelPackage.Literals.TRIAL__MOULD, mould);
        }
        return cast;
    }
}
