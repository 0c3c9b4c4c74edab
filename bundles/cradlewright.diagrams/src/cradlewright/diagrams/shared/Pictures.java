package cradlewright.diagrams.shared;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

/** The pictures of tools and actions. */
public enum Pictures {
    SUPPORT("support"), PROP("prop"), LIFT("lift"), LEAN("lean"), CUT("cut"), FIT("fit"), MIRROR("mirror"), ALIGN("align"),
    SAVE_PICTURE("picture"), CLOSER("closer"), FARTHER("farther"), GRID("grid"),
    MEMBER("member"), CASTOR("castor"), FOOT("foot"), FIXTURE("fixture");

    private final String file;

    Pictures(String file) {
        this.file = file;
    }

    /** Returns how to make the picture. */
    public ImageDescriptor descriptor() {
        return ResourceLocator.imageDescriptorFromBundle("cradlewright.diagrams", "icons/" + file + ".svg").orElseThrow();
    }
}
