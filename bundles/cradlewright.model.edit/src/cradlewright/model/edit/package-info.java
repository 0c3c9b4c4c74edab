/** The one way to change a shop: every edit is recorded, can be taken back, and either happens wholly or not at all. */
package cradlewright.model.edit;
