/** The calculations of mixing, as forms and the command line offer them. */
package org.flexwright.mixing.calc;
