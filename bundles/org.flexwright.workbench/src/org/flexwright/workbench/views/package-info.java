/** The two views that every stage has: the project and its findings. */
package org.flexwright.workbench.views;
