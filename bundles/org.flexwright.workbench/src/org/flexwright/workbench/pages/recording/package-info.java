/** Recordings of specimens: taken in, drawn over each other, marked, and kept as readings. */
package org.flexwright.workbench.pages.recording;
