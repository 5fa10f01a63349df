/** The calculations of materials, as forms and the command line offer them. */
package org.flexwright.materials.calc;
