package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.verdict.Limits;
import org.flexwright.model.Lot;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stranger gets the pack and nothing else: all of it is there, it stays the same for ever, and its labels lead back. */
class HandOverTest {
    private static final String DOME = "dome.flexwright";
    @TempDir
    static Path built;
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeAll
    static void example() throws InterruptedException {
        new Bench(built).ok("example", DOME);
    }

    @BeforeEach
    void copy() throws IOException, InterruptedException {
        try (Stream<Path> all = Files.walk(built)) {
            for (Path from : all.toList()) {
                Path to = folder.resolve(built.relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to);
                }
            }
        }
        bench = new Bench(folder);
    }

    private ProjectSession open() {
        return new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "tester", "1.0.0.test", bench.registries().packages())).open(folder.resolve(DOME));
    }

    private byte[] read(String file) throws IOException {
        return Files.readAllBytes(folder.resolve(file));
    }

    private String pdf(String file) throws IOException {
        try (PDDocument document = Loader.loadPDF(read(file))) {
            for (PDPage page : document.getPages()) {
                page.getResources().getFontNames().forEach(name -> {
                    try {
                        assertTrue(page.getResources().getFont(name).isEmbedded());
                    } catch (IOException e) {
                        throw new AssertionError(e);
                    }
                });
            }
            return squeezed(new PDFTextStripper().getText(document));
        }
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }

    private String html(String file) throws IOException {
        return squeezed(Files.readString(folder.resolve(file)).replaceAll("<[^>]*>", "").replace("&#39;", "'").replace("&quot;", "\"").replace("&lt;", "<").replace("&gt;", ">")
                .replace("&amp;", "&"));
    }

    /** Every planned value, lot and limit, and what was weighed. */
    @Test
    void everythingToRepeatItIsInBothFiles() throws IOException {
        bench.ok("pack", "recipe", "R1", "--out", "out");
        List<String> wanted = new ArrayList<>();
        try (ProjectSession session = open()) {
            Recipe recipe = session.project().getRecipes().get(0);
            recipe.getPlan().getSteps().forEach(step -> {
                wanted.add(step.getTitle());
                StepCard.lines(step, bench.registries().findStepKind(step.getKind()).orElseThrow()).stream().map(CardLine::planned).forEach(wanted::add);
                step.getUses().stream().filter(u -> u.getLot() != null).forEach(u -> wanted.add(u.getLot().getCode()));
            });
            recipe.getAsMade().getSteps().stream().flatMap(s -> s.getUses().stream()).flatMap(u -> u.getWeighings().stream()).forEach(w -> wanted.add(String.valueOf(w.getNet())
                    .replaceFirst("\\.0$", "")));
            recipe.getTargets().getTargets().forEach(t -> wanted.add(Limits.text(t, bench.registries().findProperty(t.getKey().getProperty()).orElseThrow())));
            recipe.getMaterials().stream().flatMap(g -> g.getLots().stream()).map(Lot::getExpires).forEach(day -> wanted.add(String.valueOf(day)));
            recipe.getNeeds().forEach(n -> wanted.add(n.getText()));
            wanted.add(recipe.getLimits());
            wanted.add(recipe.getJob());
        }
        wanted.removeIf(w -> w == null || w.isBlank() || w.equals("null"));
        assertTrue(wanted.size() > 60, wanted.toString());
        String paper = pdf("out/r1-v1.pdf");
        String screen = html("out/r1-v1.html");
        assertEquals(List.of(), wanted.stream().filter(w -> !paper.contains(squeezed(w))).toList(), "not on paper");
        assertEquals(List.of(), wanted.stream().filter(w -> !screen.contains(squeezed(w))).toList(), "not on the screen");
    }

    /** A blend can be made from the pack alone, and what mends a wrong ratio is counted as the blend it comes in: 64.95 g were made of 60 g and 4.95 g. */
    @Test
    void aBlendWithItsGramsAndThePartsMadeStandThere() throws IOException {
        bench.ok("pack", "recipe", "R1", "--out", "out");
        for (String text : List.of(pdf("out/r1-v1.pdf"), html("out/r1-v1.html"))) {
            assertTrue(text.contains(squeezed("part B, PU-B/B-2511 60 g (92.38 % of it); filler, POW/P-01 4.95 g (7.621 % of it)")), text);
            // the test block that was poured beside them is no part
            assertTrue(text.contains(squeezed("Made in this trial: 3 parts, 0 of them failed")), text);
            assertTrue(text.contains(squeezed("part B in this blend 21.57 B-2511")) && text.contains(squeezed("filler, dried in this blend 1.78 P-01")), text);
            assertTrue(text.contains(squeezed("Too much of part A: add 1.021 g of blend X1 for every gram too much. Too much of blend X1: add 0.9799 g of part A")), text);
        }
    }

    /** Freeze, print, change everything that can be changed, print: the same bytes; after closing and opening too. */
    @Test
    void anOldRecipePrintsTheSameForEver() throws IOException {
        bench.ok("pack", "recipe", "R1", "--out", "before");
        bench.at("2027-03-01T09:00:00Z");
        int changed;
        try (ProjectSession session = open()) {
            changed = changeEverything(session);
            session.save();
        }
        assertTrue(changed > 500, changed + " values were changed");
        bench.ok("pack", "recipe", "R1", "--out", "after");
        assertArrayEquals(read("before/r1-v1.html"), read("after/r1-v1.html"));
        assertArrayEquals(read("before/r1-v1.pdf"), read("after/r1-v1.pdf"));
        bench.ok("pack", "trial", "xx8", "--out", "after");
        assertTrue(pdf("after/xx8.pdf").contains("changed"), "the trial's own pack shows the changes");
    }

    /** Changes every text, number and day outside what is frozen; texts that are codes stay unique. Returns how many. */
    private static int changeEverything(ProjectSession session) {
        List<Consumer<Edit>> edits = new ArrayList<>();
        for (Iterator<EObject> all = session.project().eAllContents(); all.hasNext();) {
            EObject object = all.next();
            if (frozen(object)) {
                continue;
            }
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                if (attribute.isID() || attribute.isMany() || !attribute.isChangeable() || !object.eIsSet(attribute)) {
                    continue;
                }
                Object value = object.eGet(attribute);
                Object other = other(attribute.getName(), value);
                if (!other.equals(value)) {
                    edits.add(edit -> edit.set(object, attribute, other));
                }
            }
        }
        Project project = session.project();
        edits.add(edit -> edit.set(project, ModelPackage.Literals.PROJECT__TITLE, "changed title"));
        edits.add(edit -> edit.set(project, ModelPackage.Literals.PROJECT__JOB, "changed job"));
        edits.add(edit -> {
            Part part = ModelFactory.eINSTANCE.createPart();
            part.setCode("P99");
            edit.add(project.getTrials().stream().filter(t -> "xx8".equalsIgnoreCase(t.getCode())).findFirst().orElseThrow(), ModelPackage.Literals.TRIAL__PARTS, part);
        });
        session.execute("Change everything", edit -> edits.forEach(change -> change.accept(edit)));
        return edits.size();
    }

    private static boolean frozen(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof Recipe || at instanceof TargetSheet sheet && sheet.getFrozenAt() != null) {
                return true;
            }
        }
        return false;
    }

    /** Another value of the same type; kinds, paths and property names stay, they say what a thing is. */
    private static Object other(String name, Object value) {
        return switch (value) {
            case String text when List.of("kind", "route", "property", "path", "sha256", "feature", "nsURI", "rule", "subject", "prompt", "calculation", "boundTo", "version")
                    .contains(name) -> text;
            case String text when name.equals("code") -> text.replaceFirst("^T0", "xx");
            case String text -> text + " changed";
            case Double number -> number + 1;
            case LocalDate day -> day.plusDays(1);
            case Instant at -> at.minusSeconds(60);
            default -> value;
        };
    }

    @Test
    void nothingPromisesWhatNobodyKnows() throws IOException {
        bench.ok("pack", "recipe", "R1");
        bench.ok("pack", "trial", "T03");
        bench.ok("pack", "labels", "T08");
        for (String file : List.of("r1-v1.pdf", "t03.pdf", "labels-t08.pdf")) {
            String text = pdf(file).toLowerCase(Locale.ROOT);
            for (String word : List.of("compliant", "certified", "issafe", "nothazardous", "harmless", "guarantee")) {
                assertFalse(text.contains(word), word + " in " + file);
            }
        }
        for (String file : List.of("r1-v1.html", "t03.html")) {
            String text = Files.readString(folder.resolve(file));
            assertFalse(text.contains("<script") || text.contains("http-equiv") || text.matches("(?s).*(src|href)=\"(?!data:image).*"), file);
            assertFalse(text.matches("(?is).*\\bsafe\\b.*"), file);
            assertTrue(squeezed(text).contains(squeezed("safety data sheet, local codes and licensed practice win")));
        }
        assertTrue(pdf("t03.pdf").contains(squeezed("No coating at hand today")), "what was gone against, with its reason");
    }

    @Test
    void aPrintedLabelInAPhotoFindsItsTrial() throws IOException {
        bench.ok("pack", "labels", "T08", "--out", "out");
        try (PDDocument document = Loader.loadPDF(read("out/labels-t08.pdf"))) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 150);
            ImageIO.write(page, "png", folder.resolve("photo.png").toFile());
        }
        Bench.Run run = bench.ok("trial", "attach", "photo.png", "--caption", "labels", "--json");
        assertEquals("T08", run.json().getAsJsonObject("results").get("trial").getAsJsonObject().get("text").getAsString(), run.out());
        try (ProjectSession session = open()) {
            Trial trial = session.project().getTrials().stream().filter(t -> t.getCode().equals("T08")).findFirst().orElseThrow();
            assertEquals("labels", trial.getAttachments().getLast().getCaption());
        }
    }

    @Test
    void aPhotoWithoutALabelIsRefusedAndNothingIsCopied() throws IOException {
        ImageIO.write(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB), "png", folder.resolve("dark.png").toFile());
        Bench.Run run = bench.run("trial", "attach", "dark.png");
        assertEquals(2, run.status());
        assertTrue(run.err().startsWith("No label was found in dark.png: name the trial"), run.err());
        bench.ok("trial", "attach", "T08", "dark.png");
    }

    @Test
    void twoHundredPartsNoPhotosLongNamesAndEmptyThings() throws IOException {
        try (ProjectSession session = open()) {
            edit(session, edit -> {
                Trial trial = ModelFactory.eINSTANCE.createTrial();
                trial.setCode("T-200");
                trial.setTitle("a title as long as titles get when nobody stops the person who types them, which happens late in the evening");
                trial.setIdea("\ud83d\ude00 \u05e9\u05dc\u05d5\u05dd \u0645\u0631\u062d\u0628\u0627 nospaces" + "x".repeat(300));
                edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial);
                for (int i = 0; i < 200; i++) {
                    Part part = ModelFactory.eINSTANCE.createPart();
                    part.setCode("P" + (i + 1));
                    part.setFailed(i % 50 == 7);
                    part.setFailReason(part.isFailed() ? "torn at the rim" : null);
                    edit.add(trial, ModelPackage.Literals.TRIAL__PARTS, part);
                }
            });
            session.save();
        }
        bench.ok("pack", "trial", "T-200");
        bench.ok("pack", "labels", "T-200");
        String text = pdf("t-200.pdf");
        assertTrue(text.contains("P200") && text.contains(squeezed("4 of 200 parts failed")) && text.contains(squeezed("No photo was attached.")), "the whole of it");
        assertTrue(text.contains("U+1F600"), "signs that could not be shown are named");
        assertTrue(pdf("labels-t-200.pdf").contains(squeezed("part P200 of T-200")));
    }

    private static void edit(ProjectSession session, Consumer<Edit> work) {
        session.execute("Test", work::accept);
    }

    @Test
    void whatIsNotThereIsSaidAndNothingIsWritten() throws IOException {
        assertEquals(2, bench.run("pack", "recipe", "R9").status());
        assertEquals(2, bench.run("pack", "labels", "nothing").status());
        Files.writeString(folder.resolve("taken"), "a file");
        Bench.Run run = bench.run("pack", "trial", "T08", "--out", "taken");
        assertEquals(3, run.status());
        assertTrue(run.err().contains("cannot be written to taken"), run.err());
        try (Stream<Path> left = Files.list(folder)) {
            assertTrue(left.noneMatch(p -> p.toString().endsWith(".part") || p.toString().endsWith(".pdf")));
        }
    }
}
