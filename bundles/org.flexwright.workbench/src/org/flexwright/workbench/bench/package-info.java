/** The bench view: one step a screen, read from two metres, worked by touch with one hand. */
package org.flexwright.workbench.bench;
