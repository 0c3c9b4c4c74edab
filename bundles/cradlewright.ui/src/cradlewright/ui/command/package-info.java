/** The commands of the menus and the tool bar that belong to no single view. */
package cradlewright.ui.command;
