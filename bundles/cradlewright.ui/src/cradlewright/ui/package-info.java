/** The window: how it starts, its menus and tool bar, and the words on it. */
package cradlewright.ui;
