package cradlewright.ui.ask;

import org.eclipse.osgi.util.NLS;

/** Words of the questions. */
final class Messages extends NLS {

    public static String Ask_answer;
    public static String Ask_brokeOff;
    public static String Ask_copy;
    public static String Ask_lift;
    public static String Ask_noShop;
    public static String Ask_part;
    public static String Ask_quick;
    public static String Ask_stop;
    public static String Ask_stopped;
    public static String Ask_support;
    public static String Ask_working;
    public static String Lift_car;
    public static String Lift_invitation;
    public static String Lift_label;
    public static String Lift_noGear;
    public static String Lift_none;
    public static String Lift_way;
    public static String Part_gone;
    public static String Part_hint;
    public static String Part_invitation;
    public static String Part_label;
    public static String Part_more;
    public static String Part_none;
    public static String Part_off;
    public static String Part_question;
    public static String Part_several;
    public static String Support_hint;
    public static String Support_invitation;

    static {
        NLS.initializeMessages("cradlewright.ui.ask.messages", Messages.class);
    }

    private Messages() {
    }
}
