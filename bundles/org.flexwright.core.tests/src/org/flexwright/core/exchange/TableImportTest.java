package org.flexwright.core.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.flexwright.core.Watch;
import org.flexwright.core.exchange.ImportChange.Kind;
import org.flexwright.core.exchange.ImportOptions.Decimal;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RandomEdits;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Reading;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.testsupport.RandomModel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Taking tables into a project: what is seen before, what is refused and where, and that it is one step. */
class TableImportTest {
    private static final int EDITS = 25;

    @TempDir
    Path temp;

    private final Demo demo = new Demo();
    private final List<DetailsPackage> packages = List.of(demo.here());
    private ProjectSession session;
    private Path tables;

    @BeforeEach
    void aSmallProject() throws IOException {
        ProjectStore.Draft draft = demo.store().draft();
        Project project = draft.project();
        project.setId("_project");
        project.setTitle("Dome");
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setId("_t1");
        trial.setCode("T01");
        trial.setTitle("first");
        trial.setCost(2.5);
        project.getTrials().add(trial);
        Part part = ModelFactory.eINSTANCE.createPart();
        part.setId("_p1");
        part.setCode("P1");
        trial.getParts().add(part);
        Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
        measurement.setId("_m1");
        part.getMeasurements().add(measurement);
        for (double value : new double[] { 41, 42.5, 43 }) {
            Reading r = ModelFactory.eINSTANCE.createReading();
            r.setValue(value);
            measurement.getReadings().add(r);
        }
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        sheet.setId("_s1");
        sheet.setVersion(1);
        sheet.setFrozenAt(Demo.NOW);
        sheet.setReason("agreed");
        project.getTargetSheets().add(sheet);
        session = demo.store().create(temp.resolve("Dome.flexwright"), draft);
        tables = temp.resolve("tables");
        Files.createDirectory(tables);
    }

    @AfterEach
    void close() {
        session.close();
    }

    private void table(String name, String... lines) throws IOException {
        table(name, StandardCharsets.UTF_8, lines);
    }

    private void table(String name, Charset charset, String... lines) throws IOException {
        Files.writeString(tables.resolve(name + ".csv"), String.join("\r\n", lines) + "\r\n", charset);
    }

    private ImportPlan plan(ImportOptions options) throws IOException {
        return TableImport.plan(session, packages, tables, options, Watch.NONE);
    }

    private ImportPlan plan() throws IOException {
        return plan(ImportOptions.PLAIN);
    }

    private Trial trial() {
        return session.project().getTrials().get(0);
    }

    private String onlyRefusal() throws IOException {
        ImportPlan plan = plan();
        assertEquals(1, plan.refused(), () -> plan.refusals().stream().map(ImportRefusal::text).toList().toString());
        assertThrows(RefusedException.class, () -> session.execute("Import", plan::apply));
        assertFalse(session.dirty(), "Something was changed although an entry was refused.");
        return plan.refusals().get(0).text();
    }

    @Test
    void whatWouldChangeIsListedAndIsOneStep() throws IOException {
        table("trials", "id,owner,in,place,code,title,cost", "_t1,/,trials,1,T01,'=first,3", ",/,trials,,T02,second,");
        ImportPlan plan = plan();
        assertEquals(List.of(), plan.refusals());
        assertEquals(2, plan.count(Kind.CHANGED));
        assertEquals(1, plan.count(Kind.ADDED));
        ImportChange title = plan.changes().get(0);
        assertEquals("trials 2 title first -> '=first", title.table() + " " + title.row() + " " + title.column() + " " + title.from() + " -> " + title.to());
        assertEquals("first", trial().getTitle(), "A dry run changed something.");
        session.execute("Import tables", plan::apply);
        assertEquals("=first", trial().getTitle());
        assertEquals(3, trial().getCost());
        assertEquals("T02", session.project().getTrials().get(1).getCode());
        assertEquals("Import tables", session.undoName());
        session.undo();
        assertEquals("first", trial().getTitle());
        assertEquals(1, session.project().getTrials().size());
        assertFalse(session.canUndo());
    }

    @Test
    void anEmptyCellEmptiesAndAnAbsentColumnDoesNothing() throws IOException {
        table("trials", "id,title", "_t1,'");
        session.execute("Import", plan()::apply);
        assertEquals("", trial().getTitle());
        table("trials", "id,title", "_t1,");
        session.execute("Import", plan()::apply);
        assertNull(trial().getTitle());
        assertEquals(2.5, trial().getCost());
    }

    @Test
    void nothingGoesUnlessAsked() throws IOException {
        table("readings", "owner,in,place,value", "_m1,readings,1,41", "_m1,readings,2,44");
        assertEquals(0, plan().count(Kind.REMOVED));
        ImportPlan plan = plan(new ImportOptions(true, Decimal.ASK, true));
        assertEquals(1, plan.count(Kind.REMOVED));
        session.execute("Import", plan::apply);
        assertEquals(List.of(41.0, 44.0), trial().getParts().get(0).getMeasurements().get(0).getReadings().stream().map(Reading::getValue).toList());
    }

    @Test
    void theOrderOfRowsIsTheirPlace() throws IOException {
        table("trials", "id,owner,place,code", "_a,/,2,T00", "_b,/,1,T99", "_t1,/,3,T01");
        ImportPlan plan = plan();
        session.execute("Import", plan::apply);
        assertEquals(List.of("T99", "T00", "T01"), session.project().getTrials().stream().map(Trial::getCode).toList());
    }

    @Test
    void separatorsEncodingsAndLineEndsOfAnyOffice() throws IOException {
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, Charset.forName("windows-1252"))) {
            for (String separator : List.of(",", ";", "\t")) {
                for (String mark : List.of("", "\ufeff")) {
                    if (!mark.isEmpty() && charset.name().startsWith("windows")) {
                        continue;
                    }
                    Files.writeString(tables.resolve("trials.csv"), mark + "id,title,cost\n_t1,größe,4.25\n".replace(",", separator), charset);
                    ImportPlan plan = plan();
                    assertEquals(0, plan.refused(), () -> charset + " " + plan.refusals());
                    assertEquals(charset.name().startsWith("windows"), plan.notes().stream().anyMatch(n -> n.key().equals("import.encoding")));
                    session.execute("Import", plan::apply);
                    assertEquals("größe", trial().getTitle(), charset + separator);
                    assertEquals(4.25, trial().getCost());
                    session.undo();
                }
            }
        }
    }

    @Test
    void decimalCommasOnlyWhenTheColumnLeavesNoDoubt() throws IOException {
        table("readings", "owner;place;value", "_m1;1;41,5", "_m1;2;1,250");
        ImportPlan sure = plan();
        assertEquals(0, sure.refused());
        session.execute("Import", sure::apply);
        assertEquals(1.25, trial().getParts().get(0).getMeasurements().get(0).getReadings().get(1).getValue());
        session.undo();
        session.save();
        table("readings", "owner;place;value", "_m1;2;1,250");
        assertEquals("table readings, row 2, column value: in 1,250 the comma could be a decimal sign or part thousands; write numbers with a point, or "
                + "say that commas are decimal signs", onlyRefusal());
        assertEquals(0, plan(new ImportOptions(false, Decimal.COMMA, true)).refused());
        table("readings", "owner;place;value", "_m1;1;41,5", "_m1;2;1.25");
        assertTrue(onlyRefusal().contains("numbers with a point and numbers with a comma"));
    }

    @Test
    void aPointIsDoubtfulWhereCommasAreSaidToBeDecimal() throws IOException {
        table("readings", "owner;place;value", "_m1;1;41,5", "_m1;2;1.250");
        assertTrue(plan(new ImportOptions(false, Decimal.COMMA, true)).refusals().getFirst().text().startsWith("table readings, row 3, column value: in 1.250 the point"));
        table("readings", "owner;place;value", "_m1;1;1.234,5");
        assertEquals(1, plan(new ImportOptions(false, Decimal.COMMA, true)).refused());
        assertEquals(1, plan().refused());
    }

    @Test
    void aDamagedTableInAZipIsRefused() throws IOException {
        byte[] rows = "id,cost\r\n_t1,4.25\r\n".getBytes(StandardCharsets.UTF_8);
        java.util.zip.CRC32 sum = new java.util.zip.CRC32();
        sum.update(rows);
        Path zip = temp.resolve("t.zip");
        try (java.util.zip.ZipOutputStream out = new java.util.zip.ZipOutputStream(Files.newOutputStream(zip))) {
            java.util.zip.ZipEntry entry = new java.util.zip.ZipEntry("trials.csv");
            entry.setMethod(java.util.zip.ZipEntry.STORED);
            entry.setSize(rows.length);
            entry.setCrc(sum.getValue());
            out.putNextEntry(entry);
            out.write(rows);
            out.closeEntry();
        }
        assertEquals(1, TableImport.plan(session, packages, zip, ImportOptions.PLAIN, Watch.NONE).count());
        String bytes = new String(Files.readAllBytes(zip), StandardCharsets.ISO_8859_1);
        Files.write(zip, bytes.replace("4.25", "9.25").getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(TableImport.plan(session, packages, zip, ImportOptions.PLAIN, Watch.NONE).refusals().getFirst().text().endsWith(
                "the file trials.csv is damaged; nothing was taken from it."));
    }

    @Test
    void idsAndNamesOfStrangersAreNoFormulasAndComeBack() throws IOException {
        ProjectStore.Draft draft = demo.store().draft();
        draft.project().setId("_p");
        for (String id : List.of("=A1", "'x", "-2+3")) {
            Trial one = ModelFactory.eINSTANCE.createTrial();
            one.setId(id);
            one.setBasedOn(draft.project().getTrials().isEmpty() ? null : draft.project().getTrials().getLast());
            draft.project().getTrials().add(one);
            Part part = ModelFactory.eINSTANCE.createPart();
            part.setId("_part" + id);
            one.getParts().add(part);
        }
        Path out = temp.resolve("out");
        new CsvExport(packages).write(draft.project(), draft.unknown(), out, Watch.NONE);
        try (var files = Files.list(out)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                for (String cell : Files.readString(file).split("[,\r\n]+")) {
                    assertFalse(cell.startsWith("=") || cell.startsWith("-2"), file + ": " + cell);
                }
            }
        }
        try (ProjectSession back = TableImport.create(demo.store(), packages, out, temp.resolve("Back.flexwright"), Watch.NONE)) {
            List<Trial> trials = back.project().getTrials();
            assertEquals(List.of("=A1", "'x", "-2+3"), trials.stream().map(Trial::getId).toList());
            assertEquals("'x", trials.getLast().getBasedOn().getId());
            assertEquals("_part'x", trials.get(1).getParts().getFirst().getId());
        }
    }

    @Test
    void badEntriesAreRefusedWithTheirPlace() throws IOException {
        table("trials", "id,cost", "_t1,NaN");
        assertEquals("table trials, row 2, column cost [EUR]: NaN is no number; write digits with a decimal point, as in 12.5, and no unit", onlyRefusal());
        table("trials", "id,state", "_t1,gone");
        assertTrue(onlyRefusal().startsWith("table trials, row 2, column state: gone is not among planned, making"));
        table("trials", "id,owner,basedOn", "_t1,/,_nobody");
        assertEquals("table trials, row 2, column basedOn: nothing has the id _nobody", onlyRefusal());
        table("trials", "id,owner,basedOn", "_t1,/,_p1");
        assertTrue(onlyRefusal().contains("_p1 is a part; here a Trial is meant"));
        table("trials", "id,owner,code", "_x,/,T02", "_x,/,T03");
        assertEquals("table trials, row 3, column id: an earlier row has the id _x already", onlyRefusal());
        table("trials", "id,owner,code", "_t1,/,T02", "_t1,/,T03");
        assertEquals("table trials, row 3: an earlier row speaks of the same thing already", onlyRefusal());
        table("trials", "id,owner,code", "_x,_nobody,T02");
        assertEquals("table trials, row 2, column owner: there is no _nobody that it could belong to", onlyRefusal());
        table("trials", "code", "T02");
        assertTrue(onlyRefusal().contains("the column id is missing"));
        table("trials", "id,code", "_t1,T02,more");
        assertTrue(onlyRefusal().startsWith("table trials, row 2: the row has 3 cells"));
        table("trials", "id,code", "_t1,\"T02");
        assertTrue(onlyRefusal().startsWith("table trials: it is no table any more near line"));
        Files.delete(tables.resolve("trials.csv"));
        table("trails", "id,code", "_t1,T02");
        assertTrue(onlyRefusal().startsWith("table trails: no kind of thing has this table"));
    }

    @Test
    void unitsStandInTheFirstLine() throws IOException {
        table("sessions", "id,owner,roomC [degC]", "_r,/,21");
        ImportPlan own = plan();
        table("sessions", "id,owner,roomC [K]", "_r,/,294.15");
        ImportPlan other = plan();
        assertEquals(0, own.refused() + other.refused(), () -> "" + own.refusals() + other.refusals());
        session.execute("Import", other::apply);
        assertEquals(21, session.project().getSessions().get(0).getRoomC(), 1e-9);
        session.undo();
        session.save();
        table("sessions", "id,owner,roomC [kg]", "_r,/,21");
        assertTrue(onlyRefusal().startsWith("table sessions, row 1, column roomC [kg]: kg is no unit of"), onlyRefusal());
        table("sessions", "id,owner,roomRh [%]", "_r,/,150");
        assertTrue(onlyRefusal().startsWith("table sessions, row 2, column roomRh [%RH]: 150 is not allowed; it must be "), onlyRefusal());
    }

    @Test
    void whatIsFrozenStays() throws IOException {
        table("target-sheets", "id,reason", "_s1,changed");
        assertTrue(onlyRefusal().startsWith("table target-sheets, row 2: Target sheet v1 is frozen"), onlyRefusal());
        table("target-sheets", "id,owner,version", "_s2,/,2");
        ImportPlan plan = plan(new ImportOptions(true, Decimal.ASK, true));
        assertEquals(1, plan.refused());
    }

    @Test
    void aMillionRowsAreCountedAndCanBeStopped() throws IOException {
        try (var out = Files.newBufferedWriter(tables.resolve("readings.csv"))) {
            out.write("owner,place,value\n");
            for (int i = 0; i < 100_000; i++) {
                out.write("_nobody,1,4\n");
            }
        }
        ImportPlan plan = plan();
        assertEquals(100_000, plan.refused());
        assertEquals(TableImport.LISTED, plan.refusals().size());
        long[] last = new long[1];
        assertThrows(CancellationException.class, () -> TableImport.plan(session, packages, tables, ImportOptions.PLAIN, new Watch() {
            @Override
            public void done(long part, long whole) {
                last[0] = part;
            }

            @Override
            public boolean cancelled() {
                return last[0] > 100_000;
            }
        }));
        assertTrue(last[0] > 0);
    }

    @Test
    void aChangedProjectBecomesWhatItsTablesSay() throws IOException {
        int whole = 0;
        for (int seed = 300; seed < 306; seed++) {
            Path folder = temp.resolve("R" + seed + ".flexwright");
            ProjectStore.Draft draft = demo.store().draft();
            new RandomModel(seed, List.of(demo.ePackage), Tables::isBookkeeping).fill(draft.project(), 300);
            try (ProjectSession s = demo.store().create(folder, draft)) {
                RandomEdits edits = new RandomEdits(seed, demo);
                // the first edit with details of a plugin writes down that it was there
                s.execute("Pour", edit -> {
                    Trial pour = ModelFactory.eINSTANCE.createTrial();
                    pour.getSteps().add(ModelFactory.eINSTANCE.createStep());
                    pour.getSteps().get(0).setDetails(demo.newPour());
                    edit.add(edit.project(), org.flexwright.model.ModelPackage.Literals.PROJECT__TRIALS, pour);
                });
                Path before = export(s, "b" + seed);
                for (int i = 0; i < EDITS; i++) {
                    try {
                        s.execute("Random", edits::some);
                    } catch (RefusedException frozen) {
                        continue;
                    }
                }
                Path between = export(s, "m" + seed);
                ImportPlan plan = TableImport.plan(s, packages, before, new ImportOptions(true, Decimal.ASK, false), Watch.NONE);
                if (plan.refused() > 0) {
                    assertTrue(plan.refusals().stream().allMatch(r -> r.text().contains("frozen")), () -> plan.refusals().stream().map(ImportRefusal::text)
                            .toList().toString());
                    continue;
                }
                whole++;
                s.execute("Import", plan::apply);
                assertEquals(-1, Files.mismatch(before, export(s, "a" + seed)), "seed " + seed);
                s.undo();
                assertEquals(-1, Files.mismatch(between, export(s, "u" + seed)), "seed " + seed);
            }
        }
        assertTrue(whole >= 3, "Only " + whole + " of 6 were compared.");
    }

    private Path export(ProjectSession s, String name) throws IOException {
        Path zip = temp.resolve(name + ".zip");
        new CsvExport(packages).write(s.project(), s.unknown(), zip, Watch.NONE);
        return zip;
    }
}
