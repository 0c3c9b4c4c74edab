package cradlewright.analysis.check;

/**
 * Something that a remedy for something else makes worse.
 *
 * @param subject what the graver answer is about
 * @param objectName the object that it points at
 * @param check id of the check that gives it
 * @param verdict the graver answer
 * @param words its reason
 */
public record Harm(Subject subject, String objectName, String check, Verdict verdict, String words) {

    /** Returns what a graver finding says. */
    public static Harm of(Finding finding) {
        return new Harm(finding.subject(), finding.objectName(), finding.check(), finding.verdict(), finding.words());
    }

    /** Returns that something held and has no answer any more: nobody may take that for held. */
    public static Harm unanswered(Finding held) {
        return new Harm(held.subject(), held.objectName(), held.check(), Verdict.CANT_SAY, "This held and has no answer any more.");
    }
}
