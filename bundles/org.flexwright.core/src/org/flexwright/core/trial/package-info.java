/** Trials, recipes, weighings and attachments as functions of an edit. */
package org.flexwright.core.trial;
