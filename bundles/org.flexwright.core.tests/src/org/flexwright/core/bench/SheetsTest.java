package org.flexwright.core.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.PlanException;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A data sheet is asked for where nobody said which one it is, and is one touch where the lots say it. */
class SheetsTest {
    @TempDir
    Path temp;
    private final Toy toy = new Toy(true);

    private BenchTap ack(ProjectSession session) {
        return toy.bench.view(Toy.trial(session), toy.clock.now, "2/cautions").tap("ack").orElseThrow();
    }

    private void give(ProjectSession session, String sheet) {
        BenchTaps.tap(session, toy.bench, Toy.trial(session), toy.clock.now, "2/cautions", "ack", sheet);
    }

    private static List<Acknowledgement> read(ProjectSession session) {
        return session.project().getAcknowledgements();
    }

    @Test
    void itIsAskedForAndOfferedTheNextTime() {
        try (ProjectSession session = toy.project(temp.resolve("Toy.flexwright"))) {
            assertEquals(BenchTap.Kind.SHEET, ack(session).kind());
            assertEquals("", ack(session).offered());
            for (String wrong : List.of("", "yes", "2026-02-31 4", "2026-01-15")) {
                assertThrows(PlanException.class, () -> give(session, wrong), wrong);
            }
            assertTrue(read(session).isEmpty(), "nothing is ticked for the person");
            give(session, "2026-01-15 rev 4");
            assertEquals(LocalDate.parse("2026-01-15"), read(session).getFirst().getSheetDate());
            assertEquals("rev 4", read(session).getFirst().getSheetRevision());
            toy.clock.on(java.time.Duration.ofHours(13));
            session.execute("Next", edit -> toy.trial(edit.project(), "T02", edit));
            BenchTap next = toy.bench.view(session.project().getTrials().getLast(), toy.clock.now, "2/cautions").tap("ack").orElseThrow();
            assertEquals("2026-01-15 rev 4", next.offered(), "another day: read again");
        }
    }

    @Test
    void oneTouchIsEnoughWhereTheLotsSayWhichCameWithThem() {
        try (ProjectSession session = toy.project(temp.resolve("Toy.flexwright"))) {
            session.execute("Lots", edit -> {
                MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
                edit.add(edit.project(), ModelPackage.Literals.PROJECT__GRADES, grade);
                for (int i = 0; i < 2; i++) {
                    Lot lot = ModelFactory.eINSTANCE.createLot();
                    lot.setCode("L" + i);
                    lot.setSheetDate(LocalDate.parse("2026-01-1" + i));
                    lot.setSheetRevision("r" + i);
                    edit.add(grade, ModelPackage.Literals.MATERIAL_GRADE__LOTS, lot);
                    edit.set(Toy.trial(session).getSteps().getFirst().getUses().get(i), ModelPackage.Literals.MATERIAL_USE__LOT, lot);
                }
            });
            assertEquals(BenchTap.Kind.TOUCH, ack(session).kind());
            give(session, "");
            assertEquals("r1", read(session).getFirst().getSheetRevision(), "the newest of what is in the cup");
        }
    }
}
