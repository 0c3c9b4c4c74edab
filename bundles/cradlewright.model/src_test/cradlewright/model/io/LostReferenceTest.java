package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to do about a reference to an id that is nowhere names that id, who refers to it, and what there is of the right kind. */
class LostReferenceTest {

    private static final String CAR = """
            <vehicle:Car xmlns:vehicle="urn:cradlewright:vehicle" schema="3" id="k3w9z0car0001" name="%s">
              <pieces id="k3w9z0pie0001" name="shell" kind="shell">
                <parts id="qd7x2mtub0001" name="tub"/>
                <parts id="h5v8bndoor001" name="left door"/>
              </pieces>
              <stages id="k3w9z0sta0001" name="as it is" on="%s"/>
            </vehicle:Car>
            """;
    private static final String JOBS = """
            <job:JobBook xmlns:job="urn:cradlewright:job" schema="3">
              <jobs id="k3w9z0job0001" name="doors">
                <car href="shop:/#%s"/>
              </jobs>
            </job:JobBook>
            """;

    @TempDir
    Path directory;

    @BeforeEach
    void begin() throws IOException {
        Files.createDirectories(directory.resolve("cars"));
        Files.writeString(directory.resolve("shop.cwshop"),
                "<base:Shop xmlns:base=\"urn:cradlewright:base\" schema=\"3\" id=\"k3w9z0shop001\" name=\"Shed\"/>\n");
        Files.writeString(directory.resolve("cars/red.cwcar"), CAR.formatted("red coupe", "qd7x2mtub0001"));
    }

    private String mend() {
        List<ReadProblem> problems = ShopFolder.open(directory).problems();
        assertEquals(1, problems.size(), problems::toString);
        assertTrue(problems.get(0).line() > 0);
        return problems.get(0).mend();
    }

    @Test
    void namesWhatThereIsOfTheKind() throws IOException {
        Files.writeString(directory.resolve("jobs.cwjobs"), JOBS.formatted("0000000000000"));
        assertEquals("bring back the car with the id \"0000000000000\", let the job \"doors\" refer to another (there is car \"red coupe\" "
                + "(id k3w9z0car0001)), or delete the reference", mend());
    }

    @Test
    void namesTheOneThatASlipAwayIsMeant() throws IOException {
        Files.writeString(directory.resolve("jobs.cwjobs"), JOBS.formatted("k3w9z0cra0001"));
        assertEquals("let the job \"doors\" refer to car \"red coupe\" (id k3w9z0car0001) if that is meant, bring back the car with the id "
                + "\"k3w9z0cra0001\", or delete the reference", mend());
    }

    @Test
    void saysTheSameInsideAFile() throws IOException {
        Files.writeString(directory.resolve("cars/red.cwcar"), CAR.formatted("red coupe", "h5v8bndor001"));
        assertTrue(mend().startsWith("let the stage \"as it is\" refer to part \"left door\" (id h5v8bndoor001) if that is meant, "
                + "bring back the part with the id \"h5v8bndor001\", or delete the reference; "
                + "when the object lies in another file"), mend());
        Files.writeString(directory.resolve("cars/red.cwcar"), CAR.formatted("red coupe", "zzzzzzzzzzzzz"));
        assertTrue(mend().contains("refer to another (there are part \"tub\" (id qd7x2mtub0001), part \"left door\" (id h5v8bndoor001))"),
                mend());
    }

    @Test
    void nothingOfTheKindIsLeft() throws IOException {
        Files.delete(directory.resolve("cars/red.cwcar"));
        Files.writeString(directory.resolve("jobs.cwjobs"), JOBS.formatted("k3w9z0car0001"));
        assertEquals("bring back the car with the id \"k3w9z0car0001\", or delete the reference", mend());
    }
}
