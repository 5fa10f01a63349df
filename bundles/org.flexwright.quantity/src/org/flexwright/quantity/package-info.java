/** Kinds of quantity, units, and reading and printing of values with a unit. */
package org.flexwright.quantity;
