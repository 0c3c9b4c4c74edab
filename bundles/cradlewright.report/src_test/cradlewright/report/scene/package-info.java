/** Tests of drawings. */
package cradlewright.report.scene;
