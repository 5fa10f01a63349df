/** The pages of a material and its lots. */
package org.flexwright.workbench.pages.material;
