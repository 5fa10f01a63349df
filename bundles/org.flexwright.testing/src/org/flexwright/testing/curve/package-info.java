/** Recordings of force: strips that are stretched and parts that are pressed in. */
package org.flexwright.testing.curve;
