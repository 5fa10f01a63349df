package org.flexwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.imageio.ImageIO;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.trial.Attachments;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Importance;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Need;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;

/** The report holds the whole record, every text escaped, nothing loaded from elsewhere. */
class ReportTest {
    private static final long WAIT = 20_000;
    private static final Instant NOW = Instant.parse("2026-05-03T08:00:00Z");
    private static final Set<String> TAGS = Set.of("html", "head", "meta", "title", "style", "body", "h1", "h2", "h3", "p", "ul", "ol", "li", "table", "tr", "th",
            "td", "thead", "tbody", "br", "span", "div", "figure", "figcaption", "img", "details", "summary", "svg", "rect", "line", "circle", "path", "text");
    private static final byte[] PNG = png();

    /** Texts of a project that are for the program: addresses, hashes, searches, and what was typed for a number that stands there in its unit. */
    private static final Set<String> BOOKKEEPING = Set.of("Measurement.kind", "Step.kind", "Project.writtenBy", "StopOverride.inputHash", "StopOverride.subject",
            "SavedSearch.query", "RunInput.boundTo", "RunInput.text", "RunResult.unit", "Reading.typedAs", "Provenance.feature", "Provenance.source", "Provenance.typedAs", "Provenance.by");

    private static Registries registries;
    @TempDir
    Path folder;

    @BeforeAll
    static void plugins() throws InterruptedException {
        BundleContext bundles = FrameworkUtil.getBundle(Report.class).getBundleContext();
        ServiceTracker<Registries, Registries> tracker = new ServiceTracker<>(bundles, Registries.class, null);
        tracker.open();
        registries = tracker.waitForService(WAIT);
        tracker.close();
    }

    private static byte[] png() {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(12, 8, BufferedImage.TYPE_INT_RGB), "png", png);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return png.toByteArray();
    }

    private String report(Project project) {
        return Report.html(project, registries, folder, NOW, "1.0.0.test");
    }

    private static Project project() {
        Project project = ModelFactory.eINSTANCE.createProject();
        project.setId("p");
        project.setTitle("Bumper");
        new ResourceImpl(URI.createURI("memory:/project")).getContents().add(project);
        return project;
    }

    @Test
    void everyTextIsEscaped() {
        String html = report(new Filled().project);
        assertFalse(html.contains("<img src=x"), "a text became a tag");
        assertFalse(html.contains("onerror=alert(1)>"), "a text left its place");
        assertFalse(html.contains("\u0001"), "a control character got through");
        Matcher tags = Pattern.compile("<([a-zA-Z][a-zA-Z0-9]*)").matcher(html);
        Set<String> found = new TreeSet<>();
        while (tags.find()) {
            found.add(tags.group(1));
        }
        found.removeAll(TAGS);
        assertEquals(Set.of(), found, "only the tags the report itself writes");
        assertEquals(html.split("<td[ >]", -1).length, html.split("</td>", -1).length, "as many cells are closed as are opened");
    }

    @Test
    void nothingIsLoadedFromElsewhere() {
        String html = report(new Filled().project);
        Matcher links = Pattern.compile("(?:src|href|url)\\s*[=(]\\s*[\"']?([^\"')>]+)").matcher(html.replace(escaped(Filled.hostile("")), ""));
        List<String> elsewhere = new ArrayList<>();
        while (links.find()) {
            if (!links.group(1).startsWith("data:image/") && !links.group(1).startsWith("x onerror")) {
                elsewhere.add(links.group(1));
            }
        }
        assertEquals(List.of(), elsewhere);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;").replace('\u0001', '\uFFFD');
    }

    /** What people wrote is in the report; the texts that are not are bookkeeping, and named here. */
    @Test
    void theWholeRecordIsInIt() {
        Filled filled = new Filled();
        String html = report(filled.project);
        Set<String> absent = new TreeSet<>();
        filled.texts.forEach((where, text) -> {
            if (!html.contains(escaped(text))) {
                absent.add(where);
            }
        });
        assertEquals(new TreeSet<>(BOOKKEEPING), absent);
    }

    private static Attachment attachment(AttachmentKind kind, String name, byte[] bytes, String caption) {
        Attachment attachment = ModelFactory.eINSTANCE.createAttachment();
        attachment.setId("a-" + name);
        attachment.setKind(kind);
        attachment.setFileName(name);
        attachment.setPath("photos/" + name);
        attachment.setSha256(Attachments.sha256(bytes));
        attachment.setCaption(caption);
        return attachment;
    }

    private Project withAttachments(Attachment... attachments) {
        Project project = project();
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setId("t");
        trial.setCode("T01");
        project.getTrials().add(trial);
        for (Attachment attachment : attachments) {
            project.getAttachments().add(attachment);
            trial.getAttachments().add(attachment);
        }
        return project;
    }

    @Test
    void photosAreInIt() throws Exception {
        Files.createDirectories(folder.resolve("photos"));
        Files.write(folder.resolve("photos/rim.png"), PNG);
        String html = report(withAttachments(attachment(AttachmentKind.PHOTO, "rim.png", PNG, "rim, scale 10 mm")));
        assertTrue(html.contains("src=\"data:image/png;base64," + Base64.getEncoder().encodeToString(PNG) + "\""));
        assertTrue(html.contains("<figcaption>rim, scale 10 mm</figcaption>"), "no file name where the picture is shown");
    }

    @Test
    void aPhotoThatIsNotTheOneAttachedIsNamedInstead() throws Exception {
        Files.createDirectories(folder.resolve("photos"));
        Files.write(folder.resolve("photos/rim.png"), new byte[] { (byte) 0x89, 'P', 'N', 'G', 9 });
        Files.write(folder.resolve("secret.png"), PNG);
        Attachment changed = attachment(AttachmentKind.PHOTO, "rim.png", PNG, "rim");
        Attachment gone = attachment(AttachmentKind.PHOTO, "gone.png", PNG, null);
        Attachment outside = attachment(AttachmentKind.PHOTO, "out.png", PNG, null);
        outside.setPath("../" + folder.getFileName() + "/../secret.png");
        Attachment settings = attachment(AttachmentKind.SETTINGS, "printer.ini", PNG, "slow walls");
        String html = report(withAttachments(changed, gone, outside, settings));
        assertFalse(html.contains("<img"));
        assertTrue(html.contains("rim (file rim.png, SHA-256 " + changed.getSha256() + ") Not shown: the file is not the one that was attached, its checksum differs."));
        assertTrue(html.contains("(file gone.png, SHA-256 " + gone.getSha256() + ") Not shown: the file is missing or cannot be read."));
        assertTrue(html.contains("(file out.png, SHA-256 " + outside.getSha256() + ") Not shown: its place is not inside the project."));
        assertTrue(html.contains("slow walls (file printer.ini, SHA-256 " + settings.getSha256() + ")</figcaption>"));
    }

    @Test
    void anAbsentPluginIsNamed() {
        Project project = project();
        var use = ModelFactory.eINSTANCE.createPluginUse();
        use.setNsURI("urn:dipping:1");
        use.setPlugin("org.dipping");
        use.setVersion("1.2.0");
        project.getPlugins().add(use);
        var known = ModelFactory.eINSTANCE.createPluginUse();
        known.setNsURI(registries.packages().get(0).ePackage().getNsURI());
        known.setPlugin("here");
        known.setVersion("1");
        project.getPlugins().add(known);
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setId("t");
        trial.setCode("T01");
        trial.setRoute("dipping.dip");
        var step = ModelFactory.eINSTANCE.createStep();
        step.setId("s");
        step.setKind("dipping.dip");
        step.setTitle("Dip");
        trial.getSteps().add(step);
        var part = ModelFactory.eINSTANCE.createPart();
        part.setId("c");
        part.setCode("P1");
        var measurement = ModelFactory.eINSTANCE.createMeasurement();
        measurement.setId("m");
        measurement.setKey(Filled.key("dipping.film"));
        measurement.getReadings().add(ModelFactory.eINSTANCE.createReading());
        part.getMeasurements().add(measurement);
        trial.getParts().add(part);
        project.getTrials().add(trial);
        String html = report(project);
        assertTrue(html.contains("The plugin org.dipping 1.2.0 (urn:dipping:1) is not here: what it wrote is kept in the project and not shown."));
        assertFalse(html.contains("The plugin here 1"), "a plugin that is here is not complained of");
        assertTrue(html.contains("dipping.dip (its plugin is absent)"));
        assertTrue(html.contains("its plugin is absent; details are kept"));
        assertTrue(html.contains("1 reading is kept; the plugin of this property is absent"));
    }

    @Test
    void inventedDataSaySo() {
        Project project = project();
        assertFalse(report(project).contains("Invented demonstration data"));
        project.setInvented(true);
        assertTrue(report(project).contains("Invented demonstration data. Nothing in it was measured on a real part."));
    }

    @Test
    void anEmptyProjectHasAReport() {
        Project project = project();
        Need need = ModelFactory.eINSTANCE.createNeed();
        need.setImportance(Importance.MUST);
        need.setText("clicks");
        project.getNeeds().add(need);
        String html = report(project);
        assertTrue(html.contains("There are no targets yet."));
        assertTrue(html.contains("<li>Must: clicks</li>"));
        assertTrue(html.contains("The rules found nothing."));
        assertFalse(html.contains("null"), html);
    }

    @Test
    void itNeverPromisesWhatItCannotKnow() {
        String html = report(new Filled().project).toLowerCase(java.util.Locale.ROOT);
        for (String word : List.of("compliant", "certified", "is safe", "guarantee")) {
            assertFalse(html.contains(word), word);
        }
        assertTrue(html.contains("safety data sheet, local codes and licensed practice win"));
    }
}
