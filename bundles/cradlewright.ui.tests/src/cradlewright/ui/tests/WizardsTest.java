package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.fixture.Dolly;
import cradlewright.model.vehicle.Car;
import cradlewright.ui.shop.WorkingShop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The wizards from the menu to the files, without the mouse: the fields are taken in the order in which the key Tab goes through them. */
class WizardsTest {

    private Path folder;

    @BeforeEach
    void open() throws Exception {
        folder = DemoShop.copy();
        DemoShop.open(folder);
    }

    @AfterEach
    void close() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
        Bot.settle();
    }

    private static List<Control> inOrder(Shell dialog) {
        return Bot.controls(dialog).filter(Control::isVisible).filter(each -> each instanceof Text || each instanceof Button).toList();
    }

    private static Text field(Shell dialog, int number) {
        return inOrder(dialog).stream().filter(Text.class::isInstance).map(Text.class::cast)
                .filter(text -> text.getEditable()).skip(number).findFirst().orElseThrow();
    }

    private static Button button(Shell dialog, String words) {
        return Bot.find(dialog, Button.class, each -> each.getText().replace("&", "").startsWith(words));
    }

    private static void type(Shell dialog, Text field, String words) {
        assertTrue(field.forceFocus(), "takes the keys");
        field.selectAll();
        for (char letter : words.toCharArray()) {
            Event key = new Event();
            key.type = SWT.KeyDown;
            key.character = letter;
            field.notifyListeners(SWT.KeyDown, key);
            field.insert(String.valueOf(letter));
        }
        Bot.settle();
    }

    private static void enter(Shell dialog) {
        assertTrue(dialog.getDefaultButton().isEnabled(), "the key Enter finishes");
        dialog.getDefaultButton().notifyListeners(SWT.Selection, new Event());
        Bot.settle();
    }

    private static String message(Shell dialog) {
        return inOrder(dialog).stream().filter(Text.class::isInstance).map(Text.class::cast).filter(text -> !text.getEditable())
                .findFirst().map(Text::getText).orElse("");
    }

    @Test
    void aNewCarWithGuessedMassesOpensAndIsOnDisk() throws Exception {
        Bot.withDialog(() -> Bot.menu("File", "New", "New Car"), dialog -> {
            assertFalse(button(dialog, "Finish").isEnabled(), "it has no name yet");
            type(dialog, field(dialog, 0), "red coupe");
            assertFalse(button(dialog, "Finish").isEnabled(), "the shop has such a file");
            assertTrue(message(dialog).contains("already"), message(dialog));
            type(dialog, field(dialog, 0), "Tern saloon");
            Button guess = button(dialog, "Start with guessed");
            guess.setSelection(true);
            guess.notifyListeners(SWT.Selection, new Event());
            Bot.settle();
            Bot.picture(dialog, "wizard-car");
            assertEquals(List.of(), Eyes.complaints(dialog));
            button(dialog, "Next").notifyListeners(SWT.Selection, new Event());
            Bot.settle();
            Bot.picture(dialog, "wizard-car-parts");
            type(dialog, field(dialog, 0), "181.5");
            Bot.find(dialog, Button.class, each -> each.getText().equals("rear bumper")).setSelection(false);
            enter(dialog);
        });
        WorkingShop shop = WorkingShop.current().orElseThrow();
        Car car = shop.folder().cars().stream().filter(each -> "Tern saloon".equals(each.getName())).findFirst().orElseThrow();
        assertEquals("181.5 kg guessed", car.getPieces().get(0).getParts().get(0).getMass().text());
        assertFalse(Files.readString(folder.resolve("cars/Tern saloon.cwcar")).contains("rear bumper"));
        assertEquals("Tern saloon.cwcar", Bot.page().getActiveEditor().getEditorInput().getName());
        assertEquals("New Car", shop.stack().nextUndo().orElseThrow().label());
        shop.stack().undo();
        assertTrue(car.getPieces().isEmpty());
    }

    @Test
    void aNewDollyIsJudgedWhileItIsTyped() throws Exception {
        Bot.withDialog(() -> Bot.menu("File", "New", "New Dolly"), dialog -> {
            type(dialog, field(dialog, 0), "Dolly 7");
            assertFalse(button(dialog, "Finish").isEnabled(), "what the castors carry is not said");
            Text castor = named(dialog, "Castor plate says");
            type(dialog, castor, "50");
            type(dialog, named(dialog, "A fixture takes"), "6000");
            type(dialog, named(dialog, "Heaviest shell"), "420");
            Bot.await("the checks answer", () -> verdict(dialog).startsWith("STOP"));
            Bot.picture(dialog, "wizard-dolly-stop");
            type(dialog, castor, "300");
            Bot.await("the checks answer again", () -> verdict(dialog).startsWith("HOLDS"));
            Bot.picture(dialog, "wizard-dolly");
            assertEquals(List.of(), Eyes.complaints(dialog));
            enter(dialog);
        });
        WorkingShop shop = WorkingShop.current().orElseThrow();
        Dolly dolly = shop.folder().dollies().stream().filter(each -> "Dolly 7".equals(each.getName())).findFirst().orElseThrow();
        assertEquals(4, dolly.getCastors().size());
        assertTrue(Files.exists(folder.resolve("dollies/Dolly 7.cwdolly")));
        assertEquals(List.of(), shop.stack().dirtyFiles());
        shop.stack().undo();
        assertTrue(dolly.getMembers().isEmpty());
    }

    private static Text named(Shell dialog, String label) {
        List<Control> all = Bot.controls(dialog).toList();
        int at = 0;
        while (!(all.get(at) instanceof Label words && words.getText().replace("&", "").startsWith(label))) {
            at++;
        }
        return (Text) all.get(at + 1);
    }

    private static String verdict(Shell dialog) {
        return Bot.find(dialog, CLabel.class, each -> each.getParent().getChildren().length > 8).getText();
    }

    @Test
    void aNewShopIsOpenAfterwards() throws Exception {
        Path home = Files.createTempDirectory("home");
        Bot.withDialog(() -> Bot.menu("File", "New", "New Shop"), dialog -> {
            type(dialog, field(dialog, 0), "Mill");
            type(dialog, field(dialog, 1), folder.toString());
            assertFalse(button(dialog, "Finish").isEnabled(), "there is a shop already");
            type(dialog, field(dialog, 1), home.resolve("mill").toString());
            type(dialog, field(dialog, 2), "A. Fitter");
            Bot.picture(dialog, "wizard-shop");
            assertEquals(List.of(), Eyes.complaints(dialog));
            enter(dialog);
        });
        WorkingShop shop = WorkingShop.current().orElseThrow();
        assertEquals(home.resolve("mill"), shop.folder().directory());
        assertEquals("Mill", shop.snapshot().name());
        assertEquals(List.of(), shop.problems());
        assertEquals(1, shop.folder().jobs().orElseThrow().getPeople().size());
        assertTrue(Arrays.stream(home.toFile().list()).toList().contains("mill"));
    }
}
