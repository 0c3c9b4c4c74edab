package cradlewright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A shop of one car on disk: a shell on four stands at x 0 and 2 m, y 0.5 m to either side, with the parts that a test adds. Every value
 * is stated with its give or take, so that answers follow from statics alone.
 */
final class SmallShop {

    /** Day on which the visit is on and every stand is within its examination. */
    static final String DAY = "2026-03-31";

    private final Path folder;
    private final List<String> parts = new ArrayList<>();
    private final List<String> on = new ArrayList<>();
    private String rating = "2000 kg plate";
    private String dates = "from=\"2026-03-01\" to=\"2026-04-30\"";
    private String carried = "shell00000001";

    SmallShop(Path folder) {
        this.folder = folder;
    }

    /** Adds a part that is on; its id follows from its name, see {@link #id}. */
    SmallShop part(String name, String mass, double x, double y) {
        String id = id(name);
        parts.add(String.format(Locale.ROOT, "    <parts id=\"%s\" name=\"%s\"%s position=\"%.0f %.0f 800 mm u 0 measured\"/>%n", id, name,
                mass.isEmpty() ? "" : " mass=\"" + mass + "\"", 1000 * x, 1000 * y));
        on.add(id);
        return this;
    }

    /** Adds a part that is in the box already. */
    SmallShop partOff(String name) {
        part(name, "5 kg weighed", 1, 0);
        on.remove(on.size() - 1);
        return this;
    }

    /** Rates every stand. */
    SmallShop stands(String ratedLoad) {
        rating = ratedLoad;
        return this;
    }

    /** Sets the dates of the visit as attributes. */
    SmallShop dates(String attributes) {
        dates = attributes;
        return this;
    }

    /** Says that the setup carries nothing. */
    SmallShop carriesNothing() {
        carried = "";
        return this;
    }

    /** Returns the id of the part of that name. */
    static String id(String name) {
        String letters = name.replaceAll("[^a-z]", "");
        return "part00000000" + letters.substring(0, Math.min(20, letters.length()));
    }

    /** Writes the files and returns the folder. */
    Path write() throws IOException {
        Files.createDirectories(folder.resolve("cars"));
        file("shop.cwshop", "<base:Shop xmlns:base=\"urn:cradlewright:base\" schema=\"3\" id=\"shop000000001\" name=\"Shed\"/>\n");
        StringBuilder stands = new StringBuilder();
        StringBuilder contacts = new StringBuilder();
        StringBuilder points = new StringBuilder();
        int number = 0;
        for (String place : List.of("front left", "front right", "rear left", "rear right")) {
            number++;
            int x = number > 2 ? 2000 : 0;
            int y = number % 2 == 1 ? -500 : 500;
            stands.append(String.format(
                    "  <items xsi:type=\"fixture:Stand\" id=\"stand0000000%d\" name=\"Stand %d\" tag=\"T-%d\" "
                    + "lastExamined=\"2026-01-10\" examinationDue=\"2126-01-10\" "
                    + "ratedLoad=\"%s\" basis=\"rated load\" perPair=\"false\"/>%n",
                    number, number, number, rating));
            points.append(String.format("  <liftPoints id=\"point0000000%d\" name=\"%s\" position=\"%d %d 400 mm u 1 measured\" "
                    + "condition=\"sound\" capacity=\"20000 N maker's sheet\" basis=\"rated load\"/>%n", number, place, x, y));
            contacts.append(String.format("    <contacts id=\"touch0000000%d\" name=\"%s\" liftPoint=\"point0000000%d\" "
                    + "gap=\"0 mm u 0 measured\" stiffness=\"5000 N/mm\">"
                    + "<stand href=\"shop:/#stand0000000%d\"/></contacts>%n",
                    number, place, number, number));
        }
        file("gear.cwgear", "<fixture:GearStore xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" "
                + "xmlns:fixture=\"urn:cradlewright:fixture\" schema=\"3\">\n" + stands + "</fixture:GearStore>\n");
        file("cars/red.cwcar", "<vehicle:Car xmlns:vehicle=\"urn:cradlewright:vehicle\" schema=\"3\" "
                + "id=\"car0000000001\" name=\"Red coupe\">\n"
                + "  <pieces id=\"shell00000001\" name=\"shell\" kind=\"shell\" torsionalStiffness=\"3000 N*m/deg u 1 measured\">\n"
                + String.join("", parts) + "  </pieces>\n" + points
                + "  <stages id=\"stage00000001\" name=\"as it is\" on=\"" + String.join(" ", on) + "\"/>\n"
                + "  <setups id=\"setup00000001\" name=\"on four stands\" kind=\"on stands\" carried=\"" + carried
                + "\" shift=\"0 0 0 mm\">\n" + contacts + "  </setups>\n"
                + "  <visits id=\"visit00000001\" name=\"on stands\" stage=\"stage00000001\" setup=\"setup00000001\" " + dates + "/>\n"
                + "</vehicle:Car>\n");
        return folder;
    }

    private void file(String path, String text) throws IOException {
        Files.writeString(folder.resolve(path), text, StandardCharsets.UTF_8);
    }
}
