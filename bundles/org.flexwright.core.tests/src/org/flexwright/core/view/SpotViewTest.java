package org.flexwright.core.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.trial.SpotMaps;
import org.flexwright.core.verdict.Bench;
import org.flexwright.model.Censoring;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpotViewTest {
    private static final PropertyCatalogue CATALOGUE = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.HARDNESS);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };

    private final Project project = ModelFactory.eINSTANCE.createProject();
    private final Trial trial = Bench.trial();
    private final SpotMap map = ModelFactory.eINSTANCE.createSpotMap();

    SpotViewTest() {
        trial.setCode("T07");
        project.getTrials().add(trial);
        project.getSpotMaps().add(map);
        for (String spot : List.of("crown", "wall", "flange")) {
            SpotPlace place = ModelFactory.eINSTANCE.createSpotPlace();
            place.setSpot(spot);
            map.getPlaces().add(place);
        }
    }

    private static Measurement read(Part part, String spot, Double dwell, double... values) {
        Measurement measurement = Bench.read(part, Bench.HARDNESS, values);
        measurement.getKey().setSpot(spot);
        measurement.getKey().setDwell(dwell);
        return measurement;
    }

    private SpotView best() {
        return SpotView.of(map, SpotView.offers(project, map, CATALOGUE).getFirst());
    }

    /** Ninety-nine readings on one part weigh as much as one on the other. */
    @Test
    void readingsOnOnePartAreOneValue() {
        read(Bench.part(trial, "P1"), "crown", 3.0, new Random(1).doubles(99, 40, 40.001).toArray());
        read(Bench.part(trial, "P2"), " Crown ", 3.0, 50);
        SpotView view = best();
        assertEquals(45, view.dots().getFirst().value(), 1e-3);
        assertTrue(view.dots().getFirst().words().contains("median of 2 pieces"), view.dots().getFirst().words());
        assertEquals("T07, all parts", SpotView.offers(project, map, CATALOGUE).getFirst().whose());
    }

    @Test
    void anotherDwellIsAnotherMap() {
        Part part = Bench.part(trial, "P1");
        read(part, "crown", 3.0, 45);
        read(part, "wall", 3.0, 47);
        read(part, "crown", 15.0, 41);
        List<SpotView.Offer> offers = SpotView.offers(project, map, CATALOGUE);
        assertEquals(List.of("Hardness, after 3 s · T07 P1", "Hardness, after 15 s · T07 P1"), offers.stream().map(SpotView.Offer::words).toList());
        SpotView view = SpotView.of(map, offers.get(1));
        assertEquals(List.of("41", "–", "–"), view.dots().stream().map(SpotView.Dot::figure).toList());
    }

    /** Two points between spots of a hand gauge are no pattern; twenty are. */
    @Test
    void theHueDoesNotMakeAPatternOfScatter() {
        Part part = Bench.part(trial, "P1");
        read(part, "crown", 3.0, 45);
        read(part, "wall", 3.0, 47);
        SpotView near = best();
        assertTrue(near.dots().get(1).step() - near.dots().get(0).step() <= 1);
        assertTrue(near.notes().getFirst().text().contains("10 Shore A"), near.notes().toString());
        read(part, "flange", 3.0, 65);
        SpotView far = best();
        assertEquals(List.of(0, 0, 4), far.dots().stream().map(SpotView.Dot::step).toList());
        assertEquals(45, far.from(0), 1e-9);
        assertEquals(List.of(), far.notes());
    }

    @Test
    void boundsAreWrittenAndNotShadedFailedPartsAreAbsentOtherSpotsAreNamed() {
        Part part = Bench.part(trial, "P1");
        read(part, "crown", 3.0, 45);
        read(part, "wall", 3.0, 90).getReadings().getFirst().setCensoring(Censoring.MORE_THAN);
        read(part, "under the rim", 3.0, 50);
        Part failed = Bench.part(trial, "P2");
        failed.setFailed(true);
        read(failed, "crown", 3.0, 12);
        SpotView view = best();
        assertEquals(45, view.dots().getFirst().value());
        assertEquals("><", view.dots().get(1).figure());
        assertEquals(-1, view.dots().get(1).step());
        assertTrue(view.notes().stream().anyMatch(n -> n.text().contains("under the rim")), view.notes().toString());
    }

    @Test
    void nothingReadOffersNothing() {
        assertEquals(List.of(), SpotView.offers(project, map, CATALOGUE));
        read(Bench.part(trial, "P1"), "elsewhere", 3.0, 45);
        assertEquals(List.of(), SpotView.offers(project, map, CATALOGUE));
    }

    @Test
    void spotsArePutMovedAndKeptOnThePicture(@TempDir Path temp) {
        ProjectSession session = new ProjectStore(new StoreContext(ModelThread.current(), Clock.fixed(Instant.EPOCH, ZoneOffset.UTC), "Ann", "1.0.0", List.of()))
                .create(temp.resolve("Dome.flexwright"), "Dome");
        SpotMap[] made = new SpotMap[1];
        session.execute("map", edit -> made[0] = SpotMaps.add(edit, null, null));
        assertEquals("Map 1", made[0].getTitle());
        assertThrows(RefusedException.class, () -> session.execute("map", edit -> SpotMaps.add(edit, "map 1", null)));
        assertThrows(RefusedException.class, () -> session.execute("map", edit -> SpotMaps.add(edit, "other", "cube")));
        session.execute("spot", edit -> SpotMaps.put(edit, made[0], "crown", 0.5, 0.5));
        session.execute("spot", edit -> SpotMaps.put(edit, made[0], "CROWN", 0.25, 0.5));
        assertEquals(1, made[0].getPlaces().size());
        assertEquals(0.25, made[0].getPlaces().getFirst().getAcross());
        assertThrows(RefusedException.class, () -> session.execute("spot", edit -> SpotMaps.put(edit, made[0], "rim", 1.5, 0.5)));
        assertThrows(RefusedException.class, () -> session.execute("spot", edit -> SpotMaps.put(edit, made[0], " ", 0.5, 0.5)));
        session.execute("move", edit -> SpotMaps.move(edit, made[0].getPlaces().getFirst(), -0.3, 7));
        assertEquals(List.of(0.0, 1.0), List.of(made[0].getPlaces().getFirst().getAcross(), made[0].getPlaces().getFirst().getDown()));
        session.execute("spot", edit -> SpotMaps.put(edit, made[0], SpotMaps.freeSpot(made[0]), 0.1, 0.1));
        assertThrows(RefusedException.class, () -> session.execute("rename", edit -> SpotMaps.rename(edit, made[0].getPlaces().get(1), "Crown")));
        session.undo();
        assertEquals(1, made[0].getPlaces().size());
        session.close();
    }
}
