/** What the program says of itself. */
package org.flexwright.workbench.about;
