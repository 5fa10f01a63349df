/** Search over everything in a project: a maker's own short language, an index that keeps up with every edit, and hits that say why. */
package org.flexwright.core.search;
