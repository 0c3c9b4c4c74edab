package cradlewright.report.scene;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Paints a scene as SVG with classes named after the roles; line widths and patterns differ too, so that it reads without colour. */
public final class SvgPainter {

    /** Style sheet for the classes, once per page: for a light screen, for a dark one, and black on white for paper. */
    public static final String STYLE = style(Palette.LIGHT) + "@media screen and (prefers-color-scheme:dark){\n" + style(Palette.DARK)
            + "}\n@media print{\n" + style(Palette.PAPER) + "}\n";

    /** Returns the scene as one svg element of a page that has the style sheet. */
    public String paint(Scene scene) {
        return element(scene, " width=\"920\"", "");
    }

    /** Returns the scene as a file of its own, in true size over ten. */
    public String document(Scene scene, Palette palette) {
        String size = String.format(Locale.ROOT, " xmlns=\"http://www.w3.org/2000/svg\" width=\"%.1fmm\" height=\"%.1fmm\"",
                scene.sheet().width() / 10, scene.sheet().height() / 10);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element(scene, size, "<style>" + style(palette) + "</style>\n") + "\n";
    }

    /** Returns a style sheet for the classes. */
    public static String style(Palette palette) {
        StringBuilder style = new StringBuilder("svg.scene{font-family:system-ui,sans-serif;background:" + palette.ground().hex()
                + ";max-width:100%;height:auto}\n");
        for (Role role : Role.values()) {
            style.append('.').append(name(role)).append('{').append(rule(role, palette)).append("}\n");
        }
        return style.toString();
    }

    private static String rule(Role role, Palette palette) {
        Ink ink = palette.ink(role);
        String fill = "fill:" + ink.fill().map(Colour::hex).orElse("none");
        if (ink.line().isEmpty()) {
            // A rim in the colour of the ground keeps letters readable where a line runs behind them.
            return fill + (role == Role.TEXT_STRONG ? ";font-weight:700" : "") + ";stroke:" + palette.ground().hex()
                    + ";stroke-width:3px;stroke-linejoin:round;paint-order:stroke;vector-effect:non-scaling-stroke";
        }
        String dash = Arrays.stream(ink.dash().lengths()).mapToObj(Integer::toString).collect(Collectors.joining(" "));
        return fill + ";stroke:" + ink.line().get().hex() + String.format(Locale.ROOT, ";stroke-width:%.0fpx", ink.width())
                + (dash.isEmpty() ? "" : ";stroke-dasharray:" + dash) + ";vector-effect:non-scaling-stroke";
    }

    private static String element(Scene scene, String size, String style) {
        String body = scene.items().stream().map(SvgPainter::item).collect(Collectors.joining("\n"));
        Box sheet = scene.sheet();
        String head = "<svg class=\"scene\" role=\"img\" aria-label=\"%s\" viewBox=\"%.0f %.0f %.0f %.0f\"%s>\n%s%s\n</svg>";
        return String.format(Locale.ROOT, head, escape(scene.title()),
                sheet.left(), sheet.top(), sheet.width(), sheet.height(), size, style, body);
    }

    private static String item(Item item) {
        return item.shapes().stream().map(SvgPainter::shape)
                .collect(Collectors.joining("\n", "<g><title>" + escape(item.description()) + "</title>\n", "</g>"));
    }

    private static String shape(Shape shape) {
        String role = name(shape.role());
        if (shape instanceof Shape.Line s) {
            return String.format(Locale.ROOT, "<line class=\"%s\" x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>", role,
                    s.x1(), s.y1(), s.x2(), s.y2());
        }
        if (shape instanceof Shape.Circle s) {
            return String.format(Locale.ROOT, "<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\"/>", role, s.x(), s.y(), s.radius());
        }
        if (shape instanceof Shape.Polygon s) {
            String points = s.points().stream().map(p -> String.format(Locale.ROOT, "%.1f,%.1f", p.x(), p.y()))
                    .collect(Collectors.joining(" "));
            return "<polygon class=\"" + role + "\" points=\"" + points + "\"/>";
        }
        Shape.Label s = (Shape.Label) shape;
        return String.format(Locale.ROOT, "<text class=\"%s\" x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" text-anchor=\"%s\">%s</text>",
                role, s.x(), s.y(), s.height(), s.anchor().name().toLowerCase(Locale.ROOT), escape(s.text()));
    }

    private static String name(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }

    /** Makes a text fit for XML and HTML, inside elements and inside quoted attributes; control characters are left out. */
    public static String escape(String text) {
        return text.replaceAll("[\\p{Cc}&&[^\t\n\r]]", "")
                .replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;");
    }
}
