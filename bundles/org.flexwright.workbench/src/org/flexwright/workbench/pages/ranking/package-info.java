/** The page of a ranking by several people. */
package org.flexwright.workbench.pages.ranking;
