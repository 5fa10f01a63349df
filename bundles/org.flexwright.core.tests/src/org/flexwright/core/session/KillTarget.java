package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;

/** A program of its own that edits and weighs until it is killed, and says after each edit that it is made. */
public final class KillTarget {
    private static final int WEIGHINGS_A_TRIAL = 20;
    private static final int SAVE_EVERY = 7;

    private KillTarget() {
    }

    /** Arguments: the project's folder. Prints the running number of each weighing that has returned. */
    public static void main(String[] args) throws IOException {
        StoreContext context = new StoreContext(ModelThread.current(), Clock.systemUTC(), "Killed", "1.0.0", List.of());
        ProjectSession s = new ProjectStore(context).open(Path.of(args[0]));
        if (s.readOnly()) {
            throw new IllegalStateException(s.readOnlyReason());
        }
        for (int n = count(s) + 1;; n++) {
            int number = n;
            s.execute("Weigh " + n, e -> weigh(e, number));
            System.out.println(n);
            System.out.flush();
            if (n % SAVE_EVERY == 0) {
                s.save();
            }
        }
    }

    /** Weighings in the project; each holds its number as net mass. */
    static int count(ProjectSession s) {
        return s.project().getTrials().stream().flatMap(t -> t.getSteps().stream()).flatMap(step -> step.getUses().stream())
                .mapToInt(u -> u.getWeighings().size()).sum();
    }

    private static void weigh(Edit edit, int number) {
        MaterialUse use;
        if (number % WEIGHINGS_A_TRIAL == 1) {
            Trial trial = ModelFactory.eINSTANCE.createTrial();
            trial.setCode("T" + number);
            Step step = ModelFactory.eINSTANCE.createStep();
            use = ModelFactory.eINSTANCE.createMaterialUse();
            step.getUses().add(use);
            trial.getSteps().add(step);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial);
        } else {
            use = edit.project().getTrials().getLast().getSteps().getFirst().getUses().getFirst();
        }
        Weighing w = ModelFactory.eINSTANCE.createWeighing();
        w.setNet((double) number);
        edit.add(use, ModelPackage.Literals.MATERIAL_USE__WEIGHINGS, w);
        edit.set(edit.project(), ModelPackage.Literals.ENTRY__NOTE, "last weighing " + number);
    }
}
