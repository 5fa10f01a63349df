/** Calculations: pure functions from a record of inputs to a record of results. */
package org.flexwright.core.calc;
