/** Printing what is handed over: packs and labels. */
package org.flexwright.workbench.handover;
