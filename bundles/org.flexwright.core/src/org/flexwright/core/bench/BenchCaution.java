package org.flexwright.core.bench;

/**
 * A usual caution of a step. The product's data sheet, local codes and licensed practice win.
 *
 * @param id           id of the prompt
 * @param hazard       what can hurt
 * @param controls     what is usually done about it
 * @param source       what it rests on, in words
 * @param needsSheet   true when the data sheet must have been read
 * @param acknowledged true when it was acknowledged in the step's session for every lot in it
 */
public record BenchCaution(String id, String hazard, String controls, String source, boolean needsSheet, boolean acknowledged) {
}
