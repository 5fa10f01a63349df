/** Findings: what is worth a note, a caution or a stop. */
package org.flexwright.core.find;
