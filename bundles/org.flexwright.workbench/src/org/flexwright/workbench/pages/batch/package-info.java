/** Making so many of a recipe: the page of a batch, and what plans one. */
package org.flexwright.workbench.pages.batch;
