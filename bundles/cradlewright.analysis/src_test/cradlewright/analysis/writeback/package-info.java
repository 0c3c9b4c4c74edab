/** Tests that what is written back into the objects reads as the records that were wanted. */
package cradlewright.analysis.writeback;
