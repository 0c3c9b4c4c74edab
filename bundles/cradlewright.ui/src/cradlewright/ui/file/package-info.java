/** What a file of the shop shows when no editor of its kind is there or when it could not be read. */
package cradlewright.ui.file;
