/** What every diagram needs: the bridge from GEF's commands to the shop's one stack, painting of scenes, rulers, print and export. */
package cradlewright.diagrams.shared;
