package org.flexwright.core.search;

/**
 * What a text or number of a thing is called.
 *
 * @param words    words beside it: {@code Conclusion}, {@code Hardness, Shore A}
 * @param property id of the property when it is read on a piece, else empty
 * @param said     true for what a person wrote in sentences: notes, ideas, conclusions, reasons
 */
record Label(String words, String property, boolean said) {
}
