/** Planning a trial. */
package org.flexwright.workbench.trial;
