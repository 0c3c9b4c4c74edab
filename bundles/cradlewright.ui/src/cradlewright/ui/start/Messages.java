package cradlewright.ui.start;

import org.eclipse.osgi.util.NLS;

/** Words of the start page. */
final class Messages extends NLS {

    public static String Demo_folder;
    public static String Demo_notCopied;
    public static String Demo_notEmpty;
    public static String Demo_where;
    public static String Empty_demo;
    public static String Empty_demoElsewhere;
    public static String Empty_new;
    public static String Empty_open;
    public static String Empty_openDemo;
    public static String Empty_own;
    public static String Empty_title;
    public static String Start_about;
    public static String Start_answer;
    public static String Start_car;
    public static String Start_carrier;
    public static String Start_carriers;
    public static String Start_cars;
    public static String Start_choose;
    public static String Start_date;
    public static String Start_due;
    public static String Start_enterVisit;
    public static String Start_first;
    public static String Start_free;
    public static String Start_lateDate;
    public static String Start_manager;
    public static String Start_next;
    public static String Start_noVerdict;
    public static String Start_overdue;
    public static String Start_place;
    public static String Start_places;
    public static String Start_reason;
    public static String Start_stands;
    public static String Start_stops;
    public static String Start_tab;
    public static String Start_tabHint;
    public static String Start_taken;
    public static String Start_technician;
    public static String Start_title;
    public static String Start_today;
    public static String Start_usedBy;
    public static String Start_waits;

    static {
        NLS.initializeMessages("cradlewright.ui.start.messages", Messages.class);
    }

    private Messages() {
    }
}
