package org.flexwright.workbench.views;

import java.time.Instant;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.gauge.GaugeStudies;
import org.flexwright.core.ranking.Rankings;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Moulds;
import org.flexwright.core.trial.SpotMaps;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.Ranking;
import org.flexwright.model.Session;
import org.flexwright.model.SpotMap;
import org.flexwright.model.TargetSheet;
import org.flexwright.workbench.pages.SubjectEditors;

/** Adds a new, empty thing to a list of the project and opens it. */
final class Additions {

    private Additions() {
    }

    /** Adds one to a section. */
    static void add(IWorkbenchWindow window, ProjectSession session, Section section) {
        if (section == Section.SPOT_MAPS) {
            SpotMap[] map = new SpotMap[1];
            session.execute(section.addWords().toLowerCase(Locale.ROOT), edit -> map[0] = SpotMaps.add(edit, null, null));
            SubjectEditors.open(window, map[0]);
            return;
        }
        if (section == Section.AGEING) {
            AgeingPlan[] plan = new AgeingPlan[1];
            session.execute(section.addWords().toLowerCase(Locale.ROOT), edit -> plan[0] = AgeingPlans.begin(edit));
            SubjectEditors.open(window, plan[0]);
            return;
        }
        EObject made = EcoreUtil.create(section.feature().getEReferenceType());
        int number = section.things(session.project()).size() + 1;
        mark(made, section, number);
        session.execute(section.addWords().toLowerCase(Locale.ROOT), edit -> {
            if (made instanceof Mould mould) {
                Moulds.add(edit, mould);
            } else if (made instanceof GaugeStudy study) {
                GaugeStudies.add(edit, study);
            } else if (made instanceof Ranking ranking) {
                Rankings.add(edit, ranking);
            } else {
                edit.add(session.project(), section.feature(), made);
            }
        });
        SubjectEditors.open(window, made);
    }

    /** Adds a lot to a material. */
    static void addLot(IWorkbenchWindow window, ProjectSession session, MaterialGrade grade) {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        session.execute("add a lot", edit -> edit.add(grade, ModelPackage.Literals.MATERIAL_GRADE__LOTS, lot));
        SubjectEditors.open(window, lot);
    }

    private static void mark(EObject made, Section section, int number) {
        if (made instanceof TargetSheet sheet) {
            sheet.setVersion(number);
        } else if (made instanceof Session session) {
            session.setAt(Instant.now());
            session.setCode(code("S", number));
        } else {
            EStructuralFeature code = made.eClass().getEStructuralFeature("code");
            if (code != null && section == Section.CONTROL_PIECES) {
                made.eSet(code, code("C", number));
            }
        }
    }

    private static String code(String letter, int number) {
        return String.format(Locale.ROOT, "%s%02d", letter, number);
    }
}
