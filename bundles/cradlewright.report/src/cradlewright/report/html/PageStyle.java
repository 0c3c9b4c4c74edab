package cradlewright.report.html;

/**
 * How the page looks: on a light screen, on a dark one, and in black on white on paper. Many printers and browsers leave out backgrounds,
 * so there a verdict is told by its word and its border alone. Contrast of every text at least 4.5 to 1 (WCAG 2.2, 1.4.3).
 */
final class PageStyle {

    /** The style sheet. */
    static final String SHEET = """
            body{font-family:system-ui,sans-serif;color:#20252c;background:#fff}
            body{margin:2rem auto;max-width:62rem;padding:0 1rem;line-height:1.45}
            h1{font-size:1.6rem}h2{font-size:1.25rem;margin-top:2.5rem;border-top:2px solid #c9ced6;padding-top:1rem}
            table{border-collapse:collapse;width:100%}
            td,th{text-align:left;padding:.35rem .6rem;border-bottom:1px solid #dfe3e8;vertical-align:top}
            .v{font-weight:700;white-space:nowrap;padding:.1rem .5rem;border-radius:.2rem;border:2px solid}
            .stop{background:#9b2226;color:#fff;border-color:#9b2226}
            .cant_say{background:#fff;color:#20252c;border-color:#20252c;border-style:dashed}
            .tight{background:#ffe8b3;color:#3d2c00;border-color:#7a4a00}
            .holds{background:#fff;color:#14532d;border-color:#14532d}
            td.small{width:30%}.act{font-weight:600}
            .small{color:#4a525e;font-size:.9rem}
            a{color:#1f5c8b}
            @media screen and (prefers-color-scheme:dark){
            body{color:#e6e9ee;background:#1e2227}
            h2{border-color:#4a525e}
            td,th{border-color:#3a424d}
            .stop{background:#a8262b;color:#fff;border-color:#ff9a9e}
            .cant_say{background:#1e2227;color:#e6e9ee;border-color:#e6e9ee}
            .tight{background:#5a3d00;color:#ffe8b3;border-color:#ffc861}
            .holds{background:#1e2227;color:#86e0a8;border-color:#86e0a8}
            .small{color:#b9c0ca}
            a{color:#8ec5f0}
            }
            @media print{
            body{color:#000;background:#fff;margin:0;max-width:none}
            h2{border-color:#000;break-after:avoid}
            h2.sheet{break-before:page}
            td,th{border-color:#000}
            tr,svg{break-inside:avoid}
            .stop{background:#fff;color:#000;border-color:#000;border-style:double;border-width:.4rem}
            .cant_say{background:#fff;color:#000;border-color:#000}
            .tight{background:#fff;color:#000;border-color:#000}
            .holds{background:#fff;color:#000;border-color:#fff}
            .small{color:#000}
            a{color:#000}
            }
            """;

    private PageStyle() {
    }
}
