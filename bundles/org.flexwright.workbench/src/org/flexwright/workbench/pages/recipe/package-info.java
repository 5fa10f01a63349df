/** The page of a recipe. */
package org.flexwright.workbench.pages.recipe;
