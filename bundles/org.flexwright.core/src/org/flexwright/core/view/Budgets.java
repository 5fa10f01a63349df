package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.verdict.PartBudget;
import org.flexwright.core.verdict.PartBudget.Contribution;

/** What the uncertainty of one part's value looks like. */
public final class Budgets {
    private Budgets() {
    }

    /** A bar a contribution, and one for all together: standard uncertainties. */
    public static Bars bars(PartBudget budget) {
        String unit = budget.property().kind().unit().display();
        List<Bars.Bar> bars = new ArrayList<>();
        for (Contribution c : budget.contributions()) {
            bars.add(Bars.Bar.of(c.kind().word(), c.standard(), words(c.standard(), unit) + ": " + c.how().text(), false));
        }
        budget.combined().ifPresent(u -> bars.add(Bars.Bar.of(say("budget.together").text(), u.standard(), words(u.standard(), unit), true)));
        return new Bars(say("budget.title", budget.part().part(), budget.text()).text(), unit, bars);
    }

    private static String words(double standard, String unit) {
        return ((standard > 0 ? FieldText.rounded(standard, standard / 5) : "0") + " " + unit).strip();
    }

    /** What to know of it, a sentence each: the largest contribution, and what is missing. */
    public static List<String> sentences(PartBudget budget) {
        List<String> said = new ArrayList<>();
        budget.largest().filter(c -> c.standard() > 0).ifPresent(c -> {
            double all = budget.combined().orElseThrow().standard();
            long share = Math.round(10 * c.standard() * c.standard() / (all * all)) * 10;
            said.add(say("budget.largest", c.kind().word(), String.valueOf(share)).text());
        });
        if (budget.expanded().isEmpty() && !budget.contributions().isEmpty()) {
            said.add(say("budget.noBand").text());
        }
        budget.unknown().forEach(sentence -> said.add(sentence.text()));
        return said;
    }

    private static Message say(String key, Object... args) {
        return Message.of(Budgets.class, key, args);
    }
}
