/** The cursors that the palette of the diagram library asks for under a name which the platform has given up. */
package org.eclipse.ui.internal;
