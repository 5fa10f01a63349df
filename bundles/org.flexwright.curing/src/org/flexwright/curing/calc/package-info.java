/** The calculations of curing, as forms and the command line offer them. */
package org.flexwright.curing.calc;
