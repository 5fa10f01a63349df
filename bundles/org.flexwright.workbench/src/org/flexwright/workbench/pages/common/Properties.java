package org.flexwright.workbench.pages.common;

import java.util.Locale;
import java.util.Optional;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;

/** Properties and their conditions in words. */
public final class Properties {

    private Properties() {
    }

    /** Title of the property of a key; its id when the plugin that defines it is not here. */
    public static String title(PropertyKey key, PropertyCatalogue catalogue) {
        if (key == null || key.getProperty() == null) {
            return "no property chosen";
        }
        return catalogue.find(key.getProperty()).map(PropertyDef::title).orElse(key.getProperty());
    }

    /** Title and the conditions that matter: {@code Hardness, Shore A, flange, glass plate, 3 s}. */
    public static String words(PropertyKey key, PropertyCatalogue catalogue) {
        String conditions = conditions(key, catalogue);
        return title(key, catalogue) + (conditions.isEmpty() ? "" : ", " + conditions);
    }

    /** The conditions that matter, separated by commas; empty when none was given. */
    public static String conditions(PropertyKey key, PropertyCatalogue catalogue) {
        if (key == null || key.getProperty() == null) {
            return "";
        }
        StringBuilder words = new StringBuilder();
        Optional<PropertyDef> known = catalogue.find(key.getProperty());
        if (matters(known, Condition.SPOT)) {
            add(words, key.getSpot());
        }
        if (matters(known, Condition.SUPPORT)) {
            add(words, key.getSupport());
        }
        if (matters(known, Condition.DWELL) && key.getDwell() != null) {
            add(words, FieldText.digits(key.getDwell()) + " s");
        }
        if (matters(known, Condition.PIECE) && key.getPieceKind() != null && key.getPieceKind() != PieceKind.PART) {
            add(words, piece(key.getPieceKind()));
        }
        return words.toString();
    }

    private static boolean matters(Optional<PropertyDef> known, Condition condition) {
        return known.isEmpty() || known.get().comparedBy().contains(condition);
    }

    private static void add(StringBuilder words, String more) {
        if (more != null && !more.isBlank()) {
            words.append(words.isEmpty() ? "" : ", ").append(more.strip());
        }
    }

    /** A kind of piece in words. */
    public static String piece(PieceKind kind) {
        return kind == null ? "" : kind.getLiteral().replace('_', ' ').toLowerCase(Locale.ROOT);
    }

    /** Unit of a property as it is shown; empty for yes/no properties and unknown ones. */
    public static String unit(PropertyKey key, PropertyCatalogue catalogue) {
        return key == null || key.getProperty() == null ? "" : catalogue.find(key.getProperty()).filter(p -> !p.yesNo()).map(p -> p.kind().unit().display()).orElse("");
    }
}
