package cradlewright.cli;

import java.util.stream.Stream;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/**
 * Hands the arguments of the Equinox application to the command line and its exit code back. The platform takes words such as
 * {@code -data} out of the arguments wherever they stand, so the start scripts put a mark before each word and say so.
 */
public final class CommandLineApplication implements IApplication {

    private static final String MARK = "=";
    private static final String MARKED = "cradlewright.marked";

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        String[] words = Boolean.getBoolean(MARKED) ? unmarked(arguments) : arguments;
        return Integer.valueOf(CommandLineMain.run(words, System.out, System.err));
    }

    /** Returns the words as the user wrote them. */
    static String[] unmarked(String[] arguments) {
        return Stream.of(arguments).map(word -> word.startsWith(MARK) ? word.substring(MARK.length()) : word).toArray(String[]::new);
    }

    @Override
    public void stop() {
        // The command line runs to its end on the main thread: there is nothing to interrupt from outside.
    }
}
