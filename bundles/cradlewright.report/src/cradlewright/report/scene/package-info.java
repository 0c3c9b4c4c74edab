/** Drawings as lines, polygons and texts in mm with roles instead of colours, so that every painter shows the same. */
package cradlewright.report.scene;
