/** Printing with soft filament. */
package org.flexwright.filament;
