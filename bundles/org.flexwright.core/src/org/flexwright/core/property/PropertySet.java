package org.flexwright.core.property;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Message;
import org.flexwright.model.PropertyKey;

/** Properties a plugin adds. Register it as an OSGi service. */
public interface PropertySet {
    /** The properties; ids unique over all plugins. */
    List<PropertyDef> properties();

    /**
     * Where a reading really belongs, when the piece does not allow it to stand for what was asked: a durometer on a thin wall reads an
     * apparent hardness. Asked before a reading is stored.
     *
     * @param key       the property and conditions as asked
     * @param thickness thickness of the piece at the spot in mm; null when not entered
     */
    default Optional<Redirect> redirect(PropertyKey key, Double thickness) {
        return Optional.empty();
    }

    /**
     * Class of the details kept with a measurement of that property, from the plugin's own package, described like those of a step; null when
     * the core measurement says it all.
     */
    default EClass details(String property) {
        return null;
    }

    /**
     * What a measured value would be about as other properties. Asked only when a person wants to know; empty when nothing honest can be said.
     *
     * @param property id of the property that was measured
     * @param value    in its canonical unit
     */
    default List<Approximation> about(String property, double value) {
        return List.of();
    }

    /** What makers call the results of these properties, so that a search understands it; nothing when the titles say it all. */
    default List<ResultWord> resultWords() {
        return List.of();
    }

    /**
     * Another property, or the same one with something to know.
     *
     * @param property id of the property the reading is stored under
     * @param note     one sentence to show beside the entry
     */
    record Redirect(String property, Message note) {
        public Redirect {
            Objects.requireNonNull(property, "property");
            Objects.requireNonNull(note, "note");
        }
    }
}
