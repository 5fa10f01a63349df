/** What a mixture consists of: figures of its materials with their source, grams that follow from parts, index and filler of what is planned or weighed. */
package org.flexwright.mixing.formulation;
