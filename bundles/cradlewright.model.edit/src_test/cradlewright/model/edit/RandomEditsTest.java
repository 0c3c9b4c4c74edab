package cradlewright.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random edits of every kind: what undo and redo leave is what a fresh shop becomes by the edits that count. */
class RandomEditsTest {

    private static final long SEED = 20261125;
    private static final int STEPS = 2000;

    @TempDir
    Path directory;

    private ShopFolder fresh() {
        return EditShop.build(directory, SEED, 2, 3);
    }

    private ShopStack stack(ShopFolder shop) {
        return new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
    }

    @Test
    void undoAndRedoLeaveWhatAReplayMakes() {
        ShopFolder shop = fresh();
        ShopStack stack = stack(shop);
        Random random = new Random(SEED);
        List<Long> done = new ArrayList<>();
        List<Long> undone = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        for (int i = 0; i < STEPS; i++) {
            int dice = random.nextInt(10);
            if (dice < 3 && stack.canUndo()) {
                stack.undo();
                undone.add(done.remove(done.size() - 1));
                counts.merge("undo", 1, Integer::sum);
            } else if (dice < 5 && stack.canRedo()) {
                stack.redo();
                done.add(undone.remove(undone.size() - 1));
                counts.merge("redo", 1, Integer::sum);
            } else {
                boolean breaksARule = dice == 5;
                int before = stack.cursor();
                if (breaksARule) {
                    refuse(shop, stack, i);
                } else {
                    stack.execute(RandomEdit.of(shop, i));
                }
                boolean entered = stack.cursor() > before;
                if (entered) {
                    done.add((long) i);
                    undone.clear();
                }
                counts.merge(entered ? "edit" : breaksARule ? "refused" : "nothing", 1, Integer::sum);
            }
            if (i % 1000 == 999) {
                assertEquals(replay(done), EditShop.text(shop), "after step " + i + ", seed " + SEED);
            }
        }
        assertTrue(counts.get("edit") > 700 && counts.get("undo") > 400 && counts.get("redo") > 100 && counts.get("refused") > 100,
                counts::toString);
        String last = EditShop.text(shop);
        int there = stack.cursor();
        while (stack.canUndo()) {
            stack.undo();
        }
        assertEquals(EditShop.text(fresh()), EditShop.text(shop), "seed " + SEED);
        while (stack.cursor() < there) {
            stack.redo();
        }
        assertEquals(last, EditShop.text(shop), "seed " + SEED);
    }

    @Test
    void twoThousandChangesAllTakenBackAndDoneAgain() {
        ShopFolder shop = fresh();
        ShopStack stack = stack(shop);
        for (long i = 0; stack.cursor() < STEPS; i++) {
            stack.execute(RandomEdit.of(shop, SEED + i));
        }
        String done = EditShop.text(shop);
        for (int i = 0; i < STEPS; i++) {
            stack.undo();
        }
        assertEquals(EditShop.text(fresh()), EditShop.text(shop), "seed " + SEED);
        for (int i = 0; i < STEPS; i++) {
            stack.redo();
        }
        assertEquals(done, EditShop.text(shop), "seed " + SEED);
    }

    private String replay(List<Long> edits) {
        ShopFolder shop = fresh();
        ShopStack stack = stack(shop);
        edits.forEach(seed -> stack.execute(RandomEdit.of(shop, seed)));
        return EditShop.text(shop);
    }

    /** The body throws at its end, or may touch one file only: if it keeps to that, the change is an edit like others. */
    private static void refuse(ShopFolder shop, ShopStack stack, long seed) {
        String before = EditShop.text(shop);
        int entries = stack.history().size();
        Map<ShopFile, Long> states = new HashMap<>();
        shop.files().forEach(file -> states.put(file, stack.state(file)));
        Runnable body = RandomEdit.of(shop, seed).body();
        try {
            if (seed % 2 == 0) {
                stack.execute(new ShopChange("fails", new LinkedHashSet<>(shop.files()), () -> {
                    body.run();
                    throw new ArithmeticException("on purpose");
                }));
            } else {
                ShopFile named = shop.files().get(0);
                stack.execute(new ShopChange("reaches too far", named, body));
                return;
            }
        } catch (ArithmeticException expected) {
            assertEquals("on purpose", expected.getMessage());
        } catch (ChangeRefused expected) {
            assertTrue(expected.getMessage().contains("did not name"), expected.getMessage());
        }
        assertEquals(before, EditShop.text(shop), "seed " + seed);
        assertEquals(entries, stack.history().size());
        shop.files().forEach(file -> assertEquals(states.get(file), stack.state(file)));
    }

    /** EMF's own recorder, put on all files, is the second opinion on what takes an edit back. It cannot hold that a kind was missing. */
    @Test
    void undoAgreesWithTheRecorderOfEmf() {
        ShopFolder shop = fresh();
        ShopStack stack = stack(shop);
        int changed = 0;
        for (int i = 0; i < 80; i++) {
            String before = EditShop.text(shop);
            ChangeRecorder recorder = new ChangeRecorder(shop.resourceSet());
            int entries = stack.cursor();
            stack.execute(RandomEdit.withoutKinds(shop, 5000 + i));
            ChangeDescription description = recorder.endRecording();
            recorder.dispose();
            if (stack.cursor() == entries) {
                continue;
            }
            String after = EditShop.text(shop);
            changed += before.equals(after) ? 0 : 1;
            int own = stack.cursor();
            stack.execute(new ShopChange("as the recorder takes it back", new LinkedHashSet<>(shop.files()), description::apply));
            assertEquals(before, EditShop.text(shop), "recorder of EMF, edit " + i);
            while (stack.cursor() > own) {
                stack.undo();
            }
            assertEquals(after, EditShop.text(shop), "after the recorder, edit " + i);
            stack.undo();
            assertEquals(before, EditShop.text(shop), "undo, edit " + i);
            stack.redo();
            assertEquals(after, EditShop.text(shop), "redo, edit " + i);
        }
        assertTrue(changed > 40, "only " + changed + " edits changed the text");
        assertNotEquals(EditShop.text(fresh()), EditShop.text(shop));
    }
}
