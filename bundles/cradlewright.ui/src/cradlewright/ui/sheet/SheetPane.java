package cradlewright.ui.sheet;

import cradlewright.report.sheet.PlainSheet;
import cradlewright.report.sheet.Sheet;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.sheet.SheetText.Kind;
import cradlewright.ui.sheet.SheetText.Mark;
import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A field that shows one sheet; people read, select and copy, nobody types. */
public final class SheetPane {

    private static final int MARGIN = 10;
    private static final int LONGEST_HEAD = 24;

    private final StyledText field;
    private Sheet shown = new Sheet(List.of());

    /**
     * Makes the field.
     *
     * @param name what it is called by those who hear the window instead of seeing it
     */
    public SheetPane(Composite parent, String name) {
        field = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
        field.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        field.setAlwaysShowScrollBars(false);
        Spoken.name(field, name);
        MenuManager menu = new MenuManager();
        menu.add(action(Messages.Sheet_copySelected, field::copy));
        menu.add(action(Messages.Sheet_copyAll, this::copy));
        menu.add(action(Messages.Sheet_selectAll, field::selectAll));
        field.setMenu(menu.createContextMenu(field));
    }

    private static Action action(String name, Runnable body) {
        return new Action(name) {
            @Override
            public void run() {
                body.run();
            }
        };
    }

    /** Returns the field, for laying it out. */
    public Control control() {
        return field;
    }

    /** Returns what is shown. */
    public Sheet shown() {
        return shown;
    }

    /** Shows a sheet from its beginning, or leaves the field as it is when it shows that sheet already. */
    public void show(Sheet sheet) {
        if (sheet.equals(shown)) {
            return;
        }
        shown = sheet;
        SheetText text = SheetText.of(sheet);
        field.setRedraw(false);
        field.setText(text.text());
        int tab = tab(text);
        for (int line = 0; line < text.lines().size(); line++) {
            style(line, text.lines().get(line), tab);
        }
        field.setTopPixel(0);
        field.setRedraw(true);
    }

    /** Shows one sentence. */
    public void say(String sentence) {
        show(new Sheet(List.of(new Sheet.Sentence(sentence))));
    }

    /** Puts the whole sheet on the clipboard as plain text. */
    public void copy() {
        PlainCopy.put(PlainSheet.write(shown), field.getDisplay());
    }

    /** Returns where the text of rows begins: behind the longest head that is not unusually long. */
    private int tab(SheetText text) {
        int longest = 0;
        for (int line = 0; line < text.lines().size(); line++) {
            int head = text.lines().get(line).head();
            longest = head <= LONGEST_HEAD ? Math.max(longest, head) : longest;
        }
        GC gc = new GC(field);
        try {
            gc.setFont(field.getFont());
            return gc.textExtent("n".repeat(longest + 1)).x + 2 * MARGIN;
        } finally {
            gc.dispose();
        }
    }

    private void style(int line, Mark mark, int tab) {
        int begin = field.getOffsetAtLine(line);
        int indent = mark.kind() == Kind.INNER ? 2 * MARGIN : mark.kind() == Kind.ROW ? MARGIN : 0;
        if (mark.kind() == Kind.TITLE) {
            StyleRange bold = new StyleRange(begin, field.getLine(line).length(), null, null);
            bold.font = JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
            field.setStyleRange(bold);
        }
        if (mark.head() > 0) {
            field.setStyleRange(new StyleRange(begin, mark.head(), VerdictLook.faint(field.getBackground()), null));
        }
        if (mark.kind() == Kind.POINT || mark.head() > 0) {
            int text = mark.kind() == Kind.POINT ? 2 * MARGIN : tab + 2 * MARGIN;
            field.setLineIndent(line, 1, indent);
            // Tab stops count from the indent, the other lines from the margin.
            field.setLineTabStops(line, 1, new int[] {text - indent});
            field.setLineWrapIndent(line, 1, text);
        }
    }
}
