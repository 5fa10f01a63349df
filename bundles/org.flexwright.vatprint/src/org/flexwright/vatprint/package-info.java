/** Printing in a vat of resin. */
package org.flexwright.vatprint;
