package cradlewright.ui.ask;

import cradlewright.analysis.change.LiftAnswer;
import cradlewright.analysis.change.LiftAnswerKey;
import cradlewright.analysis.change.LiftQuestion;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import cradlewright.report.sheet.LiftSheet;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Will this lift, these straps take the car as it is now, and at what reading of the scales does raising stop? Nothing is saved. */
final class LiftPage extends AskPage {

    private final Combo car;
    private final Combo way;
    private List<CarFacts> cars = List.of();
    private List<LiftQuestion> ways = List.of();

    LiftPage(Composite parent) {
        super(parent, 4, Messages.Lift_invitation);
        new Label(input(), SWT.NONE).setText(Messages.Lift_car);
        car = combo(Messages.Lift_car, this::chooseCar);
        new Label(input(), SWT.NONE).setText(Messages.Lift_way);
        way = combo(Messages.Lift_way, this::ask);
    }

    private Combo combo(String name, Runnable chosen) {
        Combo combo = new Combo(input(), SWT.DROP_DOWN | SWT.READ_ONLY);
        Spoken.name(combo, name);
        combo.addListener(SWT.Selection, event -> chosen.run());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        return combo;
    }

    @Override
    void show(Optional<WorkingShop> shown) {
        super.show(shown);
        refresh();
    }

    /** Takes cars and ways of lifting as they are now; the one chosen stays chosen. */
    void refresh() {
        Optional<String> chosen = car.getSelectionIndex() < 0 ? Optional.empty() : Optional.of(cars.get(car.getSelectionIndex()).id());
        cars = shop().map(open -> open.snapshot().all(CarFacts.class)).orElse(List.of());
        car.setItems(cars.stream().map(Fact::name).toArray(String[]::new));
        chosen.ifPresent(this::select);
        fillWays(way.getText());
    }

    private void select(String carId) {
        for (int i = 0; i < cars.size(); i++) {
            if (cars.get(i).id().equals(carId)) {
                car.select(i);
            }
        }
    }

    private void fillWays(String chosen) {
        ways = shop().filter(open -> car.getSelectionIndex() >= 0)
                .map(open -> LiftQuestion.of(open.snapshot(), cars.get(car.getSelectionIndex()))).orElse(List.of());
        way.setItems(ways.stream().map(LiftPage::label).toArray(String[]::new));
        way.setEnabled(!ways.isEmpty());
        int again = way.indexOf(chosen);
        if (!ways.isEmpty()) {
            way.select(Math.max(again, 0));
        }
    }

    private static String label(LiftQuestion question) {
        return NLS.bind(Messages.Lift_label, new Object[] {question.visit().name(), question.setup().name(),
            question.gear().map(Fact::name).orElse(Messages.Lift_noGear)});
    }

    private void chooseCar() {
        fillWays("");
        ask();
    }

    /** Asks about a car by its id. */
    void askFor(String carId) {
        select(carId);
        chooseCar();
    }

    @Override
    void forget() {
        car.deselectAll();
        fillWays("");
    }

    @Override
    Optional<Question> begin(WorkingShop open) {
        if (car.getSelectionIndex() < 0) {
            return Optional.empty();
        }
        if (ways.isEmpty()) {
            pane().say(NLS.bind(Messages.Lift_none, car.getText()));
            return Optional.empty();
        }
        LiftQuestion question = ways.get(way.getSelectionIndex());
        LiftAnswerKey key = new LiftAnswerKey(open.catalogue(), question.subject());
        Answer<LiftAnswer> answer = showing(value -> new LiftSheet(ReaderUnits.current()).write(question, value));
        Optional<Change> change = question.change(open.snapshot());
        return Optional.of(change.map(then -> open.ask(then, key, answer)).orElseGet(() -> open.ask(key, answer)));
    }

    @Override
    void focus() {
        car.setFocus();
    }
}
