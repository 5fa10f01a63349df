/** The open project of a window: opening, closing, findings, names of its things. */
package org.flexwright.workbench.project;
