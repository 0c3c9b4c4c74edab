package cradlewright.ui.ask;

import cradlewright.analysis.change.PartOffAnswer;
import cradlewright.analysis.change.PartOffQuestion;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.report.sheet.PartOffSheet;
import cradlewright.report.sheet.Sheet;
import cradlewright.report.sheet.SheetBuilder;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;

/** May this part come off now? Nothing is saved. */
final class PartOffPage extends AskPage {

    private static final int NAMED = 12;

    private final ProposedField field;
    private Optional<PartChoice> asked = Optional.empty();

    PartOffPage(Composite parent) {
        super(parent, 1, Messages.Part_invitation);
        field = new ProposedField(input(), Messages.Part_hint,
                () -> shop().map(open -> PartChoice.all(open.snapshot())).orElse(List.of()).stream().map(PartChoice::label).toList(),
                this::askFor);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(field.control());
    }

    /** Asks about the part that somebody may mean by a text. */
    void askFor(String text) {
        List<PartChoice> found = shop().map(open -> PartChoice.matching(PartChoice.all(open.snapshot()), text)).orElse(List.of());
        if (found.size() == 1) {
            askFor(found.get(0));
        } else {
            forget();
            ask();
            pane().show(which(text, found));
        }
    }

    /** Asks about a part by its id; does nothing when there is none of it. */
    void askForId(String partId) {
        shop().stream().flatMap(open -> PartChoice.all(open.snapshot()).stream()).filter(choice -> choice.partId().equals(partId))
                .findFirst().ifPresent(this::askFor);
    }

    private void askFor(PartChoice choice) {
        asked = Optional.of(choice);
        field.control().setText(choice.label());
        field.control().selectAll();
        ask();
    }

    private static Sheet which(String text, List<PartChoice> found) {
        if (found.isEmpty()) {
            return new SheetBuilder().sentence(NLS.bind(Messages.Part_none, text)).build();
        }
        SheetBuilder out = new SheetBuilder().sentence(NLS.bind(Messages.Part_several, text));
        found.stream().limit(NAMED).forEach(choice -> out.point(choice.label()));
        return out.sentence(found.size() > NAMED ? NLS.bind(Messages.Part_more, found.size() - NAMED) : "").build();
    }

    @Override
    void forget() {
        asked = Optional.empty();
    }

    @Override
    Optional<Question> begin(WorkingShop open) {
        ShopSnapshot snapshot = open.snapshot();
        Optional<PartChoice.Found> found = asked.flatMap(choice -> choice.in(snapshot));
        if (found.isEmpty()) {
            asked.ifPresent(choice -> pane().say(NLS.bind(Messages.Part_gone, choice.label())));
            return Optional.empty();
        }
        PartOffQuestion question = new PartOffQuestion(snapshot, found.get().car(), found.get().part(), open.catalogue());
        PartOffSheet sheet = new PartOffSheet(ReaderUnits.current());
        String words = NLS.bind(Messages.Part_question, new Object[] {found.get().part().name(), found.get().car().name(),
            snapshot.today()});
        if (question.alreadyOff()) {
            pane().show(new SheetBuilder().sentence(words).sentence(Messages.Part_off).build());
            return Optional.empty();
        }
        Optional<String> missing = question.whyNot();
        if (missing.isPresent()) {
            pane().show(sheet.cantSay(words, missing.get()));
            return Optional.empty();
        }
        return Optional.of(open.askChecks((checks, progress) -> question.ask(progress),
                this.<List<PartOffAnswer>>showing(answers -> sheet.write(words, answers))));
    }

    @Override
    void focus() {
        field.control().setFocus();
    }
}
