package org.flexwright.core.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EcoreFactory;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** A process nobody heard of: two liquids stirred and poured, described by annotations alone; its clock stands where the test puts it. */
final class Toy {
    static final Instant START = Instant.parse("2026-03-01T23:50:00Z");

    final EPackage details = EcoreFactory.eINSTANCE.createEPackage();
    final EClass stirring = type("Stirring");
    final EClass pouring = type("Pouring");
    final Hands clock = new Hands();
    final Registries registries;
    final Bench bench;

    /** A wall clock that is put by hand. */
    static final class Hands extends Clock {
        Instant now = START;

        void on(Duration by) {
            now = now.plus(by);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    Toy() {
        this(false);
    }

    /** @param sheet whether its caution asks for the data sheet */
    Toy(boolean sheet) {
        details.setName("toy");
        details.setNsPrefix("toy");
        details.setNsURI("urn:flexwright:toy:1");
        details.getEClassifiers().addAll(List.of(stirring, pouring));
        attribute(stirring, "plannedMinutes", EcorePackage.Literals.EDOUBLE_OBJECT, "kind", "DURATION", "unit", "min", "min", "0", "role", "planned");
        attribute(stirring, "minutes", EcorePackage.Literals.EDOUBLE_OBJECT, "kind", "DURATION", "unit", "min", "min", "0", "role", "actual", "of", "plannedMinutes");
        attribute(stirring, "smooth", EcorePackage.Literals.EBOOLEAN_OBJECT, "role", "actual");
        attribute(pouring, "drops", EcorePackage.Literals.EINTEGER_OBJECT, "min", "0", "max", "10", "role", "actual");
        registries = new Registries(List.of(), List.of(new Kind("toy.weigh", null, false, false), new Kind("toy.stir", stirring, false, false), new Kind("toy.pour", pouring, true, sheet)),
                List.of(), List.of(), List.of(), List.of());
        bench = new Bench(registries);
    }

    private static EClass type(String name) {
        EClass type = EcoreFactory.eINSTANCE.createEClass();
        type.setName(name);
        return type;
    }

    private static void attribute(EClass owner, String name, EClassifier type, String... annotation) {
        EAttribute attribute = EcoreFactory.eINSTANCE.createEAttribute();
        attribute.setName(name);
        attribute.setEType(type);
        for (int i = 0; i < annotation.length; i += 2) {
            EcoreUtil.setAnnotation(attribute, FieldDescriptors.ANNOTATION, annotation[i], annotation[i + 1]);
        }
        owner.getEStructuralFeatures().add(attribute);
    }

    /** A step kind as a foreign plugin would write it. */
    record Kind(String id, EClass details, boolean pours, boolean sheet) implements StepKind {
        @Override
        public String title() {
            return id;
        }

        @Override
        public String summary() {
            return "Do " + id + ".";
        }

        @Override
        public List<HazardPrompt> prompts(Step step, Trial trial) {
            return pours ? List.of(new HazardPrompt("toy.splash", Message.of(Say.class, "tap.note"), Message.of(Say.class, "tap.photo"), Source.commonPractice(), sheet))
                    : List.of();
        }

        @Override
        public List<GatePoint> gate(Step step, Trial trial, Instant now) {
            if (!id.equals("toy.stir")) {
                return List.of();
            }
            Boolean smooth = (Boolean) step.getDetails().eGet(details.getEStructuralFeature("smooth"));
            return List.of(GatePoint.after("smooth", "Smooth", GatePoint.of(smooth), Message.of(Say.class, "tap.odd"), Source.commonPractice()).answeredBy("smooth"));
        }

        @Override
        public OptionalDouble needsWorkingTime(Step step, Trial trial) {
            return OptionalDouble.empty();
        }

        @Override
        public boolean fillsMould() {
            return pours;
        }
    }

    StoreContext context() {
        return new StoreContext(ModelThread.current(), clock, "Kim", "1.0.0", registries.packages());
    }

    ProjectSession open(Path folder) {
        return new ProjectStore(context()).open(folder);
    }

    /** A project with one trial: weigh A and B, stir for three minutes, pour. */
    ProjectSession project(Path folder) {
        ProjectSession session = new ProjectStore(context()).create(folder, "Toy");
        session.execute("Plan", edit -> {
            trial(edit.project(), "T01", edit);
        });
        return session;
    }

    Trial trial(org.flexwright.model.Project project, String code, org.flexwright.core.session.Edit edit) {
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode(code);
        Step weigh = step(trial, "toy.weigh", "Weigh", null);
        weigh.getUses().add(use(PartRole.COMPONENT_A, 20));
        weigh.getUses().add(use(PartRole.COMPONENT_B, 10));
        Step stir = step(trial, "toy.stir", "Stir", stirring);
        stir.getDetails().eSet(stirring.getEStructuralFeature("plannedMinutes"), 3.0);
        stir.setPlannedDuration(3.0);
        Step pour = step(trial, "toy.pour", "Pour", pouring);
        pour.setPlannedStart(6.0);
        edit.add(project, ModelPackage.Literals.PROJECT__TRIALS, trial);
        return trial;
    }

    private static Step step(Trial trial, String kind, String title, EClass type) {
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setKind(kind);
        step.setTitle(title);
        step.setDetails(type == null ? null : EcoreUtil.create(type));
        trial.getSteps().add(step);
        return step;
    }

    private static MaterialUse use(PartRole role, double grams) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        use.setPlanned(grams);
        return use;
    }

    void tap(ProjectSession session, String key, String value) {
        BenchTaps.tap(session, bench, trial(session), clock.now, null, key, value);
    }

    static Trial trial(ProjectSession session) {
        return session.project().getTrials().getFirst();
    }

    BenchScreen view(ProjectSession session) {
        return bench.view(trial(session), clock.now);
    }

    static Double weighed(ProjectSession session, int use) {
        return Mixtures.grams(trial(session).getSteps().getFirst().getUses().get(use));
    }
}
