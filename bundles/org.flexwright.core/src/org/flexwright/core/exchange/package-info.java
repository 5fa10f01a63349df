/** The whole project as tables, as JSON and as a backup archive, and back again; everything is found in the model, so details of plugins come along. */
package org.flexwright.core.exchange;
