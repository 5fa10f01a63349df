package org.flexwright.core.bench;

import org.flexwright.model.Trial;

/**
 * A cup at the bench: a trial being made.
 *
 * @param trial   the trial
 * @param cup     what is written on the cup, or the trial's code
 * @param clock   time since its contact
 * @param doing   what is to do in it now, a few words
 * @param nextDue its most urgent mark; null when it has none
 */
public record BenchCup(Trial trial, String cup, BenchClock clock, String doing, BenchMark nextDue) {
}
