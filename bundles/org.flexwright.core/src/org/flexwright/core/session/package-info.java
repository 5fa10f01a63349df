/** Opening, changing and saving a project. */
package org.flexwright.core.session;
