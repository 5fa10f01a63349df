/** The pages of a session at the bench: fast entry of readings, room and gauges. */
package org.flexwright.workbench.pages.session;
