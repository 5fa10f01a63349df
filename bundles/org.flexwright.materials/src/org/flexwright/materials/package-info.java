/** Material data: families, sheets, lots. */
package org.flexwright.materials;
