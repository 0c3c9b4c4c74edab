/** The daily questions, answered in place: may this part come off, what is there to know about a support, will the gear take the car. */
package cradlewright.ui.ask;
