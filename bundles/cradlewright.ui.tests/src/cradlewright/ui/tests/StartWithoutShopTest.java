package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.io.FileKind;
import cradlewright.ui.shop.WorkingShop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The start page while no shop is open. */
class StartWithoutShopTest {

    @BeforeEach
    @AfterEach
    void close() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
        Bot.settle();
    }

    @Test
    void withoutAShopTheDemoShopIsOneClickAway() throws Exception {
        Path home = Files.createTempDirectory("home");
        String before = System.setProperty("user.home", home.toString());
        try {
            Bot.menu("Window", "Start Page");
            assertEquals(List.of(), Eyes.complaints(Bot.shell()));
            Bot.picture(Bot.shell(), "start-empty");
            openDemo();
            Path folder = WorkingShop.current().orElseThrow().folder().directory();
            assertEquals(home, folder.getParent());
            assertEquals(DemoShop.files(Path.of(System.getProperty("cradlewright.demo"))), DemoShop.files(folder));
            Path car = folder.resolve("cars/red coupe.cwcar");
            Files.writeString(car, Files.readString(car).replace("bonnet", "other bonnet"));
            close();
            openDemo();
            assertTrue(Files.readString(car).contains("other bonnet"), "what was edited before is still there");
        } finally {
            System.setProperty("user.home", before);
        }
    }

    private static void openDemo() {
        Bot.find(Bot.shell(), Button.class, button -> button.getText().replace("&", "").equals("Open the Demo Shop"))
                .notifyListeners(SWT.Selection, new Event());
        Bot.settle();
        assertTrue(Files.exists(WorkingShop.current().orElseThrow().folder().directory().resolve(FileKind.SHOP.path(""))));
    }
}
