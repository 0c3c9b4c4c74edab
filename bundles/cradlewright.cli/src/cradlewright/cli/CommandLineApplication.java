package cradlewright.cli;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** Hands the arguments of the Equinox application to the command line and its exit code back. */
public final class CommandLineApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        return Integer.valueOf(CommandLineMain.run(arguments, System.out, System.err));
    }

    @Override
    public void stop() {
        // The command line runs to its end on the main thread: there is nothing to interrupt from outside.
    }
}
