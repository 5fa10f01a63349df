/** Whether parts meet a target, as far as the readings can tell. */
package org.flexwright.core.verdict;
