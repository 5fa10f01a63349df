/** Hardness and modulus, rubber blocks: pure functions in the units their Javadoc names. */
package org.flexwright.materials.formula;
