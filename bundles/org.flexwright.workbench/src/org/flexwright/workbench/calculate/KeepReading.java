package org.flexwright.workbench.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.calc.CalculatedReadings;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Sessions;
import org.flexwright.workbench.project.ProjectService;

/** Keeps a result that is a reading on the piece it was measured on; there for calculations that have one. */
final class KeepReading {
    private final ProjectService projects;
    private final Calculation<?, ?> calculation;
    private final TrialInputs inputs;
    private final Notice notice;
    private final Composite pane;
    private final PickBox<Specimen> piece;
    private final PickBox<Session> when;
    private final Button keep;
    private final Prose said;
    private CalculationResult result;

    KeepReading(Composite parent, Kit kit, ProjectService projects, Calculation<?, ?> calculation, TrialInputs inputs) {
        this.projects = projects;
        this.calculation = calculation;
        this.inputs = inputs;
        notice = new Notice(parent, kit, 1);
        pane = kit.pane(parent, 1, new Spacing(3, 2, 2, 1), Ink.PANEL);
        pane.setLayoutData(Grid.wide());
        Composite line = Flow.pane(pane, kit, Ink.PANEL);
        line.setLayoutData(Grid.wide());
        piece = new PickBox<>(line, kit, "Piece it was measured on", null, Names::piece);
        when = new PickBox<>(line, kit, "Session it was measured in", "now, in no session", Sessions::words);
        kit.action(line, "Take what the &piece knows", this::take).setToolTipText("Weighings of the piece over time and the like, where this calculation can use them");
        keep = kit.action(line, "Keep as a &reading", this::keep);
        keep.setToolTipText("Puts the result on the piece as a reading, with its band, its source and what went in");
        said = Prose.quiet(pane, kit, "");
        said.setLayoutData(Grid.wide());
        projectChanged();
    }

    /** The last result. */
    void take(CalculationResult last) {
        result = last;
        enable();
    }

    private void enable() {
        keep.setEnabled(result != null && result.done() && piece.chosen() != null);
    }

    void projectChanged() {
        Optional<Project> project = CalculatedReadings.offered(calculation) ? projects.session().filter(s -> !s.readOnly()).map(ProjectSession::project) : Optional.empty();
        List<Specimen> pieces = new ArrayList<>();
        project.ifPresent(p -> {
            p.getTrials().reversed().forEach(t -> pieces.addAll(t.getParts()));
            pieces.addAll(p.getReferenceParts());
            pieces.addAll(p.getControlPieces());
        });
        Specimen before = piece.chosen();
        piece.show(pieces, pieces.contains(before) ? before : pieces.isEmpty() ? null : pieces.getFirst());
        List<Session> sessions = project.map(p -> List.copyOf(p.getSessions()).reversed()).orElse(List.of());
        Session session = when.chosen();
        when.show(sessions, session != null && sessions.contains(session) ? session : null);
        Grid.shown(pane, !pieces.isEmpty());
        enable();
    }

    private void take() {
        if (piece.chosen() != null) {
            Map<String, String> known = calculation.inputsFrom(piece.chosen());
            inputs.type(known);
            say(known.isEmpty() ? Names.piece(piece.chosen()) + " knows nothing that is an input here." : "taken from the readings of " + Names.piece(piece.chosen()));
        }
    }

    private void keep() {
        Optional<ProjectSession> session = projects.session();
        Specimen on = piece.chosen();
        if (session.isPresent() && on != null && result != null) {
            Session in = when.chosen();
            boolean kept = new Doing(session.get(), notice::say).edit("keep " + calculation.info().title(), edit -> CalculatedReadings.keep(edit, on, calculation, result, projects
                    .registries().properties(), null, in, null, in == null || in.getAt() == null ? edit.now() : in.getAt()));
            if (kept) {
                say("✓ kept as a reading of " + Names.piece(on));
            }
        }
    }

    private void say(String words) {
        said.setWords(words);
        ScrollPane.reflowAround(pane);
    }
}
