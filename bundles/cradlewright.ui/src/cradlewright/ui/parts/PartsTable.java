package cradlewright.ui.parts;

import cradlewright.model.base.BasePackage;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.ui.properties.Chosen;
import cradlewright.ui.properties.Coordinate;
import cradlewright.ui.properties.Habits;
import cradlewright.ui.properties.QuantityRow;
import cradlewright.ui.properties.Reply;
import cradlewright.ui.properties.TypedRow;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/**
 * The cells of the parts list of one car: what stands in them, and what becomes of what is typed there. Belongs to the thread that owns
 * the shop.
 */
final class PartsTable {

    private final ShopFolder folder;
    private final Car car;
    private final Habits habits;
    private final Function<EObject, String> where;

    /**
     * Makes the list of a car.
     *
     * @param where says where a part or load is today
     */
    PartsTable(ShopFolder folder, Car car, Habits habits, Function<EObject, String> where) {
        this.folder = folder;
        this.car = car;
        this.habits = habits;
        this.where = where;
    }

    ShopFolder folder() {
        return folder;
    }

    Car car() {
        return car;
    }

    Habits habits() {
        return habits;
    }

    /** Returns all parts, piece by piece, then the temporary loads. */
    List<EObject> things() {
        List<EObject> all = new ArrayList<>();
        car.getPieces().forEach(piece -> all.addAll(piece.getParts()));
        all.addAll(car.getTemporaryLoads());
        return all;
    }

    /** Tells whether a row is a part or a temporary load, not a heading. */
    static boolean isThing(Object row) {
        return row instanceof Part || row instanceof TemporaryLoad;
    }

    static EAttribute mass(EObject thing) {
        return thing instanceof Part ? VehiclePackage.Literals.PART__MASS : VehiclePackage.Literals.TEMPORARY_LOAD__MASS;
    }

    static EAttribute place(EObject thing) {
        return thing instanceof Part ? VehiclePackage.Literals.PART__POSITION : VehiclePackage.Literals.TEMPORARY_LOAD__POSITION;
    }

    private Chosen chosen(EObject thing) {
        return new Chosen(folder, List.of(thing), habits);
    }

    private QuantityRow massRow(EObject thing) {
        return new QuantityRow(chosen(thing), mass(thing));
    }

    private QuantityRow placeRow(EObject thing) {
        return new QuantityRow(chosen(thing), place(thing));
    }

    private Coordinate coordinate(EObject thing, PartColumn column) {
        return new Coordinate(chosen(thing), place(thing), Coordinate.Axis.valueOf(column.name()));
    }

    /** Returns what stands in a cell; what is not known is empty, never zero. */
    String text(EObject thing, PartColumn column) {
        return switch (column) {
            case NAME -> Nouns.name(thing);
            case MASS -> massRow(thing).value();
            case GIVE -> size(massRow(thing));
            case SOURCE -> massRow(thing).source().map(Source::word).orElse("");
            case X, Y, Z -> coordinate(thing, column).text();
            case PLACE_GIVE -> size(placeRow(thing));
            case PIECE -> belongs(thing);
            case WHERE -> where.apply(thing);
        };
    }

    /** A give or take that nobody stated but that the source stands for is in brackets. */
    private static String size(QuantityRow row) {
        return row.usual().isEmpty() ? row.giveOrTake() : NLS.bind(Messages.Cell_usual, row.usual());
    }

    /** Returns what stands in the field when a cell is edited: what is given only, nothing that stands in for it. */
    String typed(EObject thing, PartColumn column) {
        return switch (column) {
            case GIVE -> massRow(thing).giveOrTake();
            case PLACE_GIVE -> placeRow(thing).giveOrTake();
            case NAME -> name(thing).text();
            default -> text(thing, column);
        };
    }

    private TypedRow name(EObject thing) {
        return new TypedRow(chosen(thing), BasePackage.Literals.NAMED__NAME);
    }

    /** Returns the piece that a part belongs to, or what a temporary load is. */
    static String belongs(EObject thing) {
        if (thing instanceof TemporaryLoad load) {
            return load.getKind() == null ? "" : load.getKind().getLiteral();
        }
        return Nouns.name(thing.eContainer());
    }

    /** Tells whether a cell may be typed over. */
    boolean editable(EObject thing, PartColumn column) {
        boolean known = switch (column) {
            case NAME, MASS, X, Y, Z -> true;
            case GIVE, SOURCE -> massRow(thing).anyKnown();
            case PLACE_GIVE -> placeRow(thing).anyKnown();
            case PIECE, WHERE -> false;
        };
        return known && chosen(thing).editable();
    }

    /** Judges what is being typed into a cell. */
    Reply type(EObject thing, PartColumn column, String text) {
        return switch (column) {
            case NAME -> name(thing).type(text);
            case MASS -> massRow(thing).typeValue(text);
            case GIVE -> massRow(thing).typeGiveOrTake(text);
            case X, Y, Z -> coordinate(thing, column).type(text);
            case PLACE_GIVE -> placeRow(thing).typeGiveOrTake(text);
            case SOURCE -> massRow(thing).choose(source(text));
            case PIECE, WHERE -> throw new IllegalArgumentException("nothing is typed into " + column);
        };
    }

    private static Source source(String word) {
        return Source.ofWord(word).orElse(Source.UNSTATED);
    }

    /** Returns the title of a column, with the unit of bare numbers. */
    String title(PartColumn column) {
        String unit = habits.unit(Dimension.LENGTH).label();
        return switch (column) {
            case NAME -> Messages.Column_name;
            case MASS -> Messages.Column_mass;
            case GIVE, PLACE_GIVE -> Messages.Column_give;
            case SOURCE -> Messages.Column_source;
            case X -> NLS.bind(Messages.Column_x, unit);
            case Y -> NLS.bind(Messages.Column_y, unit);
            case Z -> NLS.bind(Messages.Column_z, unit);
            case PIECE -> Messages.Column_piece;
            case WHERE -> Messages.Column_where;
        };
    }

    /** Returns what a column is about, in words. */
    String about(PartColumn column) {
        return switch (column) {
            case NAME -> Messages.Column_name;
            case MASS -> Messages.About_mass;
            case GIVE -> Messages.About_give;
            case SOURCE -> Messages.About_source;
            case X -> Messages.About_x;
            case Y -> Messages.About_y;
            case Z -> Messages.About_z;
            case PLACE_GIVE -> Messages.About_placeGive;
            case PIECE -> Messages.About_piece;
            case WHERE -> Messages.About_where;
        };
    }

    /** Returns an order of the rows by a column; what is not known comes last. */
    Comparator<EObject> order(PartColumn column) {
        if (!column.numbers()) {
            return Comparator.comparing(thing -> text(thing, column), String.CASE_INSENSITIVE_ORDER);
        }
        return Comparator.comparing(thing -> number(thing, column), Comparator.nullsLast(Comparator.naturalOrder()));
    }

    private Double number(EObject thing, PartColumn column) {
        Measured mass = (Measured) thing.eGet(mass(thing));
        Position place = (Position) thing.eGet(place(thing));
        return switch (column) {
            case MASS -> mass == null ? null : Double.valueOf(mass.si());
            case GIVE -> massRow(thing).knownSize();
            case X -> place == null ? null : Double.valueOf(place.x());
            case Y -> place == null ? null : Double.valueOf(place.y());
            case Z -> place == null ? null : Double.valueOf(place.z());
            case PLACE_GIVE -> placeRow(thing).knownSize();
            default -> throw new IllegalArgumentException("no numbers stand in " + column);
        };
    }

    /** Tells whether all words are somewhere in a row: its name, piece, source, where it is, or a stage in which it is on. */
    boolean matches(EObject thing, String words) {
        StringBuilder row = new StringBuilder();
        for (PartColumn column : List.of(PartColumn.NAME, PartColumn.SOURCE, PartColumn.PIECE, PartColumn.WHERE)) {
            row.append(text(thing, column)).append('\n');
        }
        car.getStages().stream().filter(stage -> Ticks.isOn(stage, thing)).forEach(stage -> row.append(Nouns.name(stage)).append('\n'));
        String all = row.toString().toLowerCase(habits.locale());
        return Arrays.stream(words.toLowerCase(habits.locale()).strip().split("\\s+")).allMatch(all::contains);
    }
}
