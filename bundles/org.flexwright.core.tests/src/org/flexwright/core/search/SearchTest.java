package org.flexwright.core.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.Source;
import org.flexwright.core.label.LabelCode;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertySet;
import org.flexwright.core.property.ResultWord;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.Attachment;
import org.flexwright.model.BenchNote;
import org.flexwright.model.Censoring;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StopOverride;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The maker's language, and what is read of a project. */
class SearchTest {
    private static final ModelFactory MAKE = ModelFactory.eINSTANCE;
    private static final Clock CLOCK = Clock.fixed(Demo.NOW, ZoneOffset.UTC);
    private static final int ALL = 1000;

    private static final class Properties implements PropertySet {
        @Override
        public List<PropertyDef> properties() {
            return List.of(def("t.hardness", "Hardness, Shore A", QuantityKind.SHORE_A, false), def("t.ratio", "Snap ratio", QuantityKind.NUMBER, false), def("t.peak",
                    "Peak force", QuantityKind.FORCE, false), def("t.inverted", "Rests inverted", QuantityKind.NUMBER, true), def("t.wall", "Wall thickness",
                            QuantityKind.LENGTH, false), def("t.mass", "Mass", QuantityKind.MASS, false));
        }

        @Override
        public List<ResultWord> resultWords() {
            return List.of(ResultWord.number("t.ratio", 0, Double.MAX_VALUE, "snapped", "snap"), ResultWord.answer("t.inverted", true, "inverted"));
        }

        private static PropertyDef def(String id, String title, QuantityKind kind, boolean yesNo) {
            return new PropertyDef(id, title, kind, yesNo, Set.of(), "", Source.commonPractice());
        }
    }

    @TempDir
    Path temp;
    private final Registries registries = new Registries(List.of(), List.of(), List.of(), List.of(), List.of(new Properties()), List.of());
    private final QueryReader queries = new QueryReader(registries, new UnitWords(), CLOCK);
    private ProjectSession session;
    private ProjectSearch search;

    @BeforeEach
    void open() {
        session = new Demo().store().create(Demo.folder(temp), "Dome");
        search = new ProjectSearch(session, registries, CLOCK);
    }

    @AfterEach
    void close() {
        search.close();
        session.close();
    }

    private Trial trial(String code, String made) {
        Trial trial = MAKE.createTrial();
        trial.setCode(code);
        trial.setMadeAt(Instant.parse(made + "T12:00:00Z"));
        session.execute("add", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial));
        return trial;
    }

    private Part part(Trial trial, String code) {
        Part part = MAKE.createPart();
        part.setCode(code);
        session.execute("add", edit -> edit.add(trial, ModelPackage.Literals.TRIAL__PARTS, part));
        return part;
    }

    private Measurement measure(Part part, String property) {
        Measurement measurement = MAKE.createMeasurement();
        PropertyKey key = MAKE.createPropertyKey();
        key.setProperty(property);
        measurement.setKey(key);
        measurement.setKnowledge(Knowledge.MEASURED);
        session.execute("add", edit -> edit.add(part, ModelPackage.Literals.SPECIMEN__MEASUREMENTS, measurement));
        return measurement;
    }

    private void read(Part part, String property, double... values) {
        Measurement measurement = measure(part, property);
        session.execute("read", edit -> DoubleStream.of(values).forEach(value -> {
            Reading reading = MAKE.createReading();
            reading.setValue(value);
            edit.add(measurement, ModelPackage.Literals.MEASUREMENT__READINGS, reading);
        }));
    }

    private void answer(Part part, String property, boolean yes) {
        Measurement measurement = measure(part, property);
        session.execute("read", edit -> {
            Reading reading = MAKE.createReading();
            reading.setYes(yes);
            edit.add(measurement, ModelPackage.Literals.MEASUREMENT__READINGS, reading);
        });
    }

    private void note(EObject thing, String text) {
        session.execute("note", edit -> edit.set(thing, ModelPackage.Literals.ENTRY__NOTE, text));
    }

    private String found(String typed) {
        return search.readAll().find(typed, ALL).hits().stream().map(Hit::code).sorted().collect(Collectors.joining(" "));
    }

    private String said(String typed) {
        Query query = queries.read(typed);
        return query.terms().stream().map(Term::say).collect(Collectors.joining(" · "));
    }

    private void agree() {
        CardReader reader = new CardReader(registries, ZoneOffset.UTC, new UnitWords());
        assertEquals(SearchPropertyTest.print(CardReader.things(session.project()).stream().map(reader::read)), SearchPropertyTest.print(search.readAll().cards().stream()));
    }

    @Test
    void theMakersSearch() {
        Trial old = trial("T1", "2025-05-03");
        read(part(old, "P1"), "t.hardness", 41, 43, 44);
        read(old.getParts().get(0), "t.ratio", 0.7);
        Trial soft = trial("T2", "2025-05-04");
        read(part(soft, "P1"), "t.hardness", 41, 43, 44);
        read(soft.getParts().get(0), "t.ratio", 0);
        Trial hard = trial("T3", "2025-05-05");
        // one reading is within the range, the part is not
        read(part(hard, "P1"), "t.hardness", 43, 47, 48);
        read(hard.getParts().get(0), "t.ratio", 0.7);
        Trial young = trial("T4", "2026-02-03");
        read(part(young, "P1"), "t.hardness", 42);
        read(young.getParts().get(0), "t.ratio", 0.7);
        assertEquals("T1", found("snapped 40-44 A last year"));
        assertEquals("T1", found("last year, 40 to 44 shore a SNAPPED"));
        assertEquals("Snap ratio above 0 · 40 to 44 Shore A · made or dated in 2025", said("snapped 40-44 A last year"));
        Hit hit = search.find("snapped 40-44 A last year", ALL).hits().get(0);
        assertEquals(List.of("Snap ratio: 0.7, median  (P1)", "Hardness, Shore A: 43 Shore A, median  (P1)", "Date: made 2025-05-03"), hit.why().stream().map(Why::line).toList());
        assertEquals(old.getParts().get(0).getId(), hit.opens());
        assertEquals("T1 T2 T3 T4", found("40-50 A"));
    }

    /** Nothing has all of it: the word that stands in the way is named with what is found without it; else what each word finds alone. */
    @Test
    void whatStandsInTheWayIsNamed() {
        Trial old = trial("T1", "2025-05-03");
        read(part(old, "P1"), "t.hardness", 41, 43, 44);
        read(old.getParts().get(0), "t.ratio", 0.7);
        trial("T2", "2026-02-03");
        search.readAll();
        assertEquals(List.of("found without made or dated in 2026: 1"), search.find("snapped 40-44 A this year", ALL).left());
        assertEquals(List.of("found with Snap ratio above 0 alone: 1", "found with made or dated in 2026 alone: " + search.find("this year", ALL).total()), search.find("snapped 60 A this year", ALL).left());
        assertEquals(List.of(), search.find("snapped 40-44 A last year", ALL).left());
        assertEquals(List.of("found without 60 Shore A: 1"), search.find("snapped 60 A last year", ALL).left());
        assertEquals(List.of(), search.find("60 A", ALL).left());
    }

    @Test
    void aNumberIsMetByWhatRoundsToItsDigits() {
        Trial trial = trial("T1", "2026-01-01");
        read(part(trial, "P1"), "t.mass", 22.87);
        read(trial.getParts().get(0), "t.wall", 9.5);
        for (String yes : List.of("22.9 g", "22.87g", "23 g", "22,9 g", "mass 22.9 g", "0.81 oz", "3/8 in", "wall 9.5 mm", "> 22 g", "at least 22.87 g", "22-23 g", "about 22 g",
                "between 22 and 23 g", "22.8 g to 22.9 g", "0.0229 kg", "wall < 1 cm")) {
            assertEquals("T1", found(yes), yes);
        }
        for (String no : List.of("22.8 g", "22.870 g not 22.87 g", "22.9 mm", "> 22.87 g", "22.9 N", "1/2 in", "over 23 g", "under 22 g")) {
            assertEquals("", found(no), no);
        }
    }

    @Test
    void boundsCountOnlyWhereTheyAreSure() {
        Trial trial = trial("T1", "2026-01-01");
        Measurement measurement = measure(part(trial, "P1"), "t.peak");
        session.execute("read", edit -> {
            Reading reading = MAKE.createReading();
            reading.setValue(12.0);
            reading.setCensoring(Censoring.MORE_THAN);
            edit.add(measurement, ModelPackage.Literals.MEASUREMENT__READINGS, reading);
        });
        assertEquals("T1", found("> 12 N"));
        assertEquals("T1", found("> 10 N"));
        assertEquals("", found("> 13 N"));
        assertEquals("", found("10-20 N"));
        assertEquals("", found("12 N"));
    }

    @Test
    void yesNoAndNever() {
        Trial in = trial("T1", "2026-01-01");
        answer(part(in, "P1"), "t.inverted", true);
        Trial out = trial("T2", "2026-01-01");
        answer(part(out, "P1"), "t.inverted", false);
        trial("T3", "2026-01-01");
        answer(part(in, "P2"), "t.inverted", false);
        assertEquals("T1", found("inverted"));
        assertEquals("T1", found("rests inverted"));
        assertEquals("T2", found("never inverted"));
        assertEquals("T2", found("rests inverted never"));
        assertEquals("T2 T3", found("trials not inverted"));
        assertEquals("Rests inverted: no", said("never inverted"));
    }

    @Test
    void wordsInAnyOrderWithoutCaseAndAccents() {
        Trial trial = trial("T1", "2026-01-01");
        note(trial, "Fine Bubbles under the crème layer; cup L-0231/7 was ½ full");
        for (String yes : List.of("bubbles fine", "BUBB", "creme", "CRÈME lay", "\"under the creme\"", "l-0231", "L0231/7", "0231", "note:bubbles", "notes bubbles", "note: fine",
                "bubbles -acid", "bubbles without acid")) {
            assertEquals("T1", found(yes), yes);
        }
        for (String no : List.of("ubbles", "\"the under\"", "bubbles -creme", "conclusion:bubbles", "bubbles not fine", "lots bubbles")) {
            assertEquals("", found(no), no);
        }
    }

    @Test
    void times() {
        // now is 1 March 2026, a Sunday
        assertEquals(List.of("2026-03-01..2026-03-01", "2026-02-28..2026-02-28", "2026-02-16..2026-02-22", "2026-02-23..2026-03-01", "2026-02-01..2026-02-28",
                "2025-01-01..2025-12-31", "2026-01-01..2026-12-31", "2025-01-01..2025-12-31", "2026-03-01..2026-03-31", "2026-03-14..2026-03-14", "2026-03-14..2026-03-14",
                "..2026-03-13", "2026-03-15..", "2025-05-01..", "2024-01-01..2025-12-31", "2026-02-26..2026-03-01", "2025-06-01..2025-06-30"), List.of("today", "yesterday",
                        "last week", "this week", "last month", "last year", "this year", "made in 2025", "March 2026", "14 March 2026", "14.3.2026", "before 2026-03-14",
                        "after March 14 2026", "since May 2025", "2024-2025", "last 3 days", "in June").stream().map(this::time).toList());
    }

    private String time(String typed) {
        List<Term> terms = queries.read(typed).terms();
        assertEquals(1, terms.size(), typed + terms);
        Term.Time time = (Term.Time) terms.get(0);
        return text(time.from()) + ".." + text(time.to());
    }

    private static String text(LocalDate day) {
        return day == null ? "" : day.toString();
    }

    @Test
    void whatIsNotUnderstoodIsNamed() {
        assertEquals(List.of("\"with\" only joins words and was left out"), queries.read("bubbles with").left());
        assertEquals(List.of("\"or\" was left out: all words must be there"), queries.read("bubbles or dust").left());
        assertEquals(List.of("\"&\" has no letter or digit and was left out"), queries.read("& dust").left());
        note(trial("T1", "2026-01-01"), "fine bubbles");
        assertEquals(List.of("\"bubles\" is nowhere in the project; did you mean bubbles?"), search.readAll().find("bubles", ALL).left());
        assertEquals(List.of(), search.find("bub", ALL).left());
        assertEquals(List.of("no text in the project is called \"nite\""), search.find("nite:bub", ALL).left());
        assertEquals(0, search.find("  ", ALL).total());
        assertTrue(queries.read("word ".repeat(400) + "x").left().get(0).startsWith("only the first"));
        assertEquals("5 in · \"pot\"", said("5 in pot"));
        assertEquals("5 (a number, or so in a text) · made or dated in 2025", said("5 in 2025"));
        assertEquals("not \"dust\"", said("-dust"));
        assertEquals("snap ratio 0.6", said("snap ratio 0.6"));
    }

    @Test
    void anythingTypedIsRead() {
        for (String typed : List.of("1/0 in", ">", "> N", "\"", "\"\"", ":", "a:", ":a", "-", "--", "40-", "-40 C", "1e400", "99999999999999999999 g", "2026-99-99", "31.2.2026",
                "not", "not not a", "between", "last", "before", "between 1 and", "½ oz", "%", "\u0000", "\uD83D\uDE00", "' OR 1=1", "((", "\\", "[a-z]", "1 2/0 in", "4..5 A")) {
            search.find(typed, ALL);
        }
    }

    @Test
    void namesOfOtherThingsAreFollowed() {
        Trial trial = trial("T1", "2026-01-01");
        MaterialGrade grade = MAKE.createMaterialGrade();
        grade.setCode("PU-A");
        Lot lot = MAKE.createLot();
        lot.setCode("L77");
        grade.getLots().add(lot);
        Session day = MAKE.createSession();
        day.setCode("S1");
        Attachment photo = MAKE.createAttachment();
        photo.setCaption("rim torn");
        Step step = MAKE.createStep();
        step.setTitle("Weigh");
        MaterialUse use = MAKE.createMaterialUse();
        step.getUses().add(use);
        session.execute("stock", edit -> {
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__GRADES, grade);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__SESSIONS, day);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__ATTACHMENTS, photo);
            edit.add(trial, ModelPackage.Literals.TRIAL__STEPS, step);
            edit.set(use, ModelPackage.Literals.MATERIAL_USE__GRADE, grade);
            edit.set(use, ModelPackage.Literals.MATERIAL_USE__LOT, lot);
            edit.set(step, ModelPackage.Literals.STEP__SESSION, day);
            edit.add(trial, ModelPackage.Literals.TRIAL__ATTACHMENTS, photo);
        });
        StopOverride override = MAKE.createStopOverride();
        override.setSubject(step.getId());
        override.setReason("cup test cured");
        session.execute("against", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__OVERRIDES, override));
        agree();
        assertEquals("T1", found("trials l77 s1 torn"));
        assertEquals("L77", found("lots PU-A"));
        List<Runnable> edits = List.of(() -> set(lot, ModelPackage.Literals.LOT__CODE, "L78"), () -> set(grade, ModelPackage.Literals.MATERIAL_GRADE__CODE, "PU-B"), () -> set(day,
                ModelPackage.Literals.SESSION__CODE, "S2"), () -> set(photo, ModelPackage.Literals.ATTACHMENT__CAPTION, "rim whole"), () -> set(trial,
                        ModelPackage.Literals.TRIAL__CODE, "T9"), () -> set(step, ModelPackage.Literals.STEP__TITLE, "Weigh again"), () -> session.execute("remove", edit -> edit
                                .remove(step)), () -> session.execute("remove", edit -> edit.remove(grade)), () -> session.execute("remove", edit -> edit.remove(trial)),
                () -> session.execute("remove", edit -> edit.remove(override)));
        for (Runnable edit : edits) {
            edit.run();
            agree();
        }
        assertEquals("", found("torn"));
        while (session.canUndo()) {
            session.undo();
            agree();
        }
        while (session.canRedo()) {
            session.redo();
            agree();
        }
    }

    private void set(EObject thing, org.eclipse.emf.ecore.EStructuralFeature feature, String text) {
        session.execute("set", edit -> edit.set(thing, feature, text));
    }

    @Test
    void aLabelFindsItsThing() {
        Trial trial = trial("T1", "2026-01-01");
        Part part = part(trial, "P1");
        trial("T2", "2026-01-01");
        String label = LabelCode.of(session.project(), part).text();
        Hit hit = search.readAll().find(label.toLowerCase(java.util.Locale.ROOT), ALL).hits().get(0);
        assertEquals("T1", hit.code());
        assertEquals(part.getId(), hit.opens());
        assertEquals("T1", found(LabelCode.of(session.project(), trial).text()));
    }

    @Test
    void notesAtTheBenchAndPlacesToOpen() {
        Trial trial = trial("T1", "2026-01-01");
        BenchNote note = MAKE.createBenchNote();
        note.setNote("odd smell, cup at 46 C");
        session.execute("note", edit -> edit.add(trial, ModelPackage.Literals.TRIAL__NOTES, note));
        Hit hit = search.readAll().find("smell", ALL).hits().get(0);
        assertEquals(note.getId(), hit.opens());
        assertEquals("T1", found("46 C"));
        assertEquals("T1", found("smell 46 degC"));
    }

    @Test
    void manyHitsLeaveRoomForEveryKind() {
        for (int i = 0; i < 30; i++) {
            note(trial("T" + i, "2026-01-01"), "dust");
        }
        MaterialGrade grade = MAKE.createMaterialGrade();
        grade.setCode("G");
        grade.setNote("dust");
        session.execute("add", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__GRADES, grade));
        Answer answer = search.readAll().find("dust", 10);
        assertEquals(10, answer.hits().size());
        assertEquals(31, answer.total());
        assertTrue(answer.hits().stream().anyMatch(h -> h.kind() == ThingKind.MATERIAL));
    }

    @Test
    void searchesAreSaved() {
        session.execute("save", edit -> SavedSearches.save(edit, " soft ", "40-44 A"));
        assertEquals("soft", session.project().getSearches().get(0).getName());
        assertThrows(RefusedException.class, () -> session.execute("save", edit -> SavedSearches.save(edit, "SOFT", "x")));
        assertThrows(RefusedException.class, () -> session.execute("save", edit -> SavedSearches.save(edit, "", "x")));
        assertThrows(RefusedException.class, () -> session.execute("save", edit -> SavedSearches.save(edit, "n", " ")));
        session.undo();
        assertFalse(session.project().getSearches().stream().findAny().isPresent());
    }
}
