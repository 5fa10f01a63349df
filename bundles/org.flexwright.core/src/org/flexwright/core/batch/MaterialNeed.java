package org.flexwright.core.batch;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Premix;

/**
 * What a batch needs of one material, and where it comes from.
 *
 * @param grade       the material of today; null when it is no longer in the project, or a premix is weighed
 * @param premix      the blend of today that is weighed instead; null for a material
 * @param name        what it is called
 * @param grams       g in all
 * @param picks       lots chosen
 * @param missing     g for which there is nothing in date
 * @param packs       packs to buy for what is missing; null when nothing is missing or nobody said in which packs it is sold
 * @param price       EUR that those cost at the price of the lot bought last; null when unknown
 * @param expired     lots left aside because their date has passed by then
 * @param expiredLeft g left in those, as far as known
 * @param unknown     lots taken though nobody said how much is left of them
 * @param recipeLots  codes of the lots that the recipe was made with
 */
public record MaterialNeed(MaterialGrade grade, Premix premix, String name, double grams, List<LotPick> picks, double missing, Integer packs, Double price, List<Lot> expired,
        double expiredLeft, List<Lot> unknown, List<String> recipeLots) {
    public MaterialNeed {
        picks = List.copyOf(picks);
        expired = List.copyOf(expired);
        unknown = List.copyOf(unknown);
        recipeLots = List.copyOf(recipeLots);
    }

    /** The lots chosen, each once, in the order of use. */
    public List<Lot> lots() {
        return picks.stream().map(LotPick::lot).distinct().toList();
    }

    /** Lots that the recipe was not made with, while it was made with others that are known. */
    public List<Lot> newLots() {
        return recipeLots.isEmpty() ? List.of() : lots().stream().filter(lot -> recipeLots.stream().noneMatch(code -> code.equalsIgnoreCase(lot.getCode()))).toList();
    }

    /** What is to be said about it: short, expired, another lot, a change of lot; each in a sentence. */
    public List<String> sentences() {
        List<String> said = new ArrayList<>();
        if (missing > 0) {
            said.add(grade == null ? say("need.mix", name, Figures.of(missing, "g")) : packs == null ? say("need.short", name, Figures.of(missing, "g"))
                    : say("need.buy", name, Figures.of(missing, "g"), packs, Figures.of(grade.getPackSize(), "g")));
        }
        for (Lot lot : expired) {
            said.add(say("need.expired", name, lot.getCode(), lot.getExpires()));
        }
        for (Lot lot : unknown) {
            said.add(say("need.unknown", name, lot.getCode()));
        }
        if (lots().size() > 1) {
            said.add(say("need.change", name, String.join(", ", lots().stream().map(Lot::getCode).toList())));
        }
        if (!newLots().isEmpty()) {
            said.add(say("need.newLot", name, String.join(", ", newLots().stream().map(Lot::getCode).toList()), String.join(", ", recipeLots)));
        }
        return said;
    }

    private static String say(String key, Object... args) {
        return Message.of(MaterialNeed.class, key, args).text();
    }
}
