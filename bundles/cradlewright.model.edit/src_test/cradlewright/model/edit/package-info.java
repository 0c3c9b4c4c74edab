/** Tests of the changes of a shop. */
package cradlewright.model.edit;
