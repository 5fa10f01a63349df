package org.flexwright.core.process;

/**
 * What a step that weighs a batch is asked when many parts are to be made.
 *
 * @param parts         parts to make, at least 1
 * @param recipeParts   parts the trial was made for, by count; null when nothing tells
 * @param cavities      parts the mould gives a cast; null when nothing limits them
 * @param workingTime   as stated, to be carried to each pot's amount; null when nobody said
 * @param roomC         degC of the room it will be poured in; null when nobody knows
 * @param before        min from first contact until the mould begins to be filled
 * @param fill          min that filling takes for the parts the trial plans; null when nothing tells
 */
public record PotRequest(int parts, Integer recipeParts, Integer cavities, WorkingTime workingTime, Double roomC, double before, Double fill) {
}
