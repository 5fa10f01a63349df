/** Elastic laws of rubber: stress, stability, fits. Pure functions, incompressible, stresses in MPa. */
package org.flexwright.core.rubber;
