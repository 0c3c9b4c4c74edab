package cradlewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A signature is added and nothing else changes; whatever is wrong is refused and leaves every file as it was. */
class SignVerbTest {

    private static final String HEAD = """
            <?xml version="1.0" encoding="UTF-8"?>
            <job:JobBook
                xmlns:job="urn:cradlewright:job"
                schema="3">
              <jobs
                  id="job0000000001"
                  name="red coupe: sill">
                <car
                    href="shop:/#car0000000001"/>
                <operations
                    id="cut0000000001"
                    name="cut the sill out"
                    kind="cut"/>
                <operations
                    id="done000000001"
                    name="brace it"
                    done="true"/>
              </jobs>
              <people
                  id="hanna00000001"
                  name="Hanna"/>
              <holdPoints
                  id="hold000000001"
                  name="before the sill is cut"
                  operation="cut0000000001"
                  text="Brace fitted."
            """.stripTrailing();
    private static final String TAIL = """

              <holdPoints
                  id="hold000000002"
                  name="before it is braced"
                  operation="done000000001"/>
            </job:JobBook>
            """;
    private static final String UNSIGNED = HEAD + "/>" + TAIL;

    @TempDir
    Path folder;

    private Path jobs;

    @BeforeEach
    void write() throws IOException {
        shop("2000 kg plate");
        jobs = folder.resolve("jobs.cwjobs");
        Files.writeString(jobs, UNSIGNED);
    }

    private void shop(String rating) throws IOException {
        shop(rating, "200 kg u 0 weighed");
    }

    private void shop(String rating, String mass) throws IOException {
        new SmallShop(folder).part("tub", mass, 1, 0).stands(rating).dates("").write();
    }

    private Run sign(Object... more) {
        return Run.of(Stream.concat(Stream.of("sign", folder), Stream.of(more)).toArray());
    }

    private Run job(String check) {
        return Run.of("check", folder, "--check", check, "--all");
    }

    @Test
    void addsASignatureAndNothingElse() throws IOException {
        Run run = sign("sill", "--by", "Hanna");
        assertEquals(0, run.code(), run.err());
        assertEquals("", run.err());
        assertEquals(List.of(), run.untidy());
        assertTrue(run.flat().contains("by Hanna at 20"), run.out());
        String text = Files.readString(jobs);
        String start = HEAD + ">\n    <signOffs";
        String end = "</signOffs>\n  </holdPoints>" + TAIL;
        assertTrue(text.startsWith(start), text);
        assertTrue(text.endsWith(end), text);
        String added = text.substring(start.length(), text.length() - end.length());
        assertTrue(added.matches("(?s)\\s+id=\"[0-9a-z]{13}\"\\s+by=\"Hanna\"\\s+at=\"20\\d\\d-\\d\\d-\\d\\dT\\d\\d:\\d\\d\"\\s+"
                + "digest=\"2:[0-9a-f]{64}\"\\s+programVersion=\"Cradlewright [^\"]+\"\\s+findingsText=\"[^\"]+\">\\s+"
                + "<visit\\s+href=\"shop:/#visit00000001\"/>\\s+"), added);
        assertEquals(0, Run.of("validate", folder).code());
    }

    @Test
    void aSecondSignatureIsPutBehindTheFirst() throws IOException {
        sign("sill", "--by", "Hanna");
        String first = Files.readString(jobs);
        assertEquals(0, sign("hold000000001", "--by", "Hanna").code());
        String second = Files.readString(jobs);
        String end = "\n  </holdPoints>" + TAIL;
        String before = first.substring(0, first.length() - end.length());
        assertTrue(second.startsWith(before) && second.endsWith(end) && second.length() > first.length(), second);
    }

    @Test
    void holdsUntilAPartWeighsOtherwise() throws IOException {
        sign("sill", "--by", "Hanna");
        assertEquals(0, job("job.sign-off-lapsed").code());
        Path car = folder.resolve("cars/red.cwcar");
        Files.writeString(car, Files.readString(car).replace("200 kg u 0 weighed", "201 kg u 0 weighed"));
        Run run = job("job.sign-off-lapsed");
        assertEquals(1, run.code(), run.out());
        assertTrue(run.flat().contains("Lapsed: what it was signed for by Hanna on"), run.out());
        sign("sill", "--by", "Hanna");
        assertEquals(0, job("job.sign-off-lapsed").code());
    }

    @Test
    void refusesAnUnknownHoldPointWithThoseThatThereAre() throws IOException {
        Run run = refused("roof", "--by", "Hanna");
        assertTrue(run.err().contains("no hold point is called roof: there are before the sill is cut (Red coupe, before cut the sill out, "
                + "id hold000000001); before it is braced (Red coupe, before brace it, id hold000000002)"), run.err());
        assertTrue(refused("sihll", "--by", "Hanna").err().contains("did you mean \"before the sill is cut\"? (there are "));
        assertTrue(refused("before", "--by", "Hanna").err().contains("several hold points fit before"));
    }

    @Test
    void refusesWithoutANameWithoutAVisitAndWhenTheWorkIsDone() throws IOException {
        assertTrue(refused("sill", "--by", " ").err().contains("--by is empty"));
        assertTrue(refused("sill").err().contains("--by"));
        assertTrue(refused("braced", "--by", "Hanna").err().contains("brace it of Red coupe is done"));
        assertTrue(refused("sill", "--by", "Hanna", "--visit", "in the booth").err().contains("there are on stands (id visit00000001)"));
        Files.writeString(jobs, UNSIGNED.replaceAll("(?s)\n  <holdPoints.*/>", ""));
        assertTrue(refused("sill", "--by", "Hanna").err().contains("no hold points yet"));
    }

    @Test
    void signsAStopOnlyWithAReason() throws IOException {
        shop("20 kg plate");
        assertTrue(refused("sill", "--by", "Hanna").err().contains("not signed, because a check says STOP"));
        Run run = sign("sill", "--by", "Hanna", "--although", "two more stands are under the sill");
        assertEquals(0, run.code(), run.err());
        assertTrue(Files.readString(jobs).contains("Signed although it stops, because: two more stands are under the sill."));
    }

    @Test
    void signsWhatNoCheckCanTellOnlyWithAReason() throws IOException {
        shop("2000 kg plate", "");
        assertTrue(refused("sill", "--by", "Hanna").err().contains("not signed, because a check says CAN'T SAY"));
        assertTrue(refused("sill", "--by", "Hanna", "--although", " ").err().contains("CAN'T SAY"));
        Run run = sign("sill", "--by", "Hanna", "--although", "it was on the scales yesterday");
        assertEquals(0, run.code(), run.err());
        String text = Files.readString(jobs);
        assertTrue(text.contains("Signed although not all can be said, because: it was on the scales yesterday. What cannot be said: "),
                text);
    }

    @Test
    void asksTheGearUnderTheCarToo() throws IOException {
        Path gear = folder.resolve("gear.cwgear");
        Files.writeString(gear, Files.readString(gear).replaceFirst("examinationDue=\"[0-9-]+\"", "examinationDue=\"2026-02-10\""));
        Run run = refused("sill", "--by", "Hanna");
        assertTrue(run.err().contains("not signed, because a check says STOP") && run.err().contains("[gear.examination]"), run.err());
    }

    @Test
    void signsForTheSetupOfTheWorkAndNotForWhatStandsThereToday() throws IOException {
        Path car = folder.resolve("cars/red.cwcar");
        Files.writeString(car, Files.readString(car).replace("  <visits", """
                  <setups id="setup00000002" name="outside" kind="on stands" carried="shell00000001" shift="0 0 0 mm"/>
                  <visits"""));
        Files.writeString(jobs, UNSIGNED.replace("kind=\"cut\"/>", """
                kind="cut">
                      <setup href="shop:/#setup00000002"/>
                    </operations>"""));
        assertTrue(refused("sill", "--by", "Hanna").err().contains("no visit is planned in the setup in which cut the sill out is done"));
        Run run = sign("sill", "--by", "Hanna", "--visit", "on stands");
        assertEquals(0, run.code(), run.err());
        Files.writeString(car, Files.readString(car).replace("</vehicle:Car>", """
                  <visits id="visit00000002" name="in the yard" stage="stage00000001" setup="setup00000002" from="2126-01-01"/>
                </vehicle:Car>"""));
        assertTrue(refused("sill", "--by", "Hanna").err().contains("not signed, because a check says"));
        run = sign("sill", "--by", "Hanna", "--although", "it stands on the yard only for a day");
        assertTrue(run.flat().contains("for in the yard"), run.out());
        run = sign("sill", "--by", "Hanna", "--visit", "on stands");
        assertTrue(run.err().contains("note: cut the sill out is planned for another visit (in the yard)"), run.err());
    }

    @Test
    void tellsWhenTheFileWasLaidOutByHand() throws IOException {
        Files.writeString(jobs, UNSIGNED.replace("\n      name=\"red coupe: sill\"", " name=\"red coupe: sill\""));
        Run run = sign("sill", "--by", "Hanna");
        assertEquals(0, run.code());
        assertTrue(run.err().contains("note: jobs.cwjobs was laid out by hand"), run.err());
    }

    @Test
    void refusesANameThatIsNoneOfTheShopUnlessItIsAVisitors() throws IOException {
        assertTrue(refused("sill", "--by", "Hana").err().contains("not signed, because Hana is not among the people of the shop "
                + "(Hanna), did you mean \"Hanna\"?; write the name as it stands there, add a <people> with this name to the file of jobs, "
                + "or say with --visitor who this is"));
        assertTrue(refused("sill", "--by", "An inspector", "--visitor", " ").err().contains("is not among the people of the shop"));
        Run run = sign("sill", "--by", "An inspector", "--visitor", "sent by the insurer");
        assertEquals(0, run.code(), run.err());
        assertTrue(Files.readString(jobs).contains("Signed by a visitor: sent by the insurer"));
    }

    @Test
    void refusesWhenTheFileChangedUnderneath() throws IOException {
        Signing signing = new Signing(folder, Clock.systemUTC(), new PrintWriter(new StringWriter()));
        String changed = UNSIGNED.replace("brace it", "brace it well");
        Files.writeString(jobs, changed);
        Signing.Wanted wanted = signing.find("sill", null);
        BadInputException refusal = assertThrows(BadInputException.class,
                () -> signing.sign(wanted, new Signing.Signature("Hanna", null, null, "0")));
        assertTrue(refusal.getMessage().contains("not signed: jobs.cwjobs was changed by somebody else"), refusal.getMessage());
        assertEquals(changed, Files.readString(jobs));
    }

    @Test
    void tellsTheTimeInTheZoneOfTheShop() throws IOException {
        Path shop = folder.resolve("shop.cwshop");
        Files.writeString(shop, Files.readString(shop).replace("name=\"Shed\"", "name=\"Shed\" zone=\"Asia/Tokyo\""));
        Clock clock = Clock.fixed(Instant.parse("2026-03-31T20:15:30Z"), ZoneId.of("Europe/Paris"));
        Signing signing = new Signing(folder, clock, new PrintWriter(new StringWriter()));
        assertTrue(signing.sign(signing.find("sill", null), new Signing.Signature("Hanna", null, null, "0")).contains("2026-04-01 05:15"));
    }

    private Run refused(Object... arguments) throws IOException {
        Map<String, String> before = Run.files(folder);
        Run run = sign(arguments);
        assertEquals(ExitCode.BAD_INPUT, run.code(), run.out());
        assertEquals("", run.out());
        assertEquals(before, Run.files(folder));
        return run;
    }
}
