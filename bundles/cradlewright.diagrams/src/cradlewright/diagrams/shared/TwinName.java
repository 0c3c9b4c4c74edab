package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the twin of a thing on the other side is called. */
public final class TwinName {

    private static final Pattern NUMBERED = Pattern.compile("(\\d+)([LR])");

    private TwinName() {
    }

    /** Returns the name of the twin: 2R for 2L, "front right" for "front left"; else the same name once more. */
    public static String of(String name) {
        if (name == null) {
            return null;
        }
        Matcher numbered = NUMBERED.matcher(name);
        if (numbered.matches()) {
            return numbered.group(1) + (numbered.group(2).equals("L") ? "R" : "L");
        }
        if (name.contains(Messages.Name_left)) {
            return name.replace(Messages.Name_left, Messages.Name_right);
        }
        return name.replace(Messages.Name_right, Messages.Name_left);
    }
}
