/** The command line. */
package org.flexwright.cli;
