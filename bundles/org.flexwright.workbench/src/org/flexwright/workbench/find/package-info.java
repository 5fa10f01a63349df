/** Search in the window: one field, what was understood, and results by kind as they are typed. */
package org.flexwright.workbench.find;
