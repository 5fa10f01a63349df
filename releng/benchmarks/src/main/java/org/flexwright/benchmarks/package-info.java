/** How long starts, calls, opening, saving and scrolling take, beside a plain yardstick each; started by {@code releng/bench}. */
package org.flexwright.benchmarks;
