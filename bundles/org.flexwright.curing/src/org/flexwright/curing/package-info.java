/** Cure against time and temperature. */
package org.flexwright.curing;
