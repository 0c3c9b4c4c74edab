package cradlewright.ui.warnings;

import cradlewright.analysis.check.Finding;
import cradlewright.report.FindingWords;
import cradlewright.report.UnitSystem;
import java.util.List;
import org.eclipse.osgi.util.NLS;

/**
 * One answer.
 *
 * @param finding the answer
 * @param key stays the same from one run of the checks to the next
 * @param what where it is and the reason, in words
 * @param numbers what is asked and what can be given; empty for none
 */
record AnswerRow(Finding finding, String key, String what, String numbers) {

    /**
     * Makes the row of an answer.
     *
     * @param thing name of the car, dolly or gear that it is about
     * @param before the rows of its group so far
     * @param planned whether it is about a visit that is still to come
     */
    static AnswerRow of(Finding finding, Gathering gathering, String thing, List<AnswerRow> before, boolean planned,
            UnitSystem units) {
        String place = String.join("|", finding.check(), finding.subject().ownerId(), finding.subject().visitId().orElse(""),
                finding.objectId());
        long same = before.stream().filter(row -> row.key().startsWith(place + '|')).count();
        String label = gathering == Gathering.CHECK ? finding.subject().label() : within(finding.subject().label(), thing);
        String where = planned ? NLS.bind(Messages.Warnings_planned, label) : label;
        String reason = FindingWords.reason(finding);
        return new AnswerRow(finding, place + '|' + same, where.isEmpty() ? reason : where + ": " + reason,
                FindingWords.numbers(finding, units));
    }

    /** Returns what a label says beside the name of the thing. */
    private static String within(String label, String thing) {
        return label.equals(thing) ? "" : label.startsWith(thing + ", ") ? label.substring(thing.length() + 2) : label;
    }
}
