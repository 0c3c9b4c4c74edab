package cradlewright.ui.wizards;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** What the checks say to a planned dolly under the heaviest shell; asked in the background a moment after the last edit. */
final class TrialAnswer {

    private static final int QUIET = 300;
    private static final int FIELDS = 4;
    private static final int LINES = 6;
    private static final int WIDTH = 520;

    private final CLabel verdict;
    private final Text reasons;
    private Optional<Question> asked = Optional.empty();
    private Runnable waiting = () -> { };
    private double massAsked;

    TrialAnswer(Composite parent) {
        verdict = new CLabel(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).span(FIELDS, 1).applyTo(verdict);
        reasons = new Text(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        Spoken.name(reasons, Messages.Trial_reasons);
        GridDataFactory.fillDefaults().grab(true, true).span(FIELDS, 1).hint(WIDTH, LINES * reasons.getLineHeight()).applyTo(reasons);
        verdict.addListener(SWT.Dispose, event -> giveUp());
    }

    private void giveUp() {
        verdict.getDisplay().timerExec(-1, waiting);
        asked.ifPresent(Question::giveUp);
        asked = Optional.empty();
    }

    /** Shows that there is no answer, and why. */
    void nothing(String why) {
        giveUp();
        massAsked = 0;
        say(null, why, "");
    }

    /**
     * Asks what would be so.
     *
     * @param plan the dolly
     * @param mass what stands on it, kg
     * @param samePlan whether the plan is the one that was asked about last
     */
    void ask(DollyPlan plan, double mass, boolean samePlan) {
        if (samePlan && mass == massAsked) {
            return;
        }
        giveUp();
        massAsked = mass;
        say(null, Messages.Trial_working, "");
        waiting = () -> {
            TrialLoad load = new TrialLoad(plan, mass);
            asked = WorkingShop.current().map(shop -> shop.foresee(load.change(), load::isMeant, new Answer<ShopAnswers>() {
                @Override
                public void is(ShopAnswers answers) {
                    show(answers);
                }

                @Override
                public void failed(RuntimeException why) {
                    Answer.super.failed(why);
                    say(null, NLS.bind(Messages.Trial_failed, why.getMessage()), "");
                }
            }));
        };
        verdict.getDisplay().timerExec(QUIET, waiting);
    }

    private void show(ShopAnswers answers) {
        List<Finding> worst = answers.findings().stream().filter(finding -> finding.verdict() != Verdict.HOLDS)
                .sorted(Comparator.comparing(Finding::verdict).reversed()).toList();
        String all = worst.stream()
                .map(found -> NLS.bind(Messages.Trial_line, new Object[] {found.verdict().word(), found.objectName(), found.words()}))
                .distinct().collect(Collectors.joining("\n"));
        say(answers.worst(), NLS.bind(Messages.Trial_verdict, answers.worst().word(), answers.findings().size()), all);
    }

    private void say(Verdict found, String words, String why) {
        if (verdict.isDisposed()) {
            return;
        }
        verdict.setImage(found == null ? null : VerdictLook.image(found));
        Color ground = verdict.getBackground();
        verdict.setForeground(found == null ? VerdictLook.faint(ground) : VerdictLook.color(found, ground));
        verdict.setText(words);
        reasons.setText(why);
    }
}
