package org.flexwright.workbench.pages.batch;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.batch.CostShare;
import org.flexwright.core.batch.CostSheet;
import org.flexwright.core.field.FieldText;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Type.Role;

/** What a good part costs, share by share with its origin; what is not known is named, not counted. */
final class CostBlock {
    private CostBlock() {
    }

    /** Fills a body of three columns. */
    static void fill(Composite body, Kit kit, CostSheet cost) {
        new Prose(body, kit, "A good part: " + cost.perGoodPartText(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide(3));
        if (cost.good() != null) {
            Prose.quiet(body, kit, "Good parts: " + FieldText.band(cost.good().low(), cost.good().likely(), cost.good().high(), QuantityKind.NUMBER, "") + " of " + cost.made() + "   ["
                    + cost.good().source().display() + "]").setLayoutData(Grid.wide(3));
        }
        for (CostShare share : cost.shares()) {
            kit.quiet(body, share.label()).setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
            kit.text(body, share.eur() == null ? "not known" : CostSheet.money(share.eur())).setLayoutData(new GridData(SWT.END, SWT.BEGINNING, false, false));
            Prose.quiet(body, kit, share.why() + (share.eur() == null ? "" : "   [" + share.eur().source().display() + "]")).setLayoutData(Grid.wide());
        }
        if (!cost.complete()) {
            Prose.quiet(body, kit, "Not counted: " + String.join("; ", cost.missing()) + ".").setLayoutData(Grid.wide(3));
        }
    }
}
