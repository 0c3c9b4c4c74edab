package cradlewright.ui.parts;

import cradlewright.analysis.standing.StageWeight;
import cradlewright.analysis.standing.StageWeightsKey;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What the car weighs in each stage, as the checks work it out. While that is being done the numbers before stay, faint. */
final class StageFoot {

    /** Least widths of a column with words and of one with a number and its give or take, px. */
    private static final int WORDS = 80;
    private static final int NUMBER = 125;

    private final WorkingShop shop;
    private final String carId;
    private final Composite frame;
    private final Label title;
    private final TableViewer table;
    private final TableColumnLayout columns = new TableColumnLayout();
    private Optional<Question> running = Optional.empty();
    private List<StageWeight> weights = List.of();

    StageFoot(Composite parent, WorkingShop shop, String carId) {
        this.shop = shop;
        this.carId = carId;
        frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(0, 2).applyTo(frame);
        title = new Label(frame, SWT.NONE);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
        Composite around = new Composite(frame, SWT.NONE);
        around.setLayout(columns);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(around);
        table = new TableViewer(around, SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        Spoken.name(table.getTable(), Messages.Foot_title);
        column(Messages.Foot_stage, 7, WORDS, FootLine::name);
        column(Messages.Foot_mass, 5, NUMBER, FootLine::mass);
        column(Messages.Foot_x, 5, NUMBER, FootLine::x);
        column(Messages.Foot_y, 4, NUMBER, FootLine::y);
        column(Messages.Foot_z, 4, NUMBER, FootLine::z);
        column(Messages.Foot_missing, 5, WORDS, FootLine::missing);
        column(Messages.Foot_guessedTitle, 4, WORDS, FootLine::guessed);
        ask();
    }

    private void column(String heading, int share, int least, Function<FootLine, String> text) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.getColumn().setText(heading);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return text.apply((FootLine) row);
            }

            @Override
            public String getToolTipText(Object row) {
                return getText(row).isEmpty() ? null : getText(row).strip();
            }

            @Override
            public Color getForeground(Object row) {
                return running.isPresent() ? VerdictLook.faint(table.getTable().getBackground()) : null;
            }
        });
        columns.setColumnData(column.getColumn(), new ColumnWeightData(share, least));
    }

    Composite control() {
        return frame;
    }

    /** Asks anew, after an edit. */
    void ask() {
        giveUp();
        running = Optional.of(shop.ask(new StageWeightsKey(carId), new Answer<>() {
            @Override
            public void is(List<StageWeight> value) {
                weights = value;
                end(value.isEmpty() ? Messages.Foot_none : Messages.Foot_title);
            }

            @Override
            public void failed(RuntimeException why) {
                Answer.super.failed(why);
                weights = List.of();
                end(NLS.bind(Messages.Foot_broken, why.getMessage()));
            }
        }));
        say(Messages.Foot_again);
        show();
    }

    private void end(String words) {
        running = Optional.empty();
        if (!frame.isDisposed()) {
            say(words);
            show();
        }
    }

    private void say(String words) {
        title.setText(words.replace("&", "&&"));
    }

    /** Shows what is known in the units of the reader. */
    void show() {
        table.setInput(FootLine.of(weights, ReaderUnits.current()));
    }

    void giveUp() {
        running.ifPresent(Question::giveUp);
        running = Optional.empty();
    }
}
