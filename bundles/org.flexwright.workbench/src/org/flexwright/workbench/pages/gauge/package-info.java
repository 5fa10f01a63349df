/** Pages of instruments, of control pieces and of gauge studies. */
package org.flexwright.workbench.pages.gauge;
