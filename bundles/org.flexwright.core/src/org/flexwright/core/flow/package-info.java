/** Slow flow of thick liquids through straight channels, as several processes need it. SI units throughout. */
package org.flexwright.core.flow;
