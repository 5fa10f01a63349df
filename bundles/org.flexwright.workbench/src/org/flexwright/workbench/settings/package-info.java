/** What a maker sets: size of text, theme. */
package org.flexwright.workbench.settings;
