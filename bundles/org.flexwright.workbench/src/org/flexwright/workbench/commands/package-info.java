/** What menus and keys do. */
package org.flexwright.workbench.commands;
