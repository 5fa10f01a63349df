/** Plugins that a person drops as jars into a folder. */
package org.flexwright.dropins;
