/** Step kinds and process kinds. */
package org.flexwright.core.process;
