/** The page of a spot map: a property over the places of a part. */
package org.flexwright.workbench.pages.spot;
