package cradlewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.ui.forms.widgets.ILayoutExtension;

/** Lays sections out in as many columns as the width gives room for, down each column in turn, so that the columns get about as long. */
final class SideBySide extends Layout implements ILayoutExtension {

    private static final int NARROWEST = 430;
    private static final int MOST = 3;
    private static final int GAP = 18;

    /** How many sections stand in each column, for sections of these heights in order. */
    static List<Integer> split(List<Integer> heights, int columns) {
        int total = heights.stream().mapToInt(Integer::intValue).sum();
        List<Integer> counts = new ArrayList<>();
        int above = 0;
        int count = 0;
        for (int height : heights) {
            boolean full = count > 0 && counts.size() < columns - 1 && (above + height / 2) * columns > total * (counts.size() + 1);
            if (full) {
                counts.add(count);
                count = 0;
            }
            above += height;
            count++;
        }
        counts.add(count);
        return counts;
    }

    private static int columns(int width, int children) {
        return Math.max(1, Math.min(Math.min(MOST, children), (width + GAP) / (NARROWEST + GAP)));
    }

    private static int columnWidth(int width, int columns) {
        return (width - GAP * (columns - 1)) / columns;
    }

    @Override
    protected Point computeSize(Composite parent, int wide, int high, boolean flush) {
        int width = wide == SWT.DEFAULT ? NARROWEST : wide;
        return new Point(width, place(parent, new Rectangle(0, 0, width, 0), false));
    }

    @Override
    protected void layout(Composite parent, boolean flush) {
        place(parent, parent.getClientArea(), true);
    }

    /** Returns the height that the longest column takes; sets the bounds of the sections when it is for good. */
    private static int place(Composite parent, Rectangle area, boolean forGood) {
        List<Control> sections = List.of(parent.getChildren());
        int columns = columns(area.width, sections.size());
        int width = columnWidth(area.width, columns);
        List<Integer> heights = sections.stream().map(each -> each.computeSize(width, SWT.DEFAULT).y).toList();
        int longest = 0;
        int next = 0;
        int column = 0;
        for (int count : split(heights, columns)) {
            int y = 0;
            for (int i = 0; i < count; i++, next++) {
                if (forGood) {
                    sections.get(next).setBounds(area.x + column * (width + GAP), area.y + y, width, heights.get(next));
                }
                y += heights.get(next);
            }
            longest = Math.max(longest, y);
            column++;
        }
        return longest;
    }

    @Override
    public int computeMinimumWidth(Composite parent, boolean changed) {
        return NARROWEST;
    }

    @Override
    public int computeMaximumWidth(Composite parent, boolean changed) {
        return NARROWEST * MOST + GAP * (MOST - 1);
    }
}
