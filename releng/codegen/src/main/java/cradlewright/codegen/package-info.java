/** Generates the Java code of the model from its ecore files, outside of any workbench. */
package cradlewright.codegen;
