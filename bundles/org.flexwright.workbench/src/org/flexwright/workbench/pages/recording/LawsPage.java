package org.flexwright.workbench.pages.recording;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.naming.Names;
import org.flexwright.core.recording.LawFits;
import org.flexwright.core.rubber.FitPlots;
import org.flexwright.core.rubber.FitWords;
import org.flexwright.core.rubber.LawRanking;
import org.flexwright.core.rubber.LawRanking.Rank;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.Weighting;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.LawFit;
import org.flexwright.model.Recording;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.ChartFiles;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Settling;
import org.flexwright.workbench.project.LongJob;

/** Rubber laws on recordings: the measured points with the law and what is left over, its coefficients, and all laws beside each other. */
final class LawsPage implements EditorPage {

    private static final int MOST = 6;

    private final PageContext context;
    private final Kit kit;
    private final Composite root;
    private final Notice notice;
    private final Doing doing;
    private final Composite stack;
    private final Composite charts;
    private final Composite message;
    private final Prose words;
    private final ChartPane fitted;
    private final ChartPane left;
    private final ScrollPane side;
    private final Listing<Recording> list;
    private final PickBox<Weighting> weights;
    private final Text from;
    private final Text to;
    private final Listing<Rank> laws;
    private final Block result;
    private final Block kept;
    private final Listing<LawFit> fits;
    private final Button keep;
    private final Set<Recording> ticked = Collections.newSetFromMap(new IdentityHashMap<>());
    private RubberForm form;
    private LawRanking ranking;
    private LawFits.Question question;
    private String asked = "";
    private LongJob<LawRanking> job;

    LawsPage(Composite parent, PageContext context) {
        this.context = context;
        this.kit = context.kit();
        root = kit.pane(parent, 1, Spacing.NONE);
        notice = new Notice(root, kit, 1);
        doing = new Doing(context.session(), notice::say);
        Composite edge = kit.pane(root, 1, new Spacing(6, 3, 0, 1));
        edge.setLayoutData(Grid.wide());
        Composite bar = Flow.pane(edge, kit, Ink.PAPER);
        bar.setLayoutData(Grid.wide());
        Composite halves = kit.pane(root, 1, Spacing.NONE);
        halves.setLayoutData(Grid.fill());
        stack = kit.pane(halves, 1, Spacing.NONE);
        stack.setLayout(new StackLayout());
        charts = kit.pane(stack, 1, new Spacing(2, 0, 0, 0));
        fitted = new ChartPane(charts, kit);
        GridData upper = Grid.fill();
        fitted.setLayoutData(upper);
        left = new ChartPane(charts, kit);
        GridData lower = new GridData(SWT.FILL, SWT.FILL, true, false);
        left.setLayoutData(lower);
        kit.whenDressed(left, () -> lower.heightHint = 11 * kit.type().lineHeight(Role.BODY));
        fitted.explore(window -> { });
        message = kit.pane(stack, 1, Spacing.PANEL);
        words = Prose.quiet(message, kit, "");
        words.setLayoutData(Grid.wide());
        kit.text(bar, "Weights");
        weights = new PickBox<>(bar, kit, "Which points count how much", null, Weighting::title);
        weights.show(List.of(Weighting.values()), Weighting.EQUAL);
        weights.whenChosen(weighting -> ask());
        kit.text(bar, "Stretch from");
        from = stretch(bar, "Least stretch used");
        kit.text(bar, "to");
        to = stretch(bar, "Largest stretch used");
        kit.action(bar, "&Whole", fitted::whole);
        ChartFiles.actions(bar, kit, context, fitted, notice::say);
        side = new ScrollPane(halves, kit, 1, new Spacing(4, 0, 4, 4));
        halves.setLayout(new Halves(kit, stack, side));
        Block of = new Block(side.body(), kit, "Fitted together", 1, Spacing.FIELDS);
        list = Listing.ticked(of.body(), kit, "Recordings: ticked are fitted together", MOST, List.of(Column.text("Piece", 12, LawsPage::piece), Column.text("Recording", 18,
                Names::of)));
        list.control().setLayoutData(Grid.wide());
        list.whenTicked(this::tick);
        Block beside = new Block(side.body(), kit, "Laws beside each other", 1, Spacing.FIELDS);
        laws = new Listing<>(beside.body(), kit, "Laws", RubberForm.values().length, List.of(Column.text("Law", 12, rank -> rank.form().title()),
                Column.number("unseen, MPa", 11, rank -> rank.foretold().isPresent() ? Figures.of(rank.foretold().getAsDouble(), "", 2) : "–"),
                Column.number("fitted, MPa", 11, rank -> rank.fit().map(fit -> Figures.of(fit.rms(), "", 2)).orElse("–")),
                new Column<>("", 10, false, LawsPage::state, rank -> rank.stable() ? Ink.QUIET : Ink.STOP)));
        laws.control().setLayoutData(Grid.wide());
        laws.whenChosen(rank -> {
            form = rank.form();
            show();
        });
        Prose.quiet(beside.body(), kit, "Root mean square of what is left over: unseen, on points the law was not fitted to; fitted, on those it was. More coefficients always "
                + "come closer to what they were fitted to.").setLayoutData(Grid.wide());
        result = new Block(side.body(), kit, "The law", 1, new Spacing(0, 0, 0, 1));
        keep = writable() ? result.action("&Keep this fit", this::keep) : null;
        kept = new Block(side.body(), kit, "Kept fits", 1, Spacing.FIELDS);
        if (writable()) {
            kept.action("&Remove", this::remove).setToolTipText("Takes the chosen fit out of the project; it can be undone");
        }
        fits = new Listing<>(kept.body(), kit, "Kept fits", MOST, List.of(Column.text("Fit", 30, Names::of)));
        fits.control().setLayoutData(Grid.wide());
        fits.whenChosen(this::take);
        root.addListener(SWT.Dispose, event -> stop());
        begin();
        Settling.keep(kit, root, () -> { });
    }

    private Text stretch(Composite bar, String name) {
        Composite narrow = kit.pane(bar, 1, Spacing.NONE); // a field on the bar itself would take all that is left of it
        Text field = kit.field(narrow, name, SWT.SINGLE);
        field.setLayoutData(Grid.natural());
        kit.chars(field, 7);
        field.setMessage("all");
        field.addListener(SWT.DefaultSelection, event -> ask());
        field.addListener(SWT.FocusOut, event -> ask());
        return field;
    }

    private boolean writable() {
        return !context.session().readOnly();
    }

    private static String piece(Recording recording) {
        return Names.path(recording.eContainer());
    }

    private static String state(Rank rank) {
        return rank.stable() ? "" : rank.fit().isEmpty() ? "not determined" : "✕ unstable";
    }

    private List<Recording> fitting() {
        return LawFits.fitting(context.session().project(), context.registries());
    }

    private void begin() {
        if (context.subject() instanceof LawFit fit) {
            take(fit);
            return;
        }
        fitting().stream().filter(r -> r.eContainer() == context.subject() || r.eContainer() instanceof Specimen piece && piece.eContainer() == context.subject())
                .forEach(ticked::add);
        refresh();
    }

    private void tick(Recording recording, boolean on) {
        if (on) {
            ticked.add(recording);
        } else {
            ticked.remove(recording);
        }
        refresh();
    }

    /** Asks again what a kept fit asked. */
    private void take(LawFit fit) {
        ticked.clear();
        ticked.addAll(fit.getRecordings());
        form = RubberForm.find(fit.getLaw()).orElse(null);
        weights.show(List.of(Weighting.values()), Weighting.find(Objects.toString(fit.getWeighting(), "")).orElse(Weighting.EQUAL));
        from.setText(fit.getFromStretch() == null ? "" : Figures.of(fit.getFromStretch(), ""));
        to.setText(fit.getToStretch() == null ? "" : Figures.of(fit.getToStretch(), ""));
        refresh();
        fits.choose(fit);
    }

    private void refresh() {
        List<Recording> there = fitting();
        list.show(there);
        list.tick(ticked::contains);
        List<LawFit> all = context.session().project().getLawFits();
        fits.show(all);
        kept.setShown(!all.isEmpty());
        ask();
        side.reflow();
    }

    private void stop() {
        if (job != null) {
            job.cancel();
            job = null;
        }
    }

    private static Double number(Text field) {
        String typed = field.getText().strip().replace(',', '.');
        if (typed.isEmpty()) {
            return null;
        }
        try {
            double value = Double.parseDouble(typed);
            if (value > 0 && Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new RefusedException(Message.of(LawsPage.class, "stretch.none", field.getText().strip()));
    }

    private void ask() {
        if (root.isDisposed()) {
            return;
        }
        String now;
        try {
            List<Recording> recordings = fitting().stream().filter(ticked::contains).toList();
            Double least = number(from);
            Double largest = number(to);
            StringBuilder key = new StringBuilder(weights.chosen() + "|" + least + "|" + largest);
            recordings.forEach(r -> key.append('|').append(Curves.signature(r, false)));
            now = key.toString();
            if (now.equals(asked)) {
                return;
            }
            stop();
            asked = now;
            ranking = null;
            question = LawFits.question(context.session().folder(), recordings, form, weights.chosen(), least, largest, context.registries());
        } catch (RefusedException e) {
            asked = "";
            ranking = null;
            tell(e.getMessage());
            return;
        }
        tell("Fitting…");
        LawFits.Question mine = question;
        job = new LongJob<>("Fitting rubber laws", root.getDisplay(), mine::ranking, found -> arrived(mine, found), why -> {
            if (mine == question && !root.isDisposed()) {
                tell(why);
            }
        });
        job.schedule();
    }

    private void arrived(LawFits.Question mine, LawRanking found) {
        if (mine == question && !root.isDisposed()) {
            job = null;
            ranking = found;
            show();
        }
    }

    private void tell(String sentence) {
        words.setWords(sentence);
        message.layout();
        show();
    }

    private Rank chosen() {
        if (ranking == null) {
            return null;
        }
        return ranking.ranks().stream().filter(rank -> rank.form() == form).findFirst().or(ranking::suggested).orElse(ranking.ranks().getFirst());
    }

    private void show() {
        Rank rank = chosen();
        RubberFit fit = rank == null ? null : rank.fit().orElse(null);
        laws.show(ranking == null ? List.of() : ranking.ranks());
        laws.choose(rank);
        laws.control().setEnabled(ranking != null);
        if (rank != null && fit == null) {
            words.setWords(rank.form().title() + " has more coefficients than these points determine.");
            message.layout();
        }
        ((StackLayout) stack.getLayout()).topControl = fit == null ? message : charts;
        stack.layout();
        Composite body = result.emptied();
        result.setShown(fit != null);
        if (keep != null) {
            keep.setEnabled(fit != null && rank.stable());
        }
        if (fit != null) {
            fitted.show(FitPlots.fit(fit));
            left.show(FitPlots.residuals(fit));
            say(body, rank, fit);
        }
        side.reflow();
    }

    private void say(Composite body, Rank rank, RubberFit fit) {
        result.setTitle(fit.form().title());
        FitWords.rejected(fit).ifPresent(why -> new Prose(body, kit, "✕ " + why.text() + " " + FitWords.remedy().text(), Ink.STOP, Role.BODY).setLayoutData(Grid.wide()));
        List<RubberFit.Coefficient> all = new ArrayList<>(fit.coefficients());
        all.add(fit.young());
        for (RubberFit.Coefficient coefficient : all) {
            new Prose(body, kit, coefficient.name() + "   " + FitWords.text(coefficient), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        }
        String r2 = fit.r2().isPresent() ? ", R² " + Figures.of(fit.r2().getAsDouble(), "") : "";
        Prose.text(body, kit, "rms " + Figures.of(fit.rms(), "MPa", 3) + r2 + ", " + fit.points().size() + " points, weights: " + fit.weighting().title()).setLayoutData(Grid.wide());
        Prose.quiet(body, kit, FitWords.reach(fit).text() + " In brackets 95 % intervals. " + FitWords.SOURCE.display()).setLayoutData(Grid.wide());
        if (ranking.suggested().filter(best -> best.form() == rank.form()).isPresent()) {
            Prose.quiet(body, kit, "Fewest coefficients of the stable laws that foretell unseen points about as well as the best.").setLayoutData(Grid.wide());
        }
        FitWords.remarks(fit).forEach(remark -> FindingStrip.of(body, kit, remark).setLayoutData(Grid.wide()));
        question.remarks().forEach(remark -> FindingStrip.of(body, kit, remark).setLayoutData(Grid.wide()));
    }

    private void keep() {
        Rank rank = chosen();
        if (rank != null && rank.stable()) {
            List<Recording> recordings = fitting().stream().filter(ticked::contains).toList();
            doing.edit("keep a fit", edit -> LawFits.add(edit, null, rank.form(), question.weighting(), question.from(), question.to(), recordings));
        }
    }

    private void remove() {
        LawFit fit = fits.chosen();
        if (fit == null) {
            doing.say("Choose the fit that is to be removed.");
        } else if (fit != context.subject()) {
            doing.edit("remove a fit", edit -> edit.remove(fit));
        } else {
            doing.say("This editor is about that fit: remove it from the page of the trial.");
        }
    }

    @Override
    public Control control() {
        return root;
    }

    @Override
    public void changed(Set<EObject> touched) {
        refresh();
    }

    @Override
    public void setFocus() {
        list.control().setFocus();
    }
}
