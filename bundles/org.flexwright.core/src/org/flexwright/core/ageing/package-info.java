/** Readings that are taken again as pieces grow older: which are due, and what age did to each piece. */
package org.flexwright.core.ageing;
