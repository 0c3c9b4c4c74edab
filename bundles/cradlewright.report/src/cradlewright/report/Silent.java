package cradlewright.report;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.run.ShopAnswers;
import java.util.List;
import java.util.stream.Collectors;

/** What no check had an answer about, so that nobody takes silence for an answer. */
public final class Silent {

    /** So many are named; of more only the number is told. */
    private static final int NAMED = 6;

    private Silent() {
    }

    /** Returns the sentence, empty when everything has an answer; a car has one where one of its visits has. */
    public static String words(ShopAnswers answers) {
        List<Subject> silent = answers.subjects().stream().filter(subject -> answers.about(subject).isEmpty())
                .filter(subject -> subject.scope() != Scope.CAR || visits(answers, subject).isEmpty()).toList();
        if (silent.isEmpty()) {
            return "";
        }
        return silent.size() > NAMED ? silent.size() + " others: none of the questions asked arises there."
                : silent.stream().map(Subject::label).collect(Collectors.joining("; ")) + ": none of the questions asked arises here.";
    }

    private static List<Subject> visits(ShopAnswers answers, Subject car) {
        return answers.subjects().stream().filter(subject -> subject.scope() == Scope.VISIT && subject.ownerId().equals(car.ownerId()))
                .toList();
    }
}
