/** A printable document as blocks, without pages, fonts or tags; and its form as one HTML file. */
package org.flexwright.report.doc;
