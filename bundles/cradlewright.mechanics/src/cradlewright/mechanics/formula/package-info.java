/** What every formula of the mechanics says about itself, so that reports and tests can name it. */
package cradlewright.mechanics.formula;
