package cradlewright.cli;

import cradlewright.model.io.NearNames;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what somebody who mistyped a name may have meant; the same words for every verb. */
final class Near {

    private static final int MOST = 5;

    private Near() {
    }

    /** Returns {@code , did you mean "red coupe" or "red estate"?}, or nothing when no name is near. */
    static String hint(String typed, Collection<String> names) {
        List<String> near = NearNames.of(typed, names, MOST);
        return near.isEmpty() ? "" : ", did you mean " + near.stream().map(name -> "\"" + name + "\"").collect(Collectors.joining(" or "))
                + "?";
    }

    /** Returns the hint and behind it where all names are found. */
    static String hint(String typed, Collection<String> names, String all) {
        String hint = hint(typed, names);
        return hint.isEmpty() ? ": " + all : hint + " (" + all + ")";
    }

    /** Returns what is wrong with a word that is no verb, no option and nothing that the verb takes. */
    static String unmatched(UnmatchedArgumentException e) {
        String typed = e.getUnmatched().get(0);
        Set<String> verbs = e.getCommandLine().getSubcommands().keySet();
        if (typed.startsWith("-")) {
            return "there is no option " + typed + hint(typed, e.getCommandLine().getCommandSpec().optionsMap().keySet());
        }
        return verbs.isEmpty() ? "one word too many: " + typed + "; put words that belong together into quotation marks"
                : "there is no verb " + typed + hint(typed, verbs, String.join(", ", verbs));
    }
}
