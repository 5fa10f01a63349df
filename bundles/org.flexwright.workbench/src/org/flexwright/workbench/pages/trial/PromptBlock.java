package org.flexwright.workbench.pages.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.naming.Names;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.trial.Acknowledgements;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.StepState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Moments;

/** The usual cautions for what is in the step. They are read and ticked by a person, once a session and lot; nothing is ticked beforehand. */
final class PromptBlock implements StepPart {

    private static final FieldDescriptor SHEET_DATE = FieldDescriptor.of("sheetDate", "Data sheet dated", FieldType.DATE);

    private final StepPlace place;
    private final Kit kit;
    private final Block block;
    private List<Object> shown;
    private final Map<HazardPrompt, Button> ticks = new LinkedHashMap<>();
    private final Map<Lot, SheetRow> sheets = new LinkedHashMap<>();
    private SessionBox session;
    private Text who;

    private record SheetRow(Text date, Text revision) {
    }

    PromptBlock(Composite parent, StepPlace place) {
        this.place = place;
        this.kit = place.kit();
        block = new Block(parent, kit, "Before you start", 1, Spacing.FIELDS);
        refresh();
    }

    private static List<HazardPrompt> prompts(StepPlace place) {
        return place.page().registries().prompts(place.step(), place.trial());
    }

    /** Prompts nobody ticked yet for the step's session and every lot in it. */
    static List<HazardPrompt> open(StepPlace place) {
        return prompts(place).stream().filter(prompt -> !given(place, prompt)).toList();
    }

    private static boolean given(StepPlace place, HazardPrompt prompt) {
        Project project = place.page().session().project();
        Session session = place.step().getSession();
        List<Lot> lots = Acknowledgements.lots(place.step());
        return lots.isEmpty() ? Acknowledgements.given(project, prompt.id(), session, null)
                : lots.stream().allMatch(lot -> Acknowledgements.given(project, prompt.id(), session, lot));
    }

    @Override
    public void refresh() {
        List<HazardPrompt> prompts = prompts(place);
        List<HazardPrompt> open = open(place);
        List<Object> now = new ArrayList<>(prompts.stream().map(HazardPrompt::id).toList());
        now.add(open.stream().map(HazardPrompt::id).toList());
        now.add(StepWords.state(place.step()));
        now.add(Acknowledgements.lots(place.step()));
        now.add(Optional.ofNullable(place.step().getSession()));
        now.add(place.page().session().project().getSessions().size());
        block.setShown(!prompts.isEmpty());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Composite body = block.emptied();
        ticks.clear();
        sheets.clear();
        List<HazardPrompt> read = prompts.stream().filter(prompt -> !open.contains(prompt)).toList();
        if (!read.isEmpty()) {
            done(body, read);
        }
        if (!open.isEmpty() && StepWords.state(place.step()) == StepState.DONE) {
            block.setTitle("Cautions, not acknowledged in this session");
            open.forEach(prompt -> Prose.quiet(body, kit, "○ " + prompt.hazard().text()).setLayoutData(Grid.wide()));
        } else if (!open.isEmpty()) {
            block.setTitle("Before you start");
            open.forEach(prompt -> ask(body, prompt));
            if (place.writable()) {
                sign(body, open);
            }
            Prose.quiet(body, kit, "The product's data sheet, local codes and licensed practice win over what stands here.").setLayoutData(Grid.wide());
        } else {
            block.setTitle("Cautions");
        }
    }

    /** The cautions that were read, folded into one line a person can unfold. */
    private void done(Composite body, List<HazardPrompt> read) {
        Composite line = kit.pane(body, 2, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        Acknowledgement last = place.page().session().project().getAcknowledgements().stream()
                .filter(a -> read.getLast().id().equals(a.getPrompt()) && a.getSession() == place.step().getSession()).reduce((a, b) -> b).orElseThrow();
        String sheet = last.getSheetDate() == null ? "" : ", data sheet of " + last.getSheetDate() + " revision " + last.getSheetRevision();
        Prose.quiet(line, kit, "✓ " + (read.size() == 1 ? "1 caution" : read.size() + " cautions") + " read by " + last.getWho() + ", "
                + Moments.minute(last.getAt()) + sheet).setLayoutData(Grid.wide());
        Composite all = kit.pane(body, 1, Spacing.FIELDS);
        GridData data = Grid.wide();
        data.exclude = true;
        all.setLayoutData(data);
        all.setVisible(false);
        Button more = kit.action(line, "Show them", () -> { });
        more.addListener(SWT.Selection, event -> {
            data.exclude = !data.exclude;
            all.setVisible(!data.exclude);
            more.setText(data.exclude ? "Show them" : "Fold them");
            if (all.getChildren().length == 0) {
                read.forEach(prompt -> Prose.text(all, kit, prompt.hazard().text() + " " + prompt.controls().text()).setLayoutData(Grid.wide()));
            }
            ScrollPane.reflowAround(all);
        });
        more.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
    }

    private void ask(Composite body, HazardPrompt prompt) {
        Composite row = kit.pane(body, 2, new Spacing(0, 0, 2, 0));
        row.setLayoutData(Grid.wide());
        if (place.writable()) {
            Button tick = new Button(row, SWT.CHECK);
            kit.dress(tick, Ink.INK, Ink.PAPER, Role.BODY);
            Kit.name(tick, "I have read: " + prompt.hazard().text());
            tick.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false, 1, 3));
            ticks.put(prompt, tick);
        } else {
            kit.text(row, "○").setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false, 1, 3));
        }
        new Prose(row, kit, prompt.hazard().text(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        Prose.text(row, kit, prompt.controls().text()).setLayoutData(Grid.wide());
        Prose.quiet(row, kit, "Rests on: " + prompt.source().display()).setLayoutData(Grid.wide());
    }

    private void sign(Composite body, List<HazardPrompt> open) {
        Composite form = kit.pane(body, 4, Spacing.FIELDS);
        form.setLayoutData(Grid.wide());
        kit.text(form, "Session");
        session = new SessionBox(form, place);
        session.control().setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 3, 1));
        kit.text(form, "Read by");
        who = kit.field(form, "Read by", SWT.SINGLE);
        who.setText(place.step().getSession() != null && place.step().getSession().getWho() != null ? place.step().getSession().getWho() : "");
        who.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false, 3, 1));
        kit.chars(who, 24);
        if (open.stream().anyMatch(HazardPrompt::needsSheet)) {
            List<Lot> lots = Acknowledgements.lots(place.step());
            for (Lot lot : lots.isEmpty() ? Collections.<Lot>singletonList(null) : lots) {
                sheet(form, lot);
            }
        }
        kit.text(form, "");
        Button sign = kit.action(form, "I have &read what is ticked", this::acknowledge);
        sign.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false, 3, 1));
    }

    private void sheet(Composite form, Lot lot) {
        String of = lot == null ? "" : " of " + Names.of(lot.eContainer()) + ", lot " + Names.tab(lot);
        var label = kit.text(form, "Data sheet" + of + ", dated");
        label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        kit.chars(label, 34);
        Text date = kit.field(form, "Data sheet dated" + of, SWT.SINGLE);
        date.setToolTipText("A day, like 2026-01-15");
        date.setText(lot == null || lot.getSheetDate() == null ? "" : lot.getSheetDate().toString());
        date.setLayoutData(Grid.natural());
        kit.chars(date, 12);
        kit.text(form, "revision");
        Text revision = kit.field(form, "Revision of the data sheet" + of, SWT.SINGLE);
        revision.setText(lot == null || lot.getSheetRevision() == null ? "" : lot.getSheetRevision());
        revision.setLayoutData(Grid.natural());
        kit.chars(revision, 8);
        sheets.put(lot, new SheetRow(date, revision));
    }

    private void acknowledge() {
        List<HazardPrompt> read = ticks.entrySet().stream().filter(e -> e.getValue().getSelection()).map(Map.Entry::getKey).toList();
        if (read.isEmpty()) {
            place.doing().say("Tick the cautions you have read; nothing is ticked for you.");
            return;
        }
        boolean sheet = read.stream().anyMatch(HazardPrompt::needsSheet);
        Map<Lot, LocalDate> dates = new LinkedHashMap<>();
        for (Map.Entry<Lot, SheetRow> row : sheets.entrySet()) {
            switch (SHEET_DATE.read(row.getValue().date().getText())) {
                case FieldInput.Rejected no when sheet -> {
                    place.doing().say(no.sentence());
                    row.getValue().date().setFocus();
                    return;
                }
                case FieldInput.Rejected no -> dates.put(row.getKey(), null);
                case FieldInput.Read yes -> dates.put(row.getKey(), (LocalDate) yes.value());
            }
        }
        List<Lot> lots = Acknowledgements.lots(place.step());
        String person = who.getText();
        Map<Lot, String> revisions = new LinkedHashMap<>();
        sheets.forEach((lot, row) -> revisions.put(lot, row.revision().getText()));
        place.doing().edit("acknowledge the cautions", edit -> {
            for (HazardPrompt prompt : read) {
                for (Lot lot : lots.isEmpty() ? Collections.<Lot>singletonList(null) : lots) {
                    Acknowledgements.add(edit, prompt.id(), place.step().getSession(), lot, place.step(), person, dates.get(lot), revisions.get(lot),
                            prompt.needsSheet());
                }
            }
        });
    }
}
