/** Why a part may have come out softer than another one. */
package org.flexwright.core.cause;
