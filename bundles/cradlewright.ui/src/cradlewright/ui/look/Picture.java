package cradlewright.ui.look;

import java.util.Locale;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.graphics.Image;

/** The pictures of the window, drawn as vectors for light and dark grounds alike. */
public enum Picture {
    /** Ask a question. */
    ASK,
    /** A car. */
    CAR,
    /** A castor. */
    CASTOR,
    /** A file that could not be read. */
    BROKEN,
    /** Work the answers out again. */
    CHECK,
    /** A dolly. */
    DOLLY,
    /** A fixture or an end prop. */
    FIXTURE,
    /** The floor. */
    FLOOR,
    /** Lifting gear. */
    GEAR,
    /** Several things of one sort. */
    GROUP,
    /** What was done and can be undone. */
    HISTORY,
    /** A job. */
    JOB,
    /** A joint. */
    JOINT,
    /** A load. */
    LOAD,
    /** A rail of a dolly. */
    MEMBER,
    /** Open a shop. */
    OPEN,
    /** A step of a job. */
    OPERATION,
    /** A part. */
    PART,
    /** Somebody. */
    PERSON,
    /** A shell, chassis or engine. */
    PIECE,
    /** A place where something stands. */
    PLACE,
    /** A point on a car: body mount, lift point, where somebody leans. */
    POINT,
    /** What rests on what. */
    SETUP,
    /** A shop. */
    SHOP,
    /** Which parts are on. */
    STAGE,
    /** Do again what was undone. */
    REDO,
    /** Stock. */
    STOCK,
    /** Take back what was done. */
    UNDO,
    /** A tick: it is on. */
    TICKED,
    /** An empty box: it is off. */
    UNTICKED,
    /** A visit. */
    VISIT,
    /** A zone that will be cut. */
    ZONE;

    /** Returns how to make the picture. */
    public ImageDescriptor descriptor() {
        return descriptor(name());
    }

    /** Returns the picture; nobody disposes of it. */
    public Image image() {
        return image(name());
    }

    static ImageDescriptor descriptor(String name) {
        return ResourceLocator.imageDescriptorFromBundle(Picture.class, "icons/" + name.toLowerCase(Locale.ROOT) + ".svg")
                .orElseGet(ImageDescriptor::getMissingImageDescriptor);
    }

    static Image image(String name) {
        ImageRegistry images = JFaceResources.getImageRegistry();
        String key = Picture.class.getName() + '.' + name;
        if (images.getDescriptor(key) == null) {
            images.put(key, descriptor(name));
        }
        return images.get(key);
    }
}
