package cradlewright.ui.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Shop;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The last good copy: only of what was read or saved well, and put back without losing what stood there. */
class GoodCopiesTest {

    @TempDir
    Path home;
    private Path folder;
    private ShopFile file;
    private GoodCopies good;

    @BeforeEach
    void write() throws IOException {
        folder = home.resolve("shed");
        ShopFolder shop = new ShopFolder(folder);
        Shop root = IdSource.secure().give(BaseFactory.eINSTANCE.createShop());
        root.setName("shed");
        file = shop.add(FileKind.SHOP, "", root);
        new ShopWriter(shop, Clock.systemUTC()).save(file);
        good = new GoodCopies(home.resolve("good"), folder);
    }

    @Test
    void aFileThatWasSpoiltComesBackAndTheSpoiltOneStaysBesideIt() throws IOException {
        Path path = folder.resolve(file.path());
        String text = Files.readString(path);
        assertEquals(Optional.empty(), good.find(file));
        good.keep(file.path(), file.digest().orElseThrow());
        Files.writeString(path, "<spoilt");
        Path copy = good.find(file).orElseThrow();
        Path aside = GoodCopies.putBack(folder, file.path(), copy).orElseThrow();
        assertEquals(text, Files.readString(path));
        assertEquals("<spoilt", Files.readString(aside));
        assertTrue(ShopFolder.open(folder).problems().isEmpty());
        Files.delete(path);
        assertEquals(Optional.empty(), GoodCopies.putBack(folder, file.path(), copy));
        assertEquals(text, Files.readString(path));
    }

    @Test
    void whatOthersWroteMeanwhileIsNotKeptAsGood() throws IOException {
        good.keep(file.path(), file.digest().orElseThrow());
        String text = Files.readString(good.find(file).orElseThrow());
        Files.writeString(folder.resolve(file.path()), "<spoilt");
        good.keep(file.path(), file.digest().orElseThrow());
        assertEquals(text, Files.readString(good.find(file).orElseThrow()));
    }
}
