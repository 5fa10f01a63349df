package org.flexwright.testing.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.flexwright.core.Watch;
import org.flexwright.core.recording.ImportSettings;
import org.flexwright.core.recording.LawFits;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.recording.TableGuess;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.PolynomialLaw;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.StretchCurve;
import org.flexwright.core.rubber.Treloar;
import org.flexwright.core.rubber.Weighting;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.LawFit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recording;
import org.flexwright.model.ReferencePart;
import org.flexwright.testing.data.StretchDetails;
import org.flexwright.testing.data.StretchLoading;
import org.flexwright.testing.data.TestingDataFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From files of curves over the project to a fitted law. */
class LawFitsTest {
    private static final StretchKind KIND = new StretchKind();
    private final Registries registries = new Registries(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(KIND));
    @TempDir
    Path temp;
    private ProjectStore store;

    @BeforeEach
    void create() {
        store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "Ann", "1.0.0", registries.packages()));
    }

    /** Treloar's three files, taken in as a maker would, give the fit that his points give; it is kept, and computed again after opening. */
    @Test
    void filesOfThreeLoadingsGiveOneLaw() throws IOException {
        Path folder;
        RubberFit direct = RubberFit.of(RubberForm.YEOH, Treloar.points()).orElseThrow();
        try (ProjectSession s = project()) {
            folder = s.folder();
            List<Recording> curves = new ArrayList<>();
            for (Loading loading : Loading.values()) {
                curves.add(add(s, loading, Treloar.file(loading)));
            }
            assertEquals(curves, LawFits.fitting(s.project(), registries));
            s.execute("Keep", edit -> LawFits.add(edit, null, RubberForm.YEOH, Weighting.EQUAL, null, null, curves));
            assertEquals("fit.title.twice", refused(() -> s.execute("Keep", edit -> LawFits.add(edit, null, RubberForm.YEOH, Weighting.EQUAL, null, null, curves))));
            s.save();
        }
        try (ProjectSession s = store.open(folder)) {
            LawFit kept = s.project().getLawFits().getFirst();
            assertEquals("Yeoh on C1, C2, C3", kept.getTitle());
            RubberFit fit = LawFits.question(s.folder(), kept, registries).fit(Watch.NONE);
            assertEquals(53, fit.points().size());
            for (int i = 0; i < 3; i++) {
                double value = direct.coefficients().get(i).value();
                assertEquals(value, fit.coefficients().get(i).value(), 1e-6 * Math.abs(value), "the way through files changes nothing");
            }
            s.execute("Range", edit -> edit.set(kept, ModelPackage.Literals.LAW_FIT__TO_STRETCH, 3.1));
            assertTrue(LawFits.question(s.folder(), kept, registries).fit(Watch.NONE).largest() <= 3.1);
        }
    }

    @Test
    void whatCannotBeFittedIsRefusedInOneSentence() throws IOException {
        try (ProjectSession s = project()) {
            Recording curve = add(s, Loading.UNIAXIAL, Treloar.file(Loading.UNIAXIAL));
            assertEquals("fit.recordings.none", refused(() -> question(s, List.of(), null, null)));
            assertEquals("fit.range", refused(() -> question(s, List.of(curve), 3.0, 2.0)));
            assertEquals("fit.range.none", refused(() -> question(s, List.of(curve), 9.0, 12.0).points(Watch.NONE)));
            assertEquals("fit.undetermined", refused(() -> question(s, List.of(curve), 7.5, null).fit(Watch.NONE)));
            s.execute("Leave out", edit -> edit.set(curve, ModelPackage.Literals.RECORDING__LEFT_OUT, "slipped"));
            RefusedException left = assertThrows(RefusedException.class, () -> question(s, List.of(curve), null, null));
            assertTrue(left.getMessage().contains("slipped"), left.getMessage());
        }
    }

    /** A long recording is evened out over its stretch, so that where the recorder dwelt does not weigh; the law that made it is found. */
    @Test
    void manyPointsAreEvenedOut() {
        PolynomialLaw law = PolynomialLaw.mooneyRivlin(0.15, 0.05);
        Random random = new Random(8);
        int rows = 200_000;
        double[] stretch = new double[rows];
        double[] stress = new double[rows];
        for (int i = 0; i < rows; i++) {
            stretch[i] = 1 + 2 * Math.pow(i / (double) rows, 3); // most rows near the beginning
            stress[i] = law.stress(Loading.UNIAXIAL, stretch[i]) + 0.01 * random.nextGaussian();
        }
        List<RubberFit.Point> points = LawFits.points(new StretchCurve(Loading.UNIAXIAL, stretch, stress), null, null);
        assertEquals(120, points.size());
        RubberFit fit = RubberFit.of(RubberForm.MOONEY_RIVLIN, points).orElseThrow();
        assertEquals(0.15, fit.coefficients().get(0).value(), 1e-3);
        assertEquals(0.05, fit.coefficients().get(1).value(), 1e-3);
        assertTrue(LawFits.points(new StretchCurve(Loading.UNIAXIAL, stretch, stress), 1.5, 2.0).stream().allMatch(p -> p.stretch() >= 1.5 && p.stretch() <= 2));
    }

    private LawFits.Question question(ProjectSession s, List<Recording> recordings, Double from, Double to) {
        return LawFits.question(s.folder(), recordings, RubberForm.OGDEN_3, Weighting.EQUAL, from, to, registries);
    }

    private static String refused(org.junit.jupiter.api.function.Executable work) {
        return assertThrows(RefusedException.class, work).sentence().key();
    }

    private ProjectSession project() {
        ProjectSession s = store.create(temp.resolve("Sheet.flexwright"), "Sheet");
        ReferencePart part = ModelFactory.eINSTANCE.createReferencePart();
        part.setCode("R1");
        s.execute("Add", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__REFERENCE_PARTS, part));
        return s;
    }

    private Recording add(ProjectSession s, Loading loading, String text) throws IOException {
        Path file = Files.writeString(temp.resolve(Treloar.fileName(loading)), text);
        ImportSettings settings = Recordings.defaults(s.project(), KIND, TableGuess.of(file, KIND));
        StretchDetails details = TestingDataFactory.eINSTANCE.createStretchDetails();
        details.setLoading(StretchLoading.valueOf(loading.name()));
        return Recordings.add(s, s.project().getReferenceParts().getFirst(), KIND, file, settings.withDetails(details, java.util.Set.of()), Watch.NONE);
    }
}
