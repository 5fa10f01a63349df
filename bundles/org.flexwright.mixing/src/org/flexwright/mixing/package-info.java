/** Batches: ratios, weighings, mixing and degassing. */
package org.flexwright.mixing;
