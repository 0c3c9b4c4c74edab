package cradlewright.ui.ask;

import cradlewright.ui.shop.WorkingShop;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.menus.WorkbenchWindowControlContribution;

/** A field in the tool bar that takes the name of a support or a part. */
public final class QuickAsk extends WorkbenchWindowControlContribution {

    private static final int WIDTH = 220;

    @Override
    protected Control createControl(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 0).applyTo(frame);
        ProposedField field = new ProposedField(frame, Messages.Ask_quick, QuickAsk::names, this::ask);
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).grab(false, true).applyTo(field.control());
        return frame;
    }

    private static List<String> names() {
        return WorkingShop.current().stream().flatMap(open -> Stream.concat(SupportPage.names(open).stream(),
                PartChoice.all(open.snapshot()).stream().map(PartChoice::label))).toList();
    }

    private void ask(String text) {
        try {
            AskHandler.view(getWorkbenchWindow()).askAnything(text);
        } catch (ExecutionException e) {
            ILog.of(QuickAsk.class).error("The view of the questions does not open.", e);
        }
    }
}
