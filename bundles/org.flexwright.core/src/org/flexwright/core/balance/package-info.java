/** What a balance says, read line by line, and the port behind which a balance is reached. */
package org.flexwright.core.balance;
