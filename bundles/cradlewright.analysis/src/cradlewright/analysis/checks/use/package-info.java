/** How far each part of a dolly is used in one situation or over all, by the same checks that give the answers. */
package cradlewright.analysis.checks.use;
