/** Pages an editor shows for a thing of the project; plugins bring their own as {@link org.flexwright.workbench.pages.EditorPageProvider} services. */
package org.flexwright.workbench.pages;
