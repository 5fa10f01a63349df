package org.flexwright.core.search;

/**
 * Why a thing was found, for one of the words looked for.
 *
 * @param label     what the text or number is called: {@code Conclusion}, {@code Hardness, Shore A}
 * @param text      the text around the word, or the number with its unit
 * @param place     address of the step, part or note in which it stands; the thing's own where it stands in none
 * @param placeName what people call that place, empty for the thing itself
 */
public record Why(String label, String text, String place, String placeName) {

    /** In one line: {@code Hardness, Shore A: 43 Shore A, median (P2)}. */
    public String line() {
        return label + ": " + text + (placeName.isEmpty() ? "" : "  (" + placeName + ")");
    }
}
