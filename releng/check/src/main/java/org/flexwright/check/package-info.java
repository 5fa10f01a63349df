/** Checks of the repository itself: who may use whom, and whether every bundle is built and shipped. */
package org.flexwright.check;
