/** Readings as people type them: values, bounds, yes and no. */
package org.flexwright.core.reading;
