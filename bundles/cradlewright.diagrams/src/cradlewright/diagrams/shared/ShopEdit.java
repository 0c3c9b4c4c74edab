package cradlewright.diagrams.shared;

import cradlewright.model.edit.ShopChange;
import java.util.Objects;
import org.eclipse.gef.commands.Command;

/**
 * The one kind of command that edit policies return: a change of the shop with its label. It is run by {@link SharedGefStack}, never by
 * itself, so that the shop's stack records it.
 */
public final class ShopEdit extends Command {

    private final ShopChange change;

    /** Makes a command of a change. */
    public ShopEdit(ShopChange change) {
        super(change.label());
        this.change = Objects.requireNonNull(change);
    }

    ShopChange change() {
        return change;
    }
}
