package cradlewright.verification;

import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

/** Runs the tests of one package and ends at the first that fails. */
public final class RunTests {

    /** Exit code when a test failed. */
    static final int FAILED = 1;
    /** Exit code when there was no test to run. */
    static final int NO_TESTS = 2;

    private RunTests() {
    }

    /** Argument: the package. Ends with 0 when all its tests pass. */
    public static void main(String[] args) {
        FirstFailure listener = new FirstFailure();
        LauncherFactory.create().execute(LauncherDiscoveryRequestBuilder.request()
                .selectors(DiscoverySelectors.selectPackage(args[0])).build(), listener);
        Runtime.getRuntime().halt(listener.passed == 0 ? NO_TESTS : 0);
    }

    private static final class FirstFailure implements TestExecutionListener {

        private int passed;

        @Override
        public void executionFinished(TestIdentifier test, TestExecutionResult result) {
            if (result.getStatus() == TestExecutionResult.Status.FAILED) {
                System.out.println(test.getDisplayName());
                System.out.flush();
                // the rest would change nothing: one red test kills the mutant
                Runtime.getRuntime().halt(FAILED);
            }
            if (test.isTest()) {
                passed++;
            }
        }
    }
}
