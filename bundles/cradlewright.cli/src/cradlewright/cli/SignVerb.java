package cradlewright.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Signs a hold point. */
@Command(name = "sign", mixinStandardHelpOptions = true,
        description = {"Signs a hold point: work stops there until somebody has looked at the car and put a name to it.",
            "The signature is added to the file of jobs with the time, what the checks say now, and a fingerprint of the parts, "
                + "supports, shims, dolly and readings. When one of these changes later, the signature lapses and somebody has to look "
                + "and sign again.",
            "For example: sign my-shop \"before the sill is cut\" --by Hanna"},
        footer = {"", "Nothing else in the file changes, and no signature is ever taken away.",
            "Exit codes: 0 signed, 3 not signed."})
final class SignVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SHOP", description = "folder of the shop")
    private Path shop;

    @Parameters(index = "1", paramLabel = "HOLDPOINT", description = "id, name or piece of the name of the hold point")
    private String holdPoint;

    @Option(names = "--by", required = true, paramLabel = "NAME",
            description = "who has looked and signs: one of the people of the shop, as the file of jobs names them")
    private String by;

    @Option(names = "--visitor", paramLabel = "WHO",
            description = "who this is and why, for a name that is none of the shop's, such as an inspector; written down with the "
                    + "signature")
    private String visitor;

    @Option(names = "--visit", paramLabel = "NAME",
            description = "which visit of the car is signed for, by its id or a piece of its name; without it the visit in which the work "
                    + "behind the hold point is planned")
    private String visit;

    @Option(names = "--although", paramLabel = "REASON",
            description = "why it is signed although a check says STOP or CAN'T SAY; written down with the signature")
    private String although;

    @Override
    public Integer call() {
        Signing signing = new Signing(shop, Clock.systemDefaultZone(), spec.commandLine().getErr());
        Signing.Wanted wanted = signing.find(holdPoint, visit);
        spec.commandLine().getOut().print(signing.sign(wanted, new Signing.Signature(by, visitor, although, version())));
        return ExitCode.HELD;
    }

    private String version() {
        return String.join(" ", spec.root().version());
    }
}
