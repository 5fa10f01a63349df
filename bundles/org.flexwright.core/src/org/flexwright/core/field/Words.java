package org.flexwright.core.field;

import java.util.Locale;

/** Words made from the names in code when nobody gave better ones. */
final class Words {

    private Words() {
    }

    /** {@code massOfPart} becomes "Mass of part". */
    static String ofName(String name) {
        String spaced = name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return spaced.isEmpty() ? spaced : Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
    }

    /** {@code VERY_SOFT} becomes "very soft"; a sign of one or two letters, such as a scale's, stays as it is. */
    static String ofConstant(String name) {
        return name.length() <= 2 ? name : name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
