/** The formulas of mixing: pure functions in the units their Javadoc names. */
package org.flexwright.mixing.formula;
