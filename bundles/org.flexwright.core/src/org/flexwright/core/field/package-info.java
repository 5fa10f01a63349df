/** Fields: what a form, a table or the command line needs to read and print a value. */
package org.flexwright.core.field;
