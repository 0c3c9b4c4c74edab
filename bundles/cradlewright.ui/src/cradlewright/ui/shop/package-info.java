/** The one shop that is open in the window: its objects, its latest records and answers, and its files as the workbench sees them. */
package cradlewright.ui.shop;
