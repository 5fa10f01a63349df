/** A document as one PDF file, with its font inside. */
package org.flexwright.report.pdf;
