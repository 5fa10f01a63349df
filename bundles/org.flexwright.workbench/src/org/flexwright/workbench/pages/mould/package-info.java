/** The page of a mould. */
package org.flexwright.workbench.pages.mould;
