package cradlewright.model.io;

/**
 * Schema 1 to 2: parts and temporary loads had their kilograms under the name {@code weight}. A weight is a force, and
 * mass and force are kept apart, so the attribute is now {@code mass}.
 */
final class WeightBecomesMass implements Migration {

    @Override
    public int from() {
        return 1;
    }

    @Override
    public String what() {
        return "weights of parts and temporary loads are now called mass";
    }

    @Override
    public void rewrite(XmlElement root) {
        root.walk(element -> {
            if (element.name().equals("parts") || element.name().equals("temporaryLoads")) {
                element.rename("weight", "mass");
            }
        });
    }
}
