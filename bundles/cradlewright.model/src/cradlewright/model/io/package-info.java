/** Reads the files of a shop through a narrow gate, says what is wrong with them by file and line, and writes them safely. */
package cradlewright.model.io;
