package cradlewright.report.scene;

import java.util.Locale;
import java.util.stream.Collectors;

/** Paints a scene as SVG with classes named after the roles; line widths and patterns differ too, so that it reads without colour. */
public final class SvgPainter {

    /** Style sheet for the classes, once per page; contrast of every text at least 4.5 to 1 on white. */
    public static final String STYLE = """
            svg.scene{font-family:system-ui,sans-serif;background:#fff;max-width:100%;height:auto}
            .outline{fill:none;stroke:#5b6470;stroke-width:2px;vector-effect:non-scaling-stroke}
            .structure{fill:none;stroke:#8a93a0;stroke-width:4px;vector-effect:non-scaling-stroke}
            .support{fill:#1f5c8b;stroke:#0d2f4a;stroke-width:1px;vector-effect:non-scaling-stroke}
            .support_unloaded{fill:#fff;stroke:#0d2f4a;stroke-width:2px;stroke-dasharray:4 3;vector-effect:non-scaling-stroke}
            .support_stop{fill:#9b2226;stroke:#3f0d10;stroke-width:3px;vector-effect:non-scaling-stroke}
            .castor{fill:#fff;stroke:#3d4451;stroke-width:3px;vector-effect:non-scaling-stroke}
            .balance{fill:none;stroke:#7a4a00;stroke-width:2px;vector-effect:non-scaling-stroke}
            .tip_edge{fill:none;stroke:#3d4451;stroke-width:1px;stroke-dasharray:8 4;vector-effect:non-scaling-stroke}
            .dimension{fill:none;stroke:#3d4451;stroke-width:1px;vector-effect:non-scaling-stroke}
            .text{fill:#20252c}.text_strong{fill:#20252c;font-weight:700}
            """;

    /** Returns the scene as one svg element. */
    public String paint(Scene scene) {
        String body = scene.shapes().stream().map(SvgPainter::shape).collect(Collectors.joining("\n"));
        return String.format(Locale.ROOT,
                "<svg class=\"scene\" role=\"img\" aria-label=\"%s\" viewBox=\"%.0f %.0f %.0f %.0f\" width=\"760\">\n%s\n</svg>",
                escape(scene.title()), scene.left(), scene.top(), scene.width(), scene.height(), body);
    }

    private static String shape(Shape shape) {
        String role = shape.role().name().toLowerCase(Locale.ROOT);
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

    /** Makes a text fit for XML and HTML, inside elements and inside quoted attributes; control characters are left out. */
    public static String escape(String text) {
        return text.replaceAll("[\\p{Cc}&&[^\t\n\r]]", "")
                .replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;");
    }
}
