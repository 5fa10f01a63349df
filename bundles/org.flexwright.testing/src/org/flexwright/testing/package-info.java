/** Test pieces, readings and properties. */
package org.flexwright.testing;
