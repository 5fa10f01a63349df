/** What is left on the shelf. */
package org.flexwright.workbench.pages.stock;
