package cradlewright.ui.properties;

import org.eclipse.osgi.util.NLS;

/** Words of the properties. */
final class Messages extends NLS {

    public static String Change_many;
    public static String Change_one;
    public static String Choice_no;
    public static String Choice_notFound;
    public static String Choice_of;
    public static String Choice_yes;
    public static String Count_how;
    public static String Count_what;
    public static String Direction_how;
    public static String Direction_what;
    public static String Field_differ;
    public static String Field_tick;
    public static String Field_tickTitle;
    public static String Field_unknown;
    public static String Give_how;
    public static String Give_none;
    public static String Give_usual;
    public static String Give_what;
    public static String Give_writeAbove;
    public static String Header_file;
    public static String Header_many;
    public static String Header_manyKind;
    public static String Header_noShop;
    public static String Header_none;
    public static String Name_giveOrTake;
    public static String Name_source;
    public static String Page_closedFile;
    public static String Page_more;
    public static String Page_notEdited;
    public static String Page_reads;
    public static String Page_refused;
    public static String Page_several;
    public static String Page_stillKnown;
    public static String Place_cleared;
    public static String Place_how;
    public static String Place_noneYet;
    public static String Place_what;
    public static String Place_words;
    public static String Section_DEPENDS;
    public static String Section_HEAVY;
    public static String Section_KNOWN;
    public static String Section_SIZE;
    public static String Section_WHAT;
    public static String Section_WHERE;
    public static String Text_long;
    public static String Text_longHow;

    static {
        NLS.initializeMessages("cradlewright.ui.properties.messages", Messages.class);
    }

    private Messages() {
    }
}
