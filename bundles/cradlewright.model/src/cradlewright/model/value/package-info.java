/** Turns the values of the data types into the text of the files and back; called by the generated factories. */
package cradlewright.model.value;
