package org.flexwright.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.bench.Bench;
import org.flexwright.core.bench.BenchTaps;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.core.trial.Trials;
import org.flexwright.curing.CureStep;
import org.flexwright.curing.DemouldStep;
import org.flexwright.mixing.DegasStep;
import org.flexwright.mixing.MixStep;
import org.flexwright.mixing.RatioRule;
import org.flexwright.mixing.WeighStep;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.moulding.CastProcess;
import org.flexwright.moulding.FillStep;
import org.flexwright.moulding.PrepareStep;

/** A whole pour by taps alone: prepare, weigh with two grams too much of A, mend, mix, vacuum, pour, cure, demould. */
final class Pour {
    /** One touch. */
    record Tap(String key, String given) {
    }

    static final List<Tap> TAPS = List.of(new Tap("start", ""), new Tap("field/actualDryHours", "2"), new Tap("asPlanned/actualTemperature", ""), new Tap("finish", ""),
            new Tap("weigh", "24.88"), new Tap("weigh", "21.57"), new Tap("weigh", "1.89"), new Tap("finish", ""),
            new Tap("ack", "2026-01-15 4"), new Tap("start", ""), new Tap("odd", ""), new Tap("field/scraped", "yes"), new Tap("asTimed/minutes", ""),
            new Tap("finish", ""), new Tap("ack", ""), new Tap("start", ""), new Tap("note", "foam rose to the rim"), new Tap("field/pressure", "6"),
            new Tap("finish", ""), new Tap("ack", ""), new Tap("go", ""), new Tap("asTimed/actualFillMinutes", ""), new Tap("finish", ""), new Tap("start", ""),
            new Tap("field/celsius", "23"), new Tap("finish", ""), new Tap("ask/leftoverFirm", "yes"), new Tap("go", ""), new Tap("field/torn", "no"),
            new Tap("finish", ""), new Tap("skip", "Done elsewhere"), new Tap("made", ""));

    final Registries registries = new Registries(List.of(), List.of(new PrepareStep(), new WeighStep(), new MixStep(), new DegasStep(), new FillStep(), new CureStep(),
            new DemouldStep()), List.of(new CastProcess()), List.of(new RatioRule()), List.of(), List.of());
    final Bench bench = new Bench(registries);
    final Clock clock;

    Pour(Clock clock) {
        this.clock = clock;
    }

    ProjectStore store() {
        return new ProjectStore(new StoreContext(ModelThread.current(), clock, "Kim", "1.0.0", registries.packages()));
    }

    ProjectSession create(Path folder) {
        ProjectSession session = store().create(folder, "Pour");
        plan(session);
        return session;
    }

    /** Plans the next trial, in a session of its own, so that its cautions are read anew. */
    void plan(ProjectSession session) {
        session.execute("Plan", this::plan);
    }

    private void plan(Edit edit) {
        Trial trial = Trials.create(edit, registries.findProcessKind(CastProcess.ID).orElseThrow(), registries::findStepKind, null, "a pour", null);
        Step weigh = step(trial, WeighStep.ID);
        WeighDetails ratio = (WeighDetails) weigh.getDetails();
        ratio.setRatioA(22.88);
        ratio.setRatioB(21.57);
        weigh.getUses().add(use(PartRole.COMPONENT_A, 22.88));
        weigh.getUses().add(use(PartRole.COMPONENT_B, 21.57));
        MixDetails mix = (MixDetails) step(trial, MixStep.ID).getDetails();
        mix.setWorkingTime(15.0);
        Session session = BenchSessions.add(edit, ModelFactory.eINSTANCE.createSession());
        trial.getSteps().forEach(step -> edit.set(step, ModelPackage.Literals.STEP__SESSION, session));
    }

    static Step step(Trial trial, String kind) {
        return trial.getSteps().stream().filter(s -> kind.equals(s.getKind())).findFirst().orElseThrow();
    }

    private static MaterialUse use(PartRole role, double grams) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.setPlanned(grams);
        return use;
    }

    void tap(ProjectSession session, Trial trial, Tap tap) {
        BenchTaps.tap(session, bench, trial, clock.instant(), null, tap.key(), tap.given());
    }

    static Trial last(Project project) {
        return project.getTrials().getLast();
    }

    /** All that a trial shows of the taps done in it, times aside. */
    static String seen(Trial trial) {
        StringBuilder seen = new StringBuilder(trial.getCode() + " " + trial.getState() + " contact " + (trial.getContactAt() != null));
        for (Step step : trial.getSteps()) {
            seen.append('\n').append(step.getTitle()).append(' ').append(step.getState());
            step.getUses().forEach(u -> seen.append(' ').append(u.getWeighings().size()).append(':').append(Mixtures.grams(u)));
            EObject details = step.getDetails();
            if (details != null) {
                for (EStructuralFeature feature : details.eClass().getEAllStructuralFeatures()) {
                    seen.append(details.eIsSet(feature) ? " " + feature.getName() : "");
                }
            }
        }
        trial.getDecisions().forEach(d -> seen.append('\n').append(d.getWord()).append(' ').append(d.getReason()));
        trial.getNotes().forEach(n -> seen.append('\n').append(n.getKind()).append(' ').append(n.getNote()));
        Project project = (Project) trial.eContainer();
        project.getAcknowledgements().stream().filter(a -> a.getStep() != null && a.getStep().eContainer() == trial).forEach(a -> seen.append('\n').append(a.getPrompt()));
        return seen.toString();
    }
}
