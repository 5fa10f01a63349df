package org.flexwright.workbench.pages.ranking;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.ranking.RankOutcome;
import org.flexwright.core.ranking.RankOutcome.Place;
import org.flexwright.core.ranking.Rankings;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.RankList;
import org.flexwright.model.Ranking;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;

/** A ranking by several people: what they were asked, the order each of them found, and what it comes to. */
final class RankingPage extends BlockPage {
    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.RANKING__CODE, ModelPackage.Literals.RANKING__TITLE, ModelPackage.Literals.RANKING__QUESTION,
            ModelPackage.Literals.RANKING__AT, ModelPackage.Literals.RANKING__BLIND, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();
    private static final int NAMED = 24;

    private final Ranking ranking;
    private final FormPane form;
    private final Listing<RankList> orders;
    private final Composite said;
    private final Listing<Place> places;
    private Text who;
    private Text order;
    private Prose offered;

    RankingPage(Composite parent, PageContext context) {
        super(parent, context);
        ranking = (Ranking) context.subject();
        Block what = new Block(body(), kit(), "Ranking", 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), ranking, FIELDS);
        form = new FormPane(what.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        Block found = new Block(body(), kit(), "Orders", 1, Spacing.FIELDS);
        if (writable()) {
            entry(found);
        }
        orders = new Listing<>(found.body(), kit(), "Orders", 12, List.of(Column.text("Who", 14, list -> list.getWho() == null ? "" : list.getWho()), Column.text("First to last", 50,
                Rankings::text)));
        orders.control().setLayoutData(Grid.wide());
        orders.whenChosen(this::take);
        Block result = new Block(body(), kit(), "What it comes to", 1, Spacing.FIELDS);
        said = kit().pane(result.body(), 1, Spacing.FIELDS);
        said.setLayoutData(Grid.wide());
        places = new Listing<>(result.body(), kit(), "Order of all", 12, List.of(Column.number("Place", 7, place -> String.valueOf(place.place())), Column.text("Piece", 20, place -> Names.piece(place
                .piece())), Column.text("Placed", 12, place -> place.placed().text()), Column.number("First by", 9,
                        place -> String.valueOf(place.first()))));
        places.control().setLayoutData(Grid.wide());
        places.whenOpened(place -> context.open(place.piece()));
        show();
        settle();
    }

    private void entry(Block found) {
        found.action("&Remove this order", () -> {
            RankList chosen = orders.chosen();
            if (chosen == null) {
                doing().say("Choose an order in the list first.");
            } else {
                doing().edit("remove an order", edit -> edit.remove(chosen));
            }
        });
        Composite line = kit().pane(found.body(), 3, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        kit().quiet(line, "Who").setLayoutData(Grid.natural());
        kit().quiet(line, "First to last: > between pieces, = where two feel alike").setLayoutData(Grid.wide());
        kit().quiet(line, "").setLayoutData(Grid.natural());
        who = kit().field(line, "Who", SWT.SINGLE);
        who.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        kit().chars(who, 18);
        order = kit().field(line, "Order, first to last", SWT.SINGLE);
        order.setLayoutData(Grid.wide());
        order.addListener(SWT.DefaultSelection, event -> put());
        who.addListener(SWT.DefaultSelection, event -> order.setFocus());
        kit().action(line, "&Put down", this::put).setLayoutData(Grid.natural());
        offered = Prose.quiet(found.body(), kit(), " ");
        offered.setLayoutData(Grid.wide());
    }

    /** What can be ranked, as it can be typed. */
    private String names() {
        List<String> names = Rankings.pieces(context().session().project()).stream().map(Names::piece).toList();
        return names.isEmpty() ? "There are no pieces yet." : "Pieces: " + names.stream().limit(NAMED).collect(Collectors.joining(", ")) + (names.size() > NAMED ? ", …" : "");
    }

    private void put() {
        String name = who.getText();
        boolean done = doing().run(() -> {
            var read = Rankings.read(context().session().project(), order.getText());
            context().session().execute("put down an order", edit -> Rankings.put(edit, ranking, name, read));
        });
        if (done) {
            who.setText("");
            order.setText("");
            who.setFocus();
        }
    }

    private void take(RankList list) {
        if (list != null && order != null && order.getText().isBlank()) {
            who.setText(list.getWho() == null ? "" : list.getWho());
            order.setText(Rankings.text(list));
        }
    }

    private void show() {
        if (offered != null) {
            offered.setWords(names());
        }
        orders.show(ranking.getLists());
        for (var child : said.getChildren()) {
            child.dispose();
        }
        switch (Rankings.outcome(ranking)) {
            case RankOutcome.Refused no -> {
                Prose.text(said, kit(), no.sentence().text()).setLayoutData(Grid.wide());
                places.show(List.of());
            }
            case RankOutcome.Order all -> {
                Rankings.sentences(ranking, all).forEach(sentence -> Prose.text(said, kit(), sentence).setLayoutData(Grid.wide()));
                Prose.quiet(said, kit(), RankOutcome.SOURCE.display()).setLayoutData(Grid.wide());
                places.show(all.places());
            }
        }
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        form.reveal(feature);
    }
}
