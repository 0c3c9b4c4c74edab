package cradlewright.ui.ask;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.lookup.SupportCard;
import cradlewright.analysis.lookup.SupportCardsKey;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.sheet.Sheet;
import cradlewright.report.sheet.SupportSheet;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;

/** Everything about a support, by its name. */
final class SupportPage extends AskPage {

    private final ProposedField field;
    private String asked = "";
    private List<SupportCard> found = List.of();

    SupportPage(Composite parent) {
        super(parent, 1, Messages.Support_invitation);
        field = new ProposedField(input(), Messages.Support_hint, () -> shop().map(SupportPage::names).orElse(List.of()),
                this::askFor);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(field.control());
    }

    /** Returns the names that can be asked for. */
    static List<String> names(WorkingShop open) {
        return SupportCardsKey.names(open.snapshot().all(CarFacts.class).stream());
    }

    /** Asks about all supports of a name, or about that of one car when words of its name follow. */
    void askFor(String name) {
        asked = name.strip();
        field.control().setText(asked);
        field.control().selectAll();
        ask();
    }

    @Override
    void forget() {
        asked = "";
        found = List.of();
    }

    @Override
    Optional<Question> begin(WorkingShop open) {
        SupportWish wish = SupportWish.of(asked, names(open));
        return asked.isEmpty() ? Optional.empty() : Optional.of(open.ask(new SupportCardsKey(wish.name()), showing(cards -> {
            found = wish.among(cards);
            return sheet(open);
        })));
    }

    /** Shows the answers of the checks that have come in since. */
    void answered() {
        if (!found.isEmpty()) {
            shop().ifPresent(open -> pane().show(sheet(open)));
        }
    }

    private Sheet sheet(WorkingShop open) {
        Optional<ShopAnswers> answers = open.workingOut() ? Optional.empty() : open.answers();
        return new SupportSheet(ReaderUnits.current()).write(asked, found, answers);
    }

    @Override
    void focus() {
        field.control().setFocus();
    }
}
