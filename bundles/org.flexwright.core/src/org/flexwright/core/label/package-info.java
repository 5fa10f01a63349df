/** Short codes on parts, pots and lots that find them again in their project. */
package org.flexwright.core.label;
