package org.flexwright.safety.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.safety.SafetyPrompts;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** A tick for a data sheet that is older than the one that came with the lot. */
@Component(service = FindingRule.class)
public final class OldSheetRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "safety.old-sheet";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "An older data sheet was read than the lot's own";
    }

    @Override
    public Scope scope() {
        return Scope.PROJECT;
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Set<Lot> said = new HashSet<>();
        for (Acknowledgement tick : context.project().getAcknowledgements()) {
            Lot lot = tick.getLot();
            boolean older = SafetyPrompts.SHEET.equals(tick.getPrompt()) && lot != null && lot.getSheetDate() != null && tick.getSheetDate() != null
                    && tick.getSheetDate().isBefore(lot.getSheetDate());
            if (older && said.add(lot)) {
                out.accept(new Finding(ID, Severity.CAUTION, lot.getId(), "sheetDate", Say.message("sheet.old", lot.getCode(), tick.getSheetDate(), lot.getSheetDate()),
                        List.of("read=" + tick.getSheetDate(), "lot=" + lot.getSheetDate()), Source.commonPractice(), Say.message("sheet.old.remedy", lot.getSheetDate())));
            }
        }
    }
}
