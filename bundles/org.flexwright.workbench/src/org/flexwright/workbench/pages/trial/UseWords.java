package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Names;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Weighing;
import org.flexwright.workbench.pages.common.Moments;

/** Materials of a step in words. */
final class UseWords {

    private UseWords() {
    }

    /** What it is called on the bench: A, B, or its role. */
    static String letter(MaterialUse use) {
        return letter(use.getRole());
    }

    static String letter(PartRole role) {
        return switch (role) {
            case COMPONENT_A -> "A";
            case COMPONENT_B -> "B";
            default -> {
                String words = role.getLiteral().replace('_', ' ');
                yield words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
            }
        };
    }

    /** Product and lot; says so when none was chosen. */
    static String material(MaterialUse use) {
        String parts = parts(use);
        if (use.getPremix() != null) {
            return "premix " + use.getPremix().getCode() + parts;
        }
        if (use.getGrade() == null) {
            return "no material chosen" + parts;
        }
        String name = use.getGrade().getName() == null ? use.getGrade().getCode() : use.getGrade().getName();
        Lot lot = use.getLot();
        return (lot == null ? name + ", no lot" : name + ", lot " + (lot.getCode() == null ? "without a code" : lot.getCode())) + parts;
    }

    /** Parts as given, with what they are counted on where they say it. */
    private static String parts(MaterialUse use) {
        if (use.getParts() == null) {
            return "";
        }
        String of = use.getPartsOf() == PartsOf.UNSTATED ? "" : " " + Names.word(use.getPartsOf());
        return ", " + FieldText.digits(use.getParts()) + " parts" + of;
    }

    /** A weighing: net grams, when, and whether it mended the ratio. */
    static String weighing(Weighing weighing) {
        List<String> words = new ArrayList<>();
        words.add(weighing.getNet() == null ? "nothing" : grams(weighing.getNet()));
        if (weighing.isCorrection()) {
            words.add("to mend the ratio");
        }
        if (weighing.getAt() != null) {
            words.add(Moments.clock(weighing.getAt()));
        }
        return String.join(", ", words);
    }

    /** A mass as the balance shows it: hundredths of a gram, thousandths of a pinch. */
    static String grams(double grams) {
        return FieldText.fixed(grams, Math.abs(grams) < 1 ? 3 : 2) + " g";
    }
}
