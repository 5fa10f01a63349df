/** The pages of a trial: idea, steps, parts and readings, outcome; planning a new one. */
package org.flexwright.workbench.pages.trial;
