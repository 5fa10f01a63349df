package org.flexwright.workbench.calculate;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Settling;
import org.flexwright.workbench.project.ProjectService;

/** All calculations at the left with a filter, the chosen one's form at the right. */
public final class CalculationsPane extends Composite {

    private final Kit kit;
    private final ProjectService projects;
    private final List<Calculation<?, ?>> all;
    private final Text filter;
    private final Listing<Calculation<?, ?>> list;
    private final Composite right;
    private CalculationForm form;

    /** The calculations of the registries; kept ones go into the open project. */
    public CalculationsPane(Composite parent, Kit kit, ProjectService projects) {
        super(parent, SWT.NONE);
        this.kit = kit;
        this.projects = projects;
        this.all = projects.registries().calculations().stream()
                .sorted(Comparator.comparing((Calculation<?, ?> c) -> group(c.info())).thenComparing(c -> c.info().title())).toList();
        setLayout(new FillLayout());
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        SashForm sash = new SashForm(this, SWT.HORIZONTAL);
        kit.dress(sash, Ink.INK, Ink.LINE, Role.BODY);
        sash.setSashWidth(2);
        Composite left = kit.pane(sash, 1, new Spacing(0, 0, 0, 0));
        Composite bar = kit.pane(left, 1, new Spacing(3, 2, 0, 0));
        bar.setLayoutData(Grid.wide());
        filter = kit.field(bar, "Filter the calculations", SWT.SEARCH);
        filter.setMessage("filter by words");
        filter.setLayoutData(Grid.wide());
        filter.addListener(SWT.Modify, event -> filter());
        filter.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ARROW_DOWN) {
                list().control().setFocus();
            }
        });
        list = new Listing<>(left, kit, "Calculations", 0, List.of(
                Column.text("Calculation", 24, calculation -> calculation.info().title()),
                new Column<>("About", 9, false, calculation -> group(calculation.info()), calculation -> Ink.QUIET)));
        list.control().setLayoutData(Grid.fill());
        list.whenChosen(this::show);
        list.whenOpened(calculation -> form.setFocus());
        right = kit.pane(sash, 1, Spacing.NONE);
        right.setLayout(new FillLayout());
        sash.setWeights(30, 70);
        filter();
        show(all.isEmpty() ? null : all.getFirst());
        Settling.keep(kit, this, () -> { });
    }

    private Listing<Calculation<?, ?>> list() {
        return list;
    }

    /** What it is about: the capability it belongs to. */
    private static String group(CalculationInfo info) {
        return info.id().substring(0, info.id().indexOf('.'));
    }

    private void filter() {
        String[] words = filter.getText().strip().toLowerCase(Locale.ROOT).split("\\s+");
        list.show(all.stream().filter(calculation -> matches(calculation.info(), words)).toList());
    }

    private static boolean matches(CalculationInfo info, String[] words) {
        String text = (info.title() + " " + info.id() + " " + info.summary()).toLowerCase(Locale.ROOT);
        for (String word : words) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }

    private void show(Calculation<?, ?> calculation) {
        if (calculation != null && form != null && form.calculation() == calculation) {
            return;
        }
        for (Control old : right.getChildren()) {
            old.dispose();
        }
        form = null;
        if (calculation == null) {
            new EmptyState(right, kit, "Calculations stand here; a plugin brings them. None is installed.", null, null);
        } else {
            form = new CalculationForm(right, kit, projects, calculation);
            list.choose(calculation);
        }
        right.layout(true, true);
    }

    /** Shows the calculation with that id; nothing happens when there is none. */
    public void choose(String id) {
        all.stream().filter(calculation -> calculation.info().id().equals(id)).findFirst().ifPresent(calculation -> {
            filter.setText("");
            show(calculation);
        });
    }

    /** The open project changed, or there is another or none. */
    public void projectChanged() {
        if (form != null) {
            form.projectChanged();
        }
    }

    @Override
    public boolean setFocus() {
        return !filter.isDisposed() && filter.setFocus();
    }
}
