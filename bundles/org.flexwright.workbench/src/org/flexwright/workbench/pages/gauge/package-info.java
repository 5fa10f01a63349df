/** Pages of instruments and of control pieces. */
package org.flexwright.workbench.pages.gauge;
