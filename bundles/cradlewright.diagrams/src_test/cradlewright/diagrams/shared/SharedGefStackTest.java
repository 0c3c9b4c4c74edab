package cradlewright.diagrams.shared;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.diagrams.car.RedCoupe;
import cradlewright.model.edit.ShopChange;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CompoundCommand;
import org.junit.jupiter.api.Test;

class SharedGefStackTest {

    private final RedCoupe red = new RedCoupe();
    private final List<String> refused = new ArrayList<>();
    private final SharedGefStack stack = new SharedGefStack(red.stack(), red.file(), e -> refused.add(e.getMessage()));

    private ShopEdit rename(String mount, String name) {
        return new ShopEdit(new ShopChange("name " + name, red.file(), () -> red.mount(mount).setName(name)));
    }

    @Test
    void everythingIsInTheStackOfTheShop() {
        assertFalse(stack.canUndo());
        assertNull(stack.getUndoCommand());
        stack.execute(rename("1L", "A"));
        assertEquals("name A", stack.getUndoCommand().getLabel());
        assertTrue(stack.isDirty());
        red.stack().undo();
        assertFalse(stack.isDirty(), "an undo from elsewhere counts here too");
        assertEquals("name A", stack.getRedoCommand().getLabel());
        stack.redo();
        assertEquals(1, stack.getCommands().length);
        stack.undo();
        red.mount("1L");
    }

    @Test
    void severalCommandsAreOneChange() {
        CompoundCommand inner = new CompoundCommand();
        inner.add(rename("1R", "B"));
        CompoundCommand all = new CompoundCommand("name both");
        all.add(rename("1L", "A"));
        all.add(inner);
        stack.execute(all);
        assertEquals(1, red.stack().history().size());
        assertEquals("name both", stack.getUndoCommand().getLabel());
        stack.undo();
        red.mount("1L");
        red.mount("1R");
        assertFalse(stack.canUndo());
    }

    @Test
    void flushAndDisposeLeaveTheHistoryAlone() {
        stack.execute(rename("1L", "A"));
        stack.flush();
        stack.markSaveLocation();
        stack.dispose();
        assertTrue(red.stack().canUndo());
        assertTrue(red.stack().isDirty(red.file()), "only saving makes a file clean");
    }

    @Test
    void listenersHearOfEditsWhereverTheyAreMade() {
        List<Integer> heard = new ArrayList<>();
        stack.addCommandStackEventListener(event -> heard.add(event.getDetail()));
        red.stack().execute(new ShopChange("elsewhere", red.file(), () -> red.mount("1L").setName("A")));
        red.stack().undo();
        red.stack().redo();
        assertEquals(List.of(CommandStack.POST_EXECUTE, CommandStack.POST_UNDO, CommandStack.POST_REDO), heard);
    }

    @Test
    void onlyEditsOfTheShopAreRun() {
        assertThrows(IllegalStateException.class, () -> stack.execute(new Command("foreign") {
        }));
        stack.execute(null);
        stack.execute(new ShopEdit(new ShopChange("other id", red.file(), () -> red.mount("1L").setId("1"))));
        assertEquals(1, refused.size());
        assertFalse(stack.canUndo());
    }
}
