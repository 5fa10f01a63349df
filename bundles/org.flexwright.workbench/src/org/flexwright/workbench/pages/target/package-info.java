/** The page of a target sheet. */
package org.flexwright.workbench.pages.target;
