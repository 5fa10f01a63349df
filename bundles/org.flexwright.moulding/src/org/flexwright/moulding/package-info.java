/** Moulds and casting in them. */
package org.flexwright.moulding;
