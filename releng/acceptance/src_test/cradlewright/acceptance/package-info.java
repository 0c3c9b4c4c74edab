/** Tests of the whole: layering of the bundles, content of the product, the command line as a process. */
package cradlewright.acceptance;
