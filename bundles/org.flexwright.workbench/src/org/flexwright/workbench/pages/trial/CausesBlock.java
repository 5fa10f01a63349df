package org.flexwright.workbench.pages.trial;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.Figures;
import org.flexwright.core.cause.Softer;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.cause.SofterCauses;
import org.flexwright.core.cause.Standing;
import org.flexwright.core.field.FieldText;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;

/** Why the parts are softer though there is more filler in them: the likeliest first, with the evidence and the cheapest check. Shown only when they are. */
final class CausesBlock {

    private final PageContext context;
    private final Kit kit;
    private final Trial trial;
    private final Block block;
    private List<SofterCause> shown = List.of();

    CausesBlock(Composite parent, PageContext context, Trial trial) {
        this.context = context;
        this.kit = context.kit();
        this.trial = trial;
        block = new Block(parent, kit, "Softer with more filler", 1, new Spacing(0, 0, 0, 3));
        block.setShown(false);
    }

    void show() {
        Optional<Softer> softer = Softer.of(trial, context.registries().properties());
        List<SofterCause> causes = softer.map(s -> SofterCauses.of(trial, s.than(), context.registries(), context.registries().properties())).orElse(List.of());
        if (causes.equals(shown)) {
            return;
        }
        shown = causes;
        Composite body = block.emptied();
        block.setShown(!causes.isEmpty());
        softer.ifPresent(s -> block.setTitle("Softer with more filler: " + Figures.of(s.hardness(), "", 3) + " against " + Figures.of(s.before(), "", 3) + " of "
                + s.than().getCode() + ". Why, from this trial's own record"));
        int number = 1;
        for (SofterCause cause : causes) {
            row(body, number++, cause);
        }
    }

    private void row(Composite body, int number, SofterCause cause) {
        Composite row = kit.pane(body, 2, new Spacing(0, 0, 4, 1));
        row.setLayoutData(Grid.wide());
        Kit.name(row, number + ", " + cause.title().text() + ", " + cause.standing().words());
        Composite left = kit.pane(row, 1, Spacing.NONE);
        left.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        kit.chars(left, 30);
        boolean cleared = cause.standing() == Standing.CLEARED;
        kit.label(left, number + "  " + cause.title().text(), cleared ? Ink.QUIET : Ink.INK, cleared ? Role.BODY : Role.STRONG).setLayoutData(Grid.wide());
        new Prose(left, kit, shape(cause.standing()) + " " + cause.standing().words(), cause.standing() == Standing.RECORDED ? Ink.CAUTION : Ink.QUIET, Role.BODY)
                .setLayoutData(Grid.wide());
        Composite right = kit.pane(row, 1, Spacing.NONE);
        right.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        (cleared ? Prose.quiet(right, kit, cause.evidence().text()) : Prose.text(right, kit, cause.evidence().text())).setLayoutData(Grid.wide());
        if (!cleared) {
            if (cause.stiffness() != null) {
                Prose.text(right, kit, "Stiffness left by this alone: " + FieldText.band(100 * cause.stiffness().low(), 100 * cause.stiffness().likely(),
                        100 * cause.stiffness().high(), QuantityKind.FRACTION, "%") + "; " + cause.source().display()).setLayoutData(Grid.wide());
            }
            Prose.text(right, kit, "Check: " + cause.check().text()).setLayoutData(Grid.wide());
        }
    }

    private static String shape(Standing standing) {
        return switch (standing) {
            case RECORDED -> "\u25b2";
            case OPEN -> "?";
            case CLEARED -> "\u2013";
        };
    }
}
