/** What people call the things of a project, and the thing they mean by what they type. */
package org.flexwright.core.naming;
