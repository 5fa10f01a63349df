/** Files of instruments as they came in: how they are read, drawn, marked, and turned into readings. The raw file never changes. */
package org.flexwright.core.recording;
