/** The page of a reference part. */
package org.flexwright.workbench.pages.reference;
