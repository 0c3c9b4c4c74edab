/** Tests of finding what somebody asks about. */
package cradlewright.ui.ask;
