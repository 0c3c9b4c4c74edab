package cradlewright.model.io;

import java.util.List;

/** The number of the file form, and how older files are brought up to it. */
public final class Schema {

    /** The number that this program writes. */
    public static final int CURRENT = 3;

    static final String ATTRIBUTE = "schema";

    /** Migration {@code i} reads schema {@code i + 1}. */
    private static final List<Migration> MIGRATIONS = List.of(new WeightBecomesMass(), new MoreCanBeSaid());

    private Schema() {
    }

    /** Returns all migrations, oldest first. */
    public static List<Migration> migrations() {
        return MIGRATIONS;
    }

    /**
     * Returns the schema number of a file.
     *
     * @throws Refused when there is none, or not a whole number from 1
     */
    static int of(XmlElement root) throws Refused {
        String text = root.attribute(ATTRIBUTE).map(XmlElement.Attribute::value).orElseThrow(() -> new Refused(root.line(),
                "the file does not say which form it has", "write schema=\"" + CURRENT + "\" into the first element"));
        if (!text.matches("[1-9][0-9]{0,5}")) {
            throw new Refused(root.lineOf(ATTRIBUTE), "the schema number " + Words.quote(text) + " is not a whole number from 1",
                    "write schema=\"" + CURRENT + "\" if the file was written by this version");
        }
        return Integer.parseInt(text);
    }

    /** Rewrites an older file step by step to the current form. */
    static List<Migration> upgrade(XmlElement root, int from) {
        List<Migration> due = MIGRATIONS.subList(from - 1, CURRENT - 1);
        for (Migration migration : due) {
            migration.rewrite(root);
            root.set(ATTRIBUTE, Integer.toString(migration.from() + 1));
        }
        return due;
    }
}
