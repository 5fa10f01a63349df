package org.flexwright.workbench.pages.gauge;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.gauge.GaugeStudies;
import org.flexwright.core.gauge.GaugeTable;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.model.Censoring;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Reading;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Doing;

/** A row a piece, a column a person, a field each. Enter writes down and goes to the piece below, arrow keys go up and down. */
final class GaugeGrid extends Composite {
    private static final int FIELD = 18;

    private final Kit kit;
    private final GaugeStudy study;
    private final Doing doing;
    private final boolean writable;
    private final PageContext context;
    private PropertyDef property;
    private List<Object> built = List.of();
    private final Map<Place, Text> fields = new LinkedHashMap<>();

    private record Place(int piece, int person) {
    }

    GaugeGrid(Composite parent, PageContext context, GaugeStudy study, Doing doing, boolean writable) {
        super(parent, SWT.NONE);
        this.kit = context.kit();
        this.context = context;
        this.study = study;
        this.doing = doing;
        this.writable = writable;
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        kit.columns(this, 1, new Spacing(0, 0, 2, 1));
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
    }

    /** Shows what stands in the study now; fields that are there stay, so that the focus does. */
    void show(PropertyDef read) {
        property = read;
        GaugeTable table = GaugeTable.of(study);
        List<Object> wanted = List.of(table.pieces(), table.persons(), read == null ? "" : read.id());
        if (!wanted.equals(built)) {
            built = wanted;
            build(table);
        }
        fields.forEach((place, field) -> {
            String words = words(table, place);
            if (!words.equals(field.getData())) {
                field.setData(words);
                field.setText(words);
            }
        });
    }

    private void build(GaugeTable table) {
        for (Control child : getChildren()) {
            child.dispose();
        }
        fields.clear();
        int persons = table.persons().size();
        if (table.pieces().isEmpty() || persons == 0) {
            kit.columns(this, 1, new Spacing(0, 0, 2, 1));
            kit.quiet(this, "Add the pieces and those who read them.").setLayoutData(Grid.wide());
            return;
        }
        kit.columns(this, persons + 1, new Spacing(0, 0, 2, 1));
        kit.quiet(this, property == null ? "" : property.kind().unit().display()).setLayoutData(Grid.natural());
        table.persons().forEach(who -> kit.label(this, who.isEmpty() ? "nobody named" : who, Ink.INK, Role.STRONG).setLayoutData(Grid.wide()));
        for (int p = 0; p < table.pieces().size(); p++) {
            String piece = table.pieces().get(p);
            kit.label(this, piece.isEmpty() ? "no name" : piece, Ink.INK, Role.STRONG).setLayoutData(Grid.natural());
            for (int w = 0; w < persons; w++) {
                Place place = new Place(p, w);
                String who = table.persons().get(w);
                Text field = kit.field(this, "Readings" + (who.isEmpty() ? "" : " of " + who) + " on " + piece, SWT.SINGLE);
                GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
                field.setLayoutData(data);
                kit.chars(field, FIELD);
                field.setEditable(writable && property != null);
                field.addListener(SWT.DefaultSelection, event -> {
                    if (take(place)) {
                        go(new Place(place.piece() + 1, place.person()), new Place(0, place.person() + 1));
                    }
                });
                field.addListener(SWT.KeyDown, event -> key(event, place));
                field.addListener(SWT.FocusOut, event -> take(place));
                fields.put(place, field);
            }
        }
    }

    private void key(Event event, Place place) {
        if (event.keyCode == SWT.ARROW_DOWN || event.keyCode == SWT.ARROW_UP) {
            event.doit = false;
            go(new Place(place.piece() + (event.keyCode == SWT.ARROW_DOWN ? 1 : -1), place.person()));
        }
    }

    private void go(Place... places) {
        for (Place place : places) {
            Text field = fields.get(place);
            if (field != null) {
                field.setFocus();
                field.selectAll();
                return;
            }
        }
    }

    private static String words(GaugeTable table, Place place) {
        return table.counting(table.pieces().get(place.piece()), table.persons().get(place.person())).stream().map(GaugeGrid::words).collect(Collectors.joining("; "));
    }

    private static String words(Reading reading) {
        String sign = reading.getCensoring() == Censoring.MORE_THAN ? ">" : reading.getCensoring() == Censoring.LESS_THAN ? "<" : "";
        return sign + FieldText.digits(reading.getValue());
    }

    /** Writes down what a field holds; false when it is not understood: then it stays as typed. */
    private boolean take(Place place) {
        Text field = fields.get(place);
        if (field == null || field.isDisposed() || property == null) {
            return true;
        }
        if (field.getText().equals(field.getData())) {
            if (!Kit.descriptionOf(field).isEmpty()) {
                Kit.describe(field, "");
                doing.say("");
            }
            return true;
        }
        GaugeTable table = GaugeTable.of(study);
        String piece = table.pieces().get(place.piece());
        String who = table.persons().get(place.person());
        List<Reading> readings = new ArrayList<>();
        if (!field.getText().isBlank()) {
            switch (ReadingParser.parse(property, field.getText())) {
                case ReadingInput.Understood yes -> yes.readings().forEach(r -> readings.add(r.toReading(Instant.now())));
                case ReadingInput.Rejected no -> {
                    return refused(field, piece, no.sentence().text());
                }
            }
        }
        Kit.describe(field, "");
        return doing.edit("read " + piece, edit -> GaugeStudies.put(edit, study, piece, who, readings));
    }

    private boolean refused(Text field, String piece, String sentence) {
        Kit.describe(field, sentence);
        doing.say(piece + ": " + sentence);
        context.status(sentence);
        return false;
    }
}
