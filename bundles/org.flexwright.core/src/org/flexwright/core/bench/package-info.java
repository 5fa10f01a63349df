/** The bench view without a screen: one step at a time, the clock since first contact, marks, the gate before a step that cannot be taken back, and the taps. */
package org.flexwright.core.bench;
