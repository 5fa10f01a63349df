/** Hazards and the usual cautions. */
package org.flexwright.safety;
