/** Balances that write lines: over a serial port, or into a file or pipe. */
package org.flexwright.balance;
