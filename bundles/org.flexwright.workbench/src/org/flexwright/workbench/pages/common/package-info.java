/** What several pages of the editors share: blocks with a heading, edits whose refusal is told on the page, words for moments and pieces. */
package org.flexwright.workbench.pages.common;
