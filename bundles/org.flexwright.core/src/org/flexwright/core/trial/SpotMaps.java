package org.flexwright.core.trial;

import java.util.List;
import java.util.Locale;

import org.flexwright.core.session.Edit;
import org.flexwright.core.view.SpotSketch;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;

/** Maps of a part: a photo or sketch with the places where it is read. */
public final class SpotMaps {
    private SpotMaps() {
    }

    /** Adds a map with a drawn outline; {@code sketch} null: a dome from above. */
    public static SpotMap add(Edit edit, String title, String sketch) {
        String name = title == null || title.isBlank() ? free(edit.project()) : title.strip();
        if (edit.project().getSpotMaps().stream().anyMatch(map -> name.equalsIgnoreCase(map.getTitle()))) {
            throw PlanException.of("spots.twice", name);
        }
        SpotMap map = ModelFactory.eINSTANCE.createSpotMap();
        map.setTitle(name);
        map.setSketch(known(sketch == null ? SpotSketch.all().getFirst().id() : sketch));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__SPOT_MAPS, map);
        return map;
    }

    private static String free(Project project) {
        int number = project.getSpotMaps().size() + 1;
        while (true) {
            String name = Trials.words("spots.name", number);
            if (project.getSpotMaps().stream().noneMatch(map -> name.equalsIgnoreCase(map.getTitle()))) {
                return name;
            }
            number++;
        }
    }

    private static String known(String sketch) {
        return SpotSketch.find(sketch.strip().toLowerCase(Locale.ROOT)).map(SpotSketch::id).orElseThrow(() -> PlanException.of("spots.sketch", sketch, String.join(", ", SpotSketch
                .all().stream().map(SpotSketch::id).toList())));
    }

    /** Another outline; a photo goes before it. */
    public static void sketch(Edit edit, SpotMap map, String sketch) {
        edit.set(map, ModelPackage.Literals.SPOT_MAP__SKETCH, known(sketch));
    }

    /** Lays a photo of the project under the spots; null takes it away, and the sketch is shown. */
    public static void picture(Edit edit, SpotMap map, Attachment photo) {
        if (photo != null && photo.getKind() != AttachmentKind.PHOTO) {
            throw PlanException.of("spots.photo", photo.getFileName());
        }
        edit.set(map, ModelPackage.Literals.SPOT_MAP__PICTURE, photo);
    }

    /**
     * Puts a spot on the map or moves the one there is.
     *
     * @param spot   its name, as the readings name it
     * @param across share of the width from the left, 0 to 1
     * @param down   share of the height from the top, 0 to 1
     */
    public static SpotPlace put(Edit edit, SpotMap map, String spot, double across, double down) {
        if (spot == null || spot.isBlank()) {
            throw PlanException.of("spots.noName");
        }
        if (!(across >= 0 && across <= 1 && down >= 0 && down <= 1)) {
            throw PlanException.of("spots.outside", spot.strip());
        }
        List<SpotPlace> known = map.getPlaces().stream().filter(place -> spot.strip().equalsIgnoreCase(place.getSpot())).toList();
        if (!known.isEmpty()) {
            move(edit, known.getFirst(), across, down);
            return known.getFirst();
        }
        SpotPlace place = ModelFactory.eINSTANCE.createSpotPlace();
        place.setSpot(spot.strip());
        place.setAcross(across);
        place.setDown(down);
        edit.add(map, ModelPackage.Literals.SPOT_MAP__PLACES, place);
        return place;
    }

    /** Moves a spot; what lies beyond the edge stays on it. */
    public static void move(Edit edit, SpotPlace place, double across, double down) {
        edit.set(place, ModelPackage.Literals.SPOT_PLACE__ACROSS, Math.clamp(across, 0, 1));
        edit.set(place, ModelPackage.Literals.SPOT_PLACE__DOWN, Math.clamp(down, 0, 1));
    }

    /** Another name; readings are found by it. */
    public static void rename(Edit edit, SpotPlace place, String spot) {
        SpotMap map = (SpotMap) place.eContainer();
        if (spot == null || spot.isBlank()) {
            throw PlanException.of("spots.noName");
        }
        if (map.getPlaces().stream().anyMatch(other -> other != place && spot.strip().equalsIgnoreCase(other.getSpot()))) {
            throw PlanException.of("spots.twicePlace", spot.strip());
        }
        edit.set(place, ModelPackage.Literals.SPOT_PLACE__SPOT, spot.strip());
    }

    /** Takes a spot off the map; readings at it stay. */
    public static void remove(Edit edit, SpotPlace place) {
        edit.remove(place);
    }

    /** A name no spot of the map has yet. */
    public static String freeSpot(SpotMap map) {
        for (int number = map.getPlaces().size() + 1;; number++) {
            String name = Trials.words("spots.spot", number);
            if (map.getPlaces().stream().noneMatch(place -> name.equalsIgnoreCase(place.getSpot()))) {
                return name;
            }
        }
    }
}
