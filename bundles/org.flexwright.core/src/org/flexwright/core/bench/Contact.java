package org.flexwright.core.bench;

import java.util.EnumSet;
import java.util.Set;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Which materials start the clock when they meet: A and B, or a base and its catalyst. A blend counts as what is in it. */
final class Contact {
    private Contact() {
    }

    /** True when weighing this into its step's cup brings the second of two components that react to what is there. */
    static boolean made(MaterialUse added) {
        if (!(added.eContainer() instanceof Step step)) {
            return false;
        }
        Set<PartRole> before = EnumSet.noneOf(PartRole.class);
        step.getUses().stream().filter(u -> u != added && !u.getWeighings().isEmpty()).forEach(u -> roles(u, before));
        Set<PartRole> after = EnumSet.noneOf(PartRole.class);
        after.addAll(before);
        roles(added, after);
        return !reacts(before) && reacts(after);
    }

    /** True when the trial has components that react. */
    static boolean possible(Trial trial) {
        Set<PartRole> all = EnumSet.noneOf(PartRole.class);
        trial.getSteps().forEach(s -> s.getUses().forEach(u -> roles(u, all)));
        return reacts(all);
    }

    private static boolean reacts(Set<PartRole> roles) {
        return roles.contains(PartRole.COMPONENT_A) && (roles.contains(PartRole.COMPONENT_B) || roles.contains(PartRole.POLYOL))
                || roles.contains(PartRole.SINGLE) && roles.contains(PartRole.CATALYST);
    }

    private static void roles(MaterialUse use, Set<PartRole> into) {
        if (use.getPremix() == null) {
            into.add(use.getRole());
        } else {
            use.getPremix().getIngredients().forEach(i -> roles(i, into));
        }
    }
}
