/** Statistics, fits, roots and differential equations as pure functions. */
package org.flexwright.numerics;
