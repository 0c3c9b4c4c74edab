package cradlewright.ui.parts;

import cradlewright.model.base.BasePackage;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.Severity;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ValueRules;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.LoadKind;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.ui.properties.Habits;
import cradlewright.ui.properties.QuantityRow;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/**
 * Plans what becomes of pasted rows: a name that is there is changed, another one is entered anew, and a row with anything that cannot be
 * understood in one way is refused whole. Nothing is changed before the change of the plan runs. Belongs to the thread that owns the shop.
 */
final class PastePlanner {

    private static final int LONGEST_NAME = 200;

    private final ShopFile file;
    private final Car car;
    private final Piece target;
    private final Written written;
    private final PartEdits edits;

    /**
     * Ways of writing numbers.
     *
     * @param cells in the pasted cells
     * @param shown in the plan
     */
    record Written(Habits cells, Habits shown) {

        /** Reads cells with a decimal sign, shows as the reader does. */
        static Written of(Habits reader, DecimalSign sign) {
            return new Written(new Habits(reader.units(), sign.locale()), reader);
        }
    }

    /**
     * Plans for a car.
     *
     * @param target takes new parts of rows that name no piece
     * @param written how numbers are written
     */
    PastePlanner(ShopFile file, Car car, Piece target, Written written, IdSource ids) {
        this.file = file;
        this.car = car;
        this.target = target;
        this.written = written;
        this.edits = new PartEdits(file, car, ids);
    }

    /**
     * Makes the plan.
     *
     * @param rows the rows without their header
     * @param columns what the columns are
     */
    PastePlan plan(List<List<String>> rows, List<PasteColumn> columns) {
        List<PastePlan.Row> planned = new ArrayList<>();
        List<Runnable> bodies = new ArrayList<>();
        Set<String> met = new HashSet<>();
        for (int i = 0; i < rows.size(); i++) {
            Entry entry = new Entry(rows.get(i), columns);
            try {
                Optional<Runnable> body = entry.plan(met);
                body.ifPresent(bodies::add);
                PastePlan.Kind kind = entry.fresh ? PastePlan.Kind.NEW : body.isPresent() ? PastePlan.Kind.CHANGED : PastePlan.Kind.SAME;
                planned.add(new PastePlan.Row(i + 1, entry.name(), kind, entry.words()));
            } catch (PasteRefused e) {
                planned.add(new PastePlan.Row(i + 1, entry.name(), PastePlan.Kind.REFUSED, e.getMessage()));
            }
        }
        Optional<ShopChange> change = bodies.isEmpty() ? Optional.empty()
                : Optional.of(new ShopChange(NLS.bind(Messages.Change_paste, bodies.size(), Nouns.name(car)), file,
                        () -> bodies.forEach(Runnable::run)));
        return new PastePlan(List.copyOf(planned), change);
    }

    /** One row. */
    private final class Entry {
        private final Map<PartColumn, String> cells = new EnumMap<>(PartColumn.class);
        private final Map<Stage, String> ticks = new LinkedHashMap<>();
        private final List<String> words = new ArrayList<>();
        private boolean fresh;

        Entry(List<String> row, List<PasteColumn> columns) {
            for (int i = 0; i < columns.size(); i++) {
                PasteColumn column = columns.get(i);
                String cell = column.with(row.get(i));
                if (!cell.isEmpty()) {
                    column.column().ifPresent(known -> cells.put(known, cell));
                    column.stage().ifPresent(stage -> ticks.put(stage, cell));
                }
            }
        }

        String name() {
            return cells.getOrDefault(PartColumn.NAME, "");
        }

        String words() {
            return words.isEmpty() ? Messages.Paste_same : String.join("; ", words);
        }

        Optional<Runnable> plan(Set<String> met) throws PasteRefused {
            if (name().isEmpty()) {
                throw new PasteRefused(Messages.Paste_noName);
            }
            if (name().length() > LONGEST_NAME) {
                throw new PasteRefused(NLS.bind(Messages.Paste_longName, LONGEST_NAME));
            }
            String piece = cells.getOrDefault(PartColumn.PIECE, "").toLowerCase(Locale.ROOT);
            if (!met.add(piece + '\n' + name().toLowerCase(Locale.ROOT))) {
                throw new PasteRefused(Messages.Paste_twice);
            }
            Optional<EObject> there = there();
            fresh = there.isEmpty();
            EObject thing = there.isPresent() ? there.get() : make();
            Map<EStructuralFeature, Object> values = values(thing);
            Map<Stage, Boolean> turned = turned(thing);
            if (!fresh && values.isEmpty() && turned.isEmpty()) {
                return Optional.empty();
            }
            boolean add = fresh;
            Optional<Piece> into = fresh ? piece() : Optional.empty();
            return Optional.of(() -> {
                if (add) {
                    into.ifPresentOrElse(owner -> owner.getParts().add((Part) thing),
                            () -> car.getTemporaryLoads().add((TemporaryLoad) thing));
                }
                values.forEach(thing::eSet);
                turned.forEach((stage, on) -> Ticks.turn(stage, thing, on));
            });
        }

        private Optional<EObject> there() throws PasteRefused {
            String piece = cells.getOrDefault(PartColumn.PIECE, "");
            List<EObject> found = Stream.<EObject>concat(car.getPieces().stream().flatMap(each -> each.getParts().stream()),
                    car.getTemporaryLoads().stream()).filter(each -> Nouns.name(each).equalsIgnoreCase(name()))
                    .filter(each -> piece.isEmpty() || PartsTable.belongs(each).equalsIgnoreCase(piece)).toList();
            if (found.size() > 1) {
                throw new PasteRefused(NLS.bind(Messages.Paste_several, found.size()));
            }
            return found.stream().findFirst();
        }

        /** Returns the piece of a new part; nothing when it is a temporary load. */
        private Optional<Piece> piece() throws PasteRefused {
            String wanted = cells.getOrDefault(PartColumn.PIECE, "");
            if (wanted.isEmpty()) {
                return Optional.of(target);
            }
            Optional<Piece> found = car.getPieces().stream().filter(each -> Nouns.name(each).equalsIgnoreCase(wanted)).findFirst();
            if (found.isEmpty() && kind().isEmpty()) {
                throw new PasteRefused(NLS.bind(Messages.Paste_noPiece, wanted,
                        String.join(", ", car.getPieces().stream().map(Nouns::name).toList())));
            }
            return found;
        }

        private Optional<LoadKind> kind() {
            String wanted = cells.getOrDefault(PartColumn.PIECE, "");
            return Arrays.stream(LoadKind.values()).filter(kind -> kind.getLiteral().equalsIgnoreCase(wanted)).findFirst();
        }

        private EObject make() throws PasteRefused {
            Optional<Piece> piece = piece();
            if (piece.isPresent()) {
                words.add(NLS.bind(Messages.Paste_newPart, Nouns.name(piece.get())));
                return edits.named(VehicleFactory.eINSTANCE.createPart(), name());
            }
            TemporaryLoad load = edits.named(VehicleFactory.eINSTANCE.createTemporaryLoad(), name());
            load.setKind(kind().orElseThrow());
            words.add(Messages.Paste_newLoad);
            return load;
        }

        private Map<EStructuralFeature, Object> values(EObject thing) throws PasteRefused {
            PastedValues pasted = new PastedValues(cells, written.cells());
            Map<EStructuralFeature, Object> values = new LinkedHashMap<>();
            Measured mass = (Measured) thing.eGet(PartsTable.mass(thing));
            Position place = (Position) thing.eGet(PartsTable.place(thing));
            set(thing, PartsTable.mass(thing), mass, pasted.mass(PartsTable.mass(thing), mass), values);
            set(thing, PartsTable.place(thing), place, pasted.place(place), values);
            if (fresh) {
                judge(thing, BasePackage.Literals.NAMED__NAME, name());
            }
            return values;
        }

        private void set(EObject thing, EStructuralFeature feature, Object old, Object value, Map<EStructuralFeature, Object> values)
                throws PasteRefused {
            if (Objects.equals(old, value)) {
                return;
            }
            judge(thing, feature, value);
            values.put(feature, value);
            String now = QuantityRow.write(value, written.shown());
            words.add(old == null ? now : NLS.bind(Messages.Paste_instead, now, QuantityRow.write(old, written.shown())));
        }

        private void judge(EObject thing, EStructuralFeature feature, Object value) throws PasteRefused {
            for (ReadProblem problem : ValueRules.foresee(file, thing, feature, value)) {
                if (problem.severity() == Severity.ERROR) {
                    throw new PasteRefused(NLS.bind(Messages.Paste_rule, problem.what(), problem.mend()));
                }
                words.add(problem.what());
            }
        }

        private Map<Stage, Boolean> turned(EObject thing) throws PasteRefused {
            Map<Stage, Boolean> turned = new LinkedHashMap<>();
            for (Map.Entry<Stage, String> tick : ticks.entrySet()) {
                boolean on = on(tick.getValue(), tick.getKey());
                if (on != Ticks.isOn(tick.getKey(), thing)) {
                    turned.put(tick.getKey(), on);
                    words.add(NLS.bind(on ? Messages.Paste_on : Messages.Paste_off, Nouns.name(tick.getKey())));
                }
            }
            return turned;
        }

        private static boolean on(String cell, Stage stage) throws PasteRefused {
            String word = cell.toLowerCase(Locale.ROOT);
            if (List.of(Messages.Tick_yes.split("\\|")).contains(word)) {
                return true;
            }
            if (List.of(Messages.Tick_no.split("\\|")).contains(word)) {
                return false;
            }
            throw new PasteRefused(NLS.bind(Messages.Paste_tick, cell, Nouns.name(stage)));
        }
    }
}
