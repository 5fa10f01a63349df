package org.flexwright.mixing;

import java.util.Optional;

import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.mixing.formula.Formulation;
import org.flexwright.mixing.formulation.MixtureFigures;
import org.flexwright.model.GateWord;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * Go, hold or dump, for what is in the cup now. The maker decides; nothing is done by itself.
 *
 * @param word   what is proposed
 * @param reason one sentence
 * @param source what it rests on
 * @param adds   true when the advised amount goes into the cup: only then may it be offered
 */
public record WeighProposal(GateWord word, Message reason, Source source, boolean adds) {

    private static final Source LIMIT = Source.commonPractice("own limit of the ratio");
    private static final Source ROOM = Source.commonPractice("cup a quarter to a third full for degassing");
    private static final Source INDEX = Source.commonPractice("index 80 to 130: beyond it no casting system is meant to work");

    /** Of a weighing step; empty while nothing is weighed. */
    public static Optional<WeighProposal> of(Step step, Trial trial) {
        WeighAdvice advice = WeighAdvice.of(step);
        if (advice.targets().stream().allMatch(t -> t.weighed() == null)) {
            return Optional.empty();
        }
        Optional<WeighAdvice.Target> open = advice.next().filter(t -> t.weighed() == null);
        if (open.isPresent()) {
            return Optional.of(hold(Say.PROPOSE_OPEN.with(WeighAdvice.name(open.get().use())), LIMIT, true));
        }
        if (advice.weighed() == null) {
            return Optional.of(hold(advice.problem() == null ? Say.PROPOSE_UNKNOWN.with() : advice.problem(), LIMIT, true));
        }
        return Optional.of(advice.outside() ? mend(step, trial, advice) : inside(step, advice));
    }

    private static WeighProposal inside(Step step, WeighAdvice advice) {
        double index = MixtureFigures.weighed(step).index();
        if (index < Formulation.LOWEST_INDEX || index > Formulation.HIGHEST_INDEX) {
            return hold(Say.PROPOSE_INDEX.with(Figures.of(index, "")), INDEX, false);
        }
        return new WeighProposal(GateWord.GO, Say.PROPOSE_GO.with(advice.deviationText(), Figures.percent(advice.ownLimit())), LIMIT, true);
    }

    /** The ratio is off: the addition must fit into the cup, and it must not have begun to react. */
    private static WeighProposal mend(Step step, Trial trial, WeighAdvice advice) {
        MaterialUse use = advice.mends().orElseThrow().use();
        String grams = Figures.of(advice.addition(), "g", 3);
        String name = WeighAdvice.name(use);
        String off = advice.deviationText();
        Optional<CupRoom> room = CupRoom.of(step, trial);
        double more = CupRoom.volume(step, use, advice.addition());
        boolean met = trial != null && trial.getContactAt() != null;
        if (room.isEmpty() || Double.isNaN(more)) {
            return hold(Say.PROPOSE_ADD_UNCHECKED.with(grams, name, off), LIMIT, true);
        }
        if (room.get().takes(more)) {
            return hold(Say.PROPOSE_ADD.with(grams, name, off, Figures.percent(advice.ownLimit())), LIMIT, true);
        }
        String cup = Figures.of(room.get().brim(), "ml");
        double needs = Math.ceil((room.get().filled() + more) * room.get().brim() / room.get().usable());
        return met ? new WeighProposal(GateWord.DUMP, Say.PROPOSE_DUMP.with(off, grams, name, cup), ROOM, false)
                : hold(Say.PROPOSE_CUP.with(off, grams, name, cup, Figures.of(needs, "ml")), ROOM, false);
    }

    private static WeighProposal hold(Message reason, Source source, boolean adds) {
        return new WeighProposal(GateWord.HOLD, reason, source, adds);
    }
}
