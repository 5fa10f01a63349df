/** The same pieces put in order by several people: places and how far they agree, never a figure with decimals made from feelings. */
package org.flexwright.core.ranking;
