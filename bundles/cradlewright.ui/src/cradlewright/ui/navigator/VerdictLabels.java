package cradlewright.ui.navigator;

import cradlewright.analysis.check.Verdict;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorstVerdicts;
import java.util.Optional;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;

/** The gravest verdict about each row, faint while it is older than the last edit. */
final class VerdictLabels extends ColumnLabelProvider {

    private final Control ground;
    private WorstVerdicts worst = WorstVerdicts.NONE;
    private boolean old;

    /** Picks colours that can be read on the ground of a control. */
    VerdictLabels(Control ground) {
        this.ground = ground;
    }

    /** Takes what is known now. */
    void update(Optional<WorkingShop> shop) {
        worst = shop.filter(open -> open.state() != WorkingShop.State.HELD_BACK)
                .flatMap(open -> open.answers().map(answers -> WorstVerdicts.of(answers, open.snapshot()))).orElse(WorstVerdicts.NONE);
        old = shop.map(WorkingShop::workingOut).orElse(false);
    }

    /** Returns the verdict about a row, if one is shown. */
    Optional<Verdict> verdict(Object row) {
        return worst.of(ShopLabels.id(row));
    }

    @Override
    public String getText(Object row) {
        if (row instanceof ShopFile) {
            return Messages.Navigator_unreadable;
        }
        String word = verdict(row).map(VerdictLook::word).orElse("");
        return worst.graverLater(ShopLabels.id(row)) ? NLS.bind(Messages.Navigator_today, word) : word;
    }

    @Override
    public Image getImage(Object row) {
        return verdict(row).map(VerdictLook::image).orElse(null);
    }

    @Override
    public Color getForeground(Object row) {
        Color paper = ground.getBackground();
        return old ? VerdictLook.faint(paper) : verdict(row).map(verdict -> VerdictLook.color(verdict, paper)).orElse(null);
    }

    @Override
    public String getToolTipText(Object row) {
        String later = worst.later(ShopLabels.id(row)).map(VerdictLook::word).orElse("");
        return verdict(row).map(verdict -> old ? NLS.bind(Messages.Navigator_old, verdict.word())
                : later.isEmpty() ? null : NLS.bind(Messages.Navigator_later, verdict.word(), later)).orElse(null);
    }
}
