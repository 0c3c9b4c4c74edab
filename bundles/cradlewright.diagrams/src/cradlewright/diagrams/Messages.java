package cradlewright.diagrams;

import org.eclipse.osgi.util.NLS;

/** The words of the diagrams. */
public final class Messages extends NLS {

    public static String Action_align;
    public static String Action_delete;
    public static String Action_export;
    public static String Action_exportFailed;
    public static String Action_fit;
    public static String Action_mirror;
    public static String Action_snap;
    public static String Action_type;
    public static String Action_zoomIn;
    public static String Action_zoomOut;
    public static String Bar_as;
    public static String Bar_dragging;
    public static String Bar_empty;
    public static String Bar_heldBack;
    public static String Bar_noCorners;
    public static String Bar_noVisit;
    public static String Bar_situation;
    public static String Bar_under;
    public static String Bar_visit;
    public static String Bar_workingOut;
    public static String Bar_worst;
    public static String Edit_add;
    public static String Edit_align;
    public static String Edit_mirror;
    public static String Edit_move;
    public static String Edit_moveOnto;
    public static String Edit_place;
    public static String Edit_shims;
    public static String Edit_thickness;
    public static String Editor_notOfShop;
    public static String Editor_refused;
    public static String Name_left;
    public static String Name_right;
    public static String New_castor;
    public static String New_corner;
    public static String New_cutZone;
    public static String New_fixture;
    public static String New_foot;
    public static String New_liftPoint;
    public static String New_member;
    public static String New_prop;
    public static String New_secondHalf;
    public static String New_support;
    public static String New_workPoint;
    public static String Outline_name;
    public static String Palette_castor;
    public static String Palette_castor_hint;
    public static String Palette_cutZone;
    public static String Palette_cutZone_hint;
    public static String Palette_fixture;
    public static String Palette_fixture_hint;
    public static String Palette_foot;
    public static String Palette_foot_hint;
    public static String Palette_liftPoint;
    public static String Palette_liftPoint_hint;
    public static String Palette_marquee;
    public static String Palette_member;
    public static String Palette_member_hint;
    public static String Palette_prop;
    public static String Palette_prop_hint;
    public static String Palette_select;
    public static String Palette_support;
    public static String Palette_support_hint;
    public static String Palette_things;
    public static String Palette_tools;
    public static String Palette_workPoint;
    public static String Palette_workPoint_hint;
    public static String Place_found;
    public static String Place_mend;
    public static String Ruler_along;
    public static String Ruler_up;
    public static String Sheet_found;
    public static String Sheet_mend;
    public static String Shims_found;
    public static String Shims_mend;

    static {
        NLS.initializeMessages("cradlewright.diagrams.messages", Messages.class);
    }

    private Messages() {
    }
}
