/** What all kinds of report share: units of the reader and the words around numbers. */
package cradlewright.report;
