package cradlewright.ui;

import org.eclipse.osgi.util.NLS;

/** The words of the window. */
public final class Messages extends NLS {

    public static String Checking_again;
    public static String Checking_broken;
    public static String Checking_done;
    public static String Checking_filesNotInOrder;
    public static String Checking_first;
    public static String Checking_name;
    public static String Checking_stopped;
    public static String Delete_do;
    public static String Delete_question;
    public static String Delete_several;
    public static String Delete_title;
    public static String Delete_user;
    public static String Edit_delete;
    public static String Edit_move;
    public static String Edit_paste;
    public static String Edit_refused;
    public static String Edit_rename;
    public static String File_nothing;
    public static String File_reason;
    public static String File_table;
    public static String File_thing;
    public static String File_verdict;
    public static String History_begin;
    public static String History_here;
    public static String History_state;
    public static String History_table;
    public static String History_undone;
    public static String History_what;
    public static String History_where;
    public static String Menu_edit;
    public static String Menu_file;
    public static String Menu_help;
    public static String Menu_recent;
    public static String Menu_views;
    public static String Menu_window;
    public static String Navigator_copy;
    public static String Navigator_delete;
    public static String Navigator_filter;
    public static String Navigator_noShop;
    public static String Navigator_later;
    public static String Navigator_old;
    public static String Navigator_today;
    public static String Navigator_open;
    public static String Navigator_paste;
    public static String Navigator_rename;
    public static String Navigator_tree;
    public static String Navigator_unreadable;
    public static String Navigator_unsaved;
    public static String Open_noProject;
    public static String Open_noShop;
    public static String Open_notOfShop;
    public static String Open_notOnDisk;
    public static String Open_title;
    public static String Open_which;
    public static String Paste_name;
    public static String Problem_file;
    public static String Problem_finding;
    public static String Problem_job;
    public static String Problem_line;
    public static String Problem_location;
    public static String Question_name;
    public static String Recent_none;
    public static String Redo;
    public static String Redo_named;
    public static String Revert_question;
    public static String Revert_title;
    public static String Save_diskRefuses;
    public static String Shelf_cars;
    public static String Shelf_dollies;
    public static String Shelf_floor;
    public static String Shelf_gear;
    public static String Shelf_jobs;
    public static String Shelf_shop;
    public static String Shelf_stock;
    public static String Splash_version;
    public static String Start_noFolder;
    public static String Start_second;
    public static String Start_title;
    public static String Start_titleOf;
    public static String Trouble_lastGood;
    public static String Trouble_noLastGood;
    public static String Trouble_problem;
    public static String Trouble_putBack;
    public static String Trouble_then;
    public static String Trouble_title;
    public static String Undo;
    public static String Undo_named;

    static {
        NLS.initializeMessages("cradlewright.ui.messages", Messages.class);
    }

    private Messages() {
    }
}
