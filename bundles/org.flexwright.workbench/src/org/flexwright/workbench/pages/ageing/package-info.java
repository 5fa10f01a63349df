/** The page of an ageing plan. */
package org.flexwright.workbench.pages.ageing;
