/** Gauge studies: how much of the spread of readings is the gauge, how much the hands that hold it, and how much the pieces. */
package org.flexwright.core.gauge;
