/** The workbench window. */
package org.flexwright.workbench;
