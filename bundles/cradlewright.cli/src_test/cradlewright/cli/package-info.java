/** The command line run with captured streams on small shops and on the demo shop. */
package cradlewright.cli;
