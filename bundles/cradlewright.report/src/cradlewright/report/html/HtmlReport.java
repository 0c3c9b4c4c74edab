package cradlewright.report.html;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.overview.CarOverview;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.Alike;
import cradlewright.report.FindingWords;
import cradlewright.report.Silent;
import cradlewright.report.UnitSystem;
import cradlewright.report.car.CarDrawing;
import cradlewright.report.car.VisitSight;
import cradlewright.report.car.VisitSightKey;
import cradlewright.report.dolly.DollyDrawing;
import cradlewright.report.dolly.DollySight;
import cradlewright.report.dolly.DollySightKey;
import cradlewright.report.dolly.DollySketchKey.VisitOn;
import cradlewright.report.dolly.DollySketchKey;
import cradlewright.report.scene.SvgPainter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One page: first one line a car, then one for everything with its verdict, then each with its drawing and its reasons, then the cautions.
 */
public final class HtmlReport {

    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en">
            <head><meta charset="utf-8"/><meta name="viewport" content="width=device-width"/>
            <meta name="color-scheme" content="light dark"/>
            <title>""";

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public HtmlReport(UnitSystem units) {
        this.units = units;
    }

    /**
     * Writes {@code index.html} into a folder, which is made when missing.
     *
     * @param reader over the snapshot that the answers are for
     */
    public void write(ShopAnswers answers, Reader reader, LocalDate day, Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("index.html"), page(answers, reader, day), StandardCharsets.UTF_8);
    }

    /** Works out what the page shows about a subject beside the answers, so that it is at hand when the page is written. */
    public static void prepare(Subject subject, Reader reader) {
        if (subject.scope() == Scope.VISIT) {
            sight(subject, reader).flatMap(sight -> dolly(sight, reader));
        }
    }

    /** Returns what there is to see of the dolly under a car. */
    private static Optional<DollySight> dolly(VisitSight sight, Reader reader) {
        VisitOn on = new VisitOn(sight.standing().car().id(), sight.standing().visit().id());
        return sight.standing().dolly().flatMap(dolly -> reader.read(new DollySightKey(new DollySketchKey(dolly.id(), Optional.of(on),
                Optional.empty()))));
    }

    private static Optional<VisitSight> sight(Subject subject, Reader reader) {
        return reader.read(new VisitSightKey(subject.ownerId(), subject.visitId().orElseThrow()));
    }

    private String page(ShopAnswers answers, Reader reader, LocalDate day) {
        StringBuilder out = new StringBuilder();
        out.append(HEAD).append(escape(answers.shop())).append("</title>\n<style>\n").append(PageStyle.SHEET).append(SvgPainter.STYLE)
                .append("</style></head>\n<body>\n<h1>").append(escape(answers.shop())).append(", ").append(day).append("</h1>\n");
        cars(out, CarOverview.of(answers, reader));
        overview(out, answers);
        for (int i = 0; i < answers.subjects().size(); i++) {
            subject(out, answers, answers.subjects().get(i), i, reader);
        }
        cautions(out, answers);
        return out.append("</body>\n</html>\n").toString();
    }

    private static void cars(StringBuilder out, List<CarOverview> cars) {
        if (cars.isEmpty()) {
            return;
        }
        out.append("<table>\n<tr><th>Answer</th><th>Car</th><th>Where it stands, on what</th><th>What it waits for</th></tr>\n");
        for (CarOverview car : cars) {
            out.append("<tr><td>").append(car.verdict().map(HtmlReport::badge).orElse("-")).append("</td><td>")
                    .append(escape(car.line().name())).append("</td><td>").append(escape(car.line().standing())).append("</td><td>")
                    .append(escape(car.line().waiting())).append("</td></tr>\n");
        }
        out.append("</table>\n<p></p>\n");
    }

    private static void overview(StringBuilder out, ShopAnswers answers) {
        out.append("<table>\n<tr><th>Answer</th><th>What</th><th>Gravest reason</th></tr>\n");
        for (int i = 0; i < answers.subjects().size(); i++) {
            Subject subject = answers.subjects().get(i);
            List<Finding> findings = answers.about(subject);
            if (findings.isEmpty()) {
                continue;
            }
            Finding gravest = findings.get(0);
            String reason = gravest.verdict() == Verdict.HOLDS ? "" : Alike.gather(findings).get(0).reason();
            out.append("<tr><td>").append(badge(gravest.verdict())).append("</td><td><a href=\"#s").append(i).append("\">")
                    .append(escape(subject.label())).append("</a></td><td>").append(escape(reason)).append("</td></tr>\n");
        }
        String silent = Silent.words(answers);
        if (!silent.isEmpty()) {
            out.append("<tr><td>-</td><td colspan=\"2\">").append(escape(silent)).append("</td></tr>\n");
        }
        out.append("</table>\n");
    }

    private void subject(StringBuilder out, ShopAnswers answers, Subject subject, int number, Reader reader) {
        List<Finding> findings = answers.about(subject);
        if (findings.isEmpty()) {
            return;
        }
        String sheet = subject.scope() == Scope.VISIT ? " class=\"sheet\"" : "";
        out.append("<h2 id=\"s").append(number).append('"').append(sheet).append('>').append(escape(subject.label())).append(' ')
                .append(badge(answers.worst(subject))).append("</h2>\n");
        if (subject.scope() == Scope.VISIT) {
            drawing(out, reader, subject, findings);
        }
        if (subject.scope() == Scope.DOLLY) {
            empty(out, answers, reader, subject.ownerId());
        }
        out.append("<table>\n<tr><th>Answer</th><th>Reason</th><th>Rests on</th></tr>\n");
        Alike.gather(findings).forEach(alike -> row(out, alike));
        out.append("</table>\n");
    }

    private void drawing(StringBuilder out, Reader reader, Subject subject, List<Finding> findings) {
        sight(subject, reader)
                .filter(sight -> !sight.standing().supports().isEmpty())
                .map(sight -> new CarDrawing(units).draw(sight.withFindings(findings, false)))
                .ifPresent(scene -> out.append(new SvgPainter().paint(scene)).append('\n'));
        sight(subject, reader).flatMap(sight -> dolly(sight, reader))
                .ifPresent(dolly -> out.append(new SvgPainter().paint(new DollyDrawing(units).draw(dolly))).append('\n'));
    }

    /** A dolly that no car of the report stands on is drawn empty. */
    private void empty(StringBuilder out, ShopAnswers answers, Reader reader, String dollyId) {
        boolean used = answers.subjects().stream().filter(subject -> subject.scope() == Scope.VISIT)
                .flatMap(subject -> sight(subject, reader).stream()).flatMap(sight -> sight.standing().dolly().stream())
                .anyMatch(dolly -> dolly.id().equals(dollyId));
        if (!used) {
            reader.read(new DollySightKey(new DollySketchKey(dollyId, Optional.empty(), Optional.empty())))
                    .ifPresent(dolly -> out.append(new SvgPainter().paint(new DollyDrawing(units).draw(dolly))).append('\n'));
        }
    }

    private void row(StringBuilder out, Alike alike) {
        Finding finding = alike.first();
        out.append("<tr><td>").append(badge(finding.verdict())).append("</td><td>").append(escape(alike.reason()));
        alike.numbers(units).forEach(numbers -> line(out, "", numbers));
        line(out, "when: ", finding.situation());
        alike.missing().forEach(missing -> line(out, "missing: ", missing));
        alike.remedies().forEach(remedy -> out.append("<br/><span class=\"act\">").append(FindingWords.head(remedy))
                .append(": ").append(escape(FindingWords.remedy(finding, remedy)))
                .append("</span>"));
        out.append("</td><td class=\"small\">").append(escape(FindingWords.basis(finding)))
                .append("<br/>").append(escape(finding.check())).append("</td></tr>\n");
    }

    private static void line(StringBuilder out, String head, String text) {
        if (!text.isEmpty()) {
            out.append("<br/><span class=\"small\">").append(head).append(escape(text)).append("</span>");
        }
    }

    private static void cautions(StringBuilder out, ShopAnswers answers) {
        out.append("<h2>Cautions</h2>\n<ul>\n");
        FindingWords.cautions(answers.findings()).forEach(caution -> out.append("<li>").append(escape(caution)).append("</li>\n"));
        out.append("</ul>\n");
    }

    private static String badge(Verdict verdict) {
        return "<span class=\"v " + verdict.name().toLowerCase(Locale.ROOT) + "\">" + escape(verdict.word()) + "</span>";
    }

    private static String escape(String text) {
        return SvgPainter.escape(text);
    }
}
