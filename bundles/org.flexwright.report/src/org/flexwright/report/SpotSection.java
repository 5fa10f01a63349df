package org.flexwright.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.flexwright.core.Message;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.SpotView;
import org.flexwright.model.Project;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Blocks;
import org.flexwright.report.doc.Tone;

/** Spot maps: what was read where on a part. */
final class SpotSection {
    /** A spot alone is no map. */
    private static final int LEAST = 2;
    /** Drawings of one map; the rest is named. */
    private static final int MOST = 6;

    private SpotSection() {
    }

    /** A single part of a trial whose parts are drawn together. */
    private static boolean oneOfMany(SpotView.Offer offer) {
        return offer.pieces().size() == 1 && offer.pieces().getFirst().eContainer() instanceof Trial trial && trial.getParts().stream().filter(part -> !part.isFailed()).count() > 1;
    }

    static void write(Project project, Registries registries, Path folder, Blocks blocks) {
        for (SpotMap map : project.getSpotMaps()) {
            blocks.heading(2, Say.it("spots", map.getTitle() == null ? "" : map.getTitle()));
            List<SpotView.Offer> offers = SpotView.offers(project, map, registries.properties()).stream().filter(offer -> offer.spots() >= LEAST && !oneOfMany(offer))
                    .toList();
            blocks.say(Say.it("spots.places", map.getPlaces().stream().map(SpotPlace::getSpot).filter(Objects::nonNull).collect(Collectors.joining("; ")), Stream.of(map.getPicture() == null ? null : map.getPicture().getFileName(), map.getSketch()).filter(Objects::nonNull).collect(Collectors.joining(", "))), Tone.QUIET);
            if (offers.isEmpty()) {
                blocks.say(Say.it("spots.none"), Tone.QUIET);
            }
            for (SpotView.Offer offer : offers.stream().limit(MOST).toList()) {
                SpotView view = SpotView.of(map, offer);
                blocks.heading(3, view.title());
                blocks.add(SpotFile.drawing(map, view, folder));
                blocks.add(new Block.Items(view.dots().stream().map(dot -> Block.Cell.of(dot.words())).toList()));
                view.notes().forEach((Message note) -> blocks.say(note.text(), Tone.QUIET));
            }
            if (offers.size() > MOST) {
                blocks.say(Say.it("spots.more", String.join("; ", offers.stream().skip(MOST).map(SpotView.Offer::words).toList())), Tone.QUIET);
            }
        }
    }
}
