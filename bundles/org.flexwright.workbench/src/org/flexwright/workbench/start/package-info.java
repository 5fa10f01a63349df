/** The start page and the making of a new project. */
package org.flexwright.workbench.start;
