/** The formulas of curing: rates, schedules, gelling, heat. Pure functions in the units their Javadoc names. */
package org.flexwright.curing.formula;
