package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.Message;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.GramsOfParts;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.trial.MaterialUses;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.trial.Weighings;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.StepState;
import org.flexwright.model.Weighing;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Block;

/** What goes into the cup: planned beside weighed, the ratio it comes to, and what to add now. */
final class UsesBlock implements StepPart {

    private static final String TARGET = "target";
    private static final String ADD = "add";
    private static final String PROPOSAL = "proposal";
    /** Two masses closer than this, in g, look the same on the balance. */
    private static final double SAME = 0.005;
    private static final List<String> IN_THE_RATIO_LINE = List.of("ratio", "trueRatio", "deviation");

    private final StepPlace place;
    private final Kit kit;
    private final List<UseRow> rows = new ArrayList<>();
    private final Composite ratio;
    private final Label ratioPlanned;
    private final Label ratioActual;
    private final Label ratioDifference;
    private final Button plan;
    private final Composite said;
    private final Composite strips;
    private List<Object> shown = List.of();

    UsesBlock(Composite parent, StepPlace place) {
        this.place = place;
        this.kit = place.kit();
        Block block = new Block(parent, kit, "In the cup", 1, Spacing.FIELDS);
        plan = block.action("Plan these grams", this::plan);
        plan.setToolTipText("Plans the grams that follow from the parts; what is weighed stays");
        Columns columns = new Columns(kit);
        columns.head(block.body());
        for (MaterialUse use : place.step().getUses()) {
            rows.add(new UseRow(block.body(), place, use, columns, this::weigh));
        }
        ratio = columns.row(block.body());
        columns.label(ratio, "ratio A : B", Role.STRONG);
        ratioPlanned = columns.cell(ratio);
        ratioActual = columns.cell(ratio);
        ratioDifference = columns.difference(ratio);
        said = kit.pane(block.body(), 1, Spacing.TIGHT);
        said.setLayoutData(Grid.wide());
        strips = kit.pane(block.body(), 1, Spacing.TIGHT);
        strips.setLayoutData(Grid.wide());
        refresh();
    }

    @Override
    public void refresh() {
        List<CardLine> lines = StepCard.lines(place.step(), place.kind().orElse(null));
        List<StepAdvice> advice = place.page().registries().advice(place.step(), place.trial());
        Map<MaterialUse, StepAdvice> targets = targets(advice);
        for (int i = 0; i < rows.size(); i++) {
            String name = "uses/" + i;
            CardLine line = lines.stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
            StepAdvice target = targets.get(rows.get(i).use());
            rows.get(i).show(line, target == null ? null : target.value().likely());
        }
        boolean hasRatio = showRatio(lines);
        Optional<GramsOfParts> parts = parts();
        plan.setVisible(place.writable() && parts.filter(this::differs).isPresent());
        showAdvice(advice, hasRatio, parts.map(GramsOfParts::problem).map(Message::text).orElse(""));
    }

    private Optional<GramsOfParts> parts() {
        return place.kind().flatMap(kind -> kind.gramsOfParts(place.step(), place.trial()));
    }

    private boolean differs(GramsOfParts parts) {
        List<MaterialUse> uses = place.step().getUses();
        return parts.problem() == null && IntStream.range(0, uses.size()).anyMatch(i -> !Double.isNaN(parts.grams().get(i))
                && (uses.get(i).getPlanned() == null || Math.abs(uses.get(i).getPlanned() - parts.grams().get(i)) > 2 * SAME));
    }

    private void plan() {
        parts().ifPresent(parts -> place.doing().edit("plan grams from the parts", edit -> MaterialUses.plan(edit, place.step(), parts)));
    }

    private boolean showRatio(List<CardLine> lines) {
        CardLine line = lines.stream().filter(l -> l.name().equals("ratio")).findFirst().orElse(null);
        ((GridData) ratio.getLayoutData()).exclude = line == null;
        ratio.setVisible(line != null);
        if (line != null) {
            Columns.show(ratioPlanned, line.planned());
            Columns.show(ratioActual, line.actual());
            Columns.show(ratioDifference, line.difference());
            ratio.layout(true, true);
        }
        return line != null;
    }

    /** The running target of each use. */
    private Map<MaterialUse, StepAdvice> targets(List<StepAdvice> advice) {
        Map<MaterialUse, StepAdvice> targets = new HashMap<>();
        for (StepAdvice line : advice) {
            if (line.name().startsWith(TARGET)) {
                use(line.name().substring(TARGET.length())).ifPresent(use -> targets.put(use, line));
            }
        }
        return targets;
    }

    /** The use a mark stands for: the first with the letter A or B, else the place from 1. */
    private Optional<MaterialUse> use(String mark) {
        List<MaterialUse> uses = place.step().getUses();
        Optional<MaterialUse> component = uses.stream().filter(u -> UseWords.letter(u).equals(mark)).findFirst();
        return component.isPresent() ? component : IntStream.range(0, uses.size()).filter(i -> mark.equals(String.valueOf(i + 1))).mapToObj(uses::get).findFirst();
    }

    private void showAdvice(List<StepAdvice> advice, boolean hasRatio, String problem) {
        List<Object> now = new ArrayList<>(advice);
        now.add(hasRatio);
        now.add(problem);
        now.add(StepWords.state(place.step()));
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        empty(said);
        empty(strips);
        if (!problem.isEmpty()) {
            kit.quiet(said, problem);
        }
        for (StepAdvice line : advice) {
            if (line.name().equals(PROPOSAL) && line.remark() != null) {
                kit.label(said, line.remark().message().text(), Ink.INK, Role.STRONG).setToolTipText(line.remark().source().display());
                continue;
            }
            boolean elsewhere = line.name().startsWith(TARGET) || line.name().startsWith(ADD) || hasRatio && IN_THE_RATIO_LINE.contains(line.name());
            if (!elsewhere) {
                kit.text(said, AdviceBlock.words(line)).setToolTipText(line.value().source().display());
            }
            if (line.remark() != null) {
                FindingStrip strip = FindingStrip.of(strips, kit, line.remark());
                strip.setLayoutData(Grid.wide());
                advice.stream().filter(other -> other.name().startsWith(ADD)).findFirst().filter(other -> place.writable())
                        .ifPresent(add -> offer(strip, add));
            }
        }
        hideWhenEmpty(said);
        hideWhenEmpty(strips);
        ScrollPane.reflowAround(strips);
    }

    /** The action that writes down that the advised amount was added. */
    private void offer(FindingStrip strip, StepAdvice add) {
        double grams = Math.round(add.value().likely() * 100) / 100.0;
        use(add.name().substring(ADD.length())).filter(use -> grams > SAME)
                .ifPresent(use -> strip.action("Add " + UseWords.grams(grams) + " " + UseWords.letter(use) + " now", () -> correct(use, grams)));
    }

    private void correct(MaterialUse use, double grams) {
        place.doing().edit("add " + UseWords.grams(grams) + " of " + UseWords.letter(use), edit -> {
            Weighing added = Weighings.add(edit, use, null, null, grams, true, null);
            Provenances.keep(edit, added, ModelPackage.Literals.WEIGHING__NET, Origin.ASSUMED, "added as advised, not read from the balance", null);
        });
    }

    /** Writes down a weighing; the first one starts the step unless cautions still wait to be read. */
    private boolean weigh(MaterialUse use, Double gross, Double tare, Double net) {
        return place.doing().edit("weigh " + UseWords.letter(use), edit -> {
            Weighings.add(edit, use, gross, tare, net, false, Balances.of(place.step().getSession()));
            if (StepWords.state(place.step()) == StepState.PLANNED && PromptBlock.open(place).isEmpty()) {
                Trials.start(edit, place.step());
            }
        });
    }

    private static void empty(Composite pane) {
        for (Control child : pane.getChildren()) {
            child.dispose();
        }
    }

    private static void hideWhenEmpty(Composite pane) {
        ((GridData) pane.getLayoutData()).exclude = pane.getChildren().length == 0;
        pane.setVisible(pane.getChildren().length > 0);
    }

    @Override
    public boolean takeFocus() {
        return place.writable() && rows.stream().filter(row -> row.use().getWeighings().isEmpty()).findFirst().map(UseRow::takeFocus).orElse(false);
    }

    static boolean same(double one, double other) {
        return Math.abs(one - other) < SAME;
    }

    static Ink inkOf(CardLine line) {
        return line.outside() ? Ink.OUT : Ink.QUIET;
    }
}
