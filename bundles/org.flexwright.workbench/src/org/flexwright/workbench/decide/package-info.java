/** Trials side by side against the targets, and as a plot. */
package org.flexwright.workbench.decide;
