package cradlewright.ui.tests;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/**
 * Looks at widgets for what nobody could read: words that are cut off, controls outside their parent or over one another, nothing at all.
 */
final class Eyes {

    /** Rounding of fonts and borders, in pixels. */
    private static final int SLACK = 3;
    private static final int SAMPLE = 3;

    private Eyes() {
    }

    /** Returns what is wrong with the visible controls below a parent. */
    static List<String> complaints(Composite top) {
        List<String> complaints = new ArrayList<>();
        Bot.controls(top).filter(Control::isVisible).forEach(control -> {
            if (wordsCut(control)) {
                complaints.add("cut off: " + name(control) + " has " + control.getSize() + ", wants "
                        + control.computeSize(SWT.DEFAULT, SWT.DEFAULT));
            }
            if (control != top && outside(control)) {
                complaints.add("outside its parent: " + name(control) + " " + control.getBounds() + " in "
                        + control.getParent().getClientArea());
            }
            if (control instanceof Composite parent) {
                overlaps(parent, complaints);
            }
        });
        return complaints;
    }

    private static boolean wordsCut(Control control) {
        boolean separator = (control.getStyle() & SWT.SEPARATOR) != 0;
        if (!(control instanceof Label label && !separator && !label.getText().isEmpty()
                || control instanceof Button button && !button.getText().isEmpty())) {
            return false;
        }
        boolean wraps = (control.getStyle() & SWT.WRAP) != 0;
        Point wanted = control.computeSize(wraps ? control.getSize().x : SWT.DEFAULT, SWT.DEFAULT);
        Point got = control.getSize();
        return !wraps && got.x + SLACK < wanted.x || got.y + SLACK < wanted.y;
    }

    private static boolean outside(Control control) {
        Composite parent = control.getParent();
        boolean scrolls = parent.getHorizontalBar() != null || parent.getVerticalBar() != null;
        if (scrolls || !(control instanceof Label || control instanceof Button)) {
            return false;
        }
        Rectangle area = parent.getClientArea();
        Rectangle all = new Rectangle(area.x - SLACK, area.y - SLACK, area.width + 2 * SLACK, area.height + 2 * SLACK);
        return !all.union(control.getBounds()).equals(all);
    }

    private static void overlaps(Composite parent, List<String> complaints) {
        List<Control> children = List.of(parent.getChildren()).stream()
                .filter(child -> child.isVisible() && (child instanceof Label || child instanceof Button)).toList();
        for (int i = 0; i < children.size(); i++) {
            for (Control other : children.subList(i + 1, children.size())) {
                Rectangle shared = children.get(i).getBounds().intersection(other.getBounds());
                if (shared.width > SLACK && shared.height > SLACK) {
                    complaints.add("over one another: " + name(children.get(i)) + " and " + name(other));
                }
            }
        }
    }

    private static String name(Control control) {
        String text = control instanceof Label label ? label.getText() : control instanceof Button button ? button.getText() : "";
        return control.getClass().getSimpleName() + " '" + text + "'";
    }

    /** Returns how many colours a control shows on the display; one means that nothing is drawn. */
    static int colours(Control control) {
        Rectangle area = control.getDisplay().map(control.getParent(), null, control.getBounds());
        Image image = new Image(control.getDisplay(), Math.max(area.width, 1), Math.max(area.height, 1));
        GC gc = new GC(control.getDisplay());
        gc.copyArea(image, area.x, area.y);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < data.width; x += SAMPLE) {
            for (int y = 0; y < data.height; y++) {
                colours.add(data.getPixel(x, y));
            }
        }
        return colours.size();
    }
}
