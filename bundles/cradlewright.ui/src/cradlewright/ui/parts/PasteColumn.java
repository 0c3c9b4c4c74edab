package cradlewright.ui.parts;

import cradlewright.model.vehicle.Stage;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a column of pasted cells is.
 *
 * @param column a column of the parts list; nothing for a stage, or when the cells are not entered
 * @param stage a stage whose ticks stand there
 * @param unit unit of bare numbers, as the header says; empty when it does not
 */
record PasteColumn(Optional<PartColumn> column, Optional<Stage> stage, String unit) {

    /** Cells that are not entered. */
    static final PasteColumn SKIPPED = new PasteColumn(Optional.empty(), Optional.empty(), "");

    private static final Pattern WITH_UNIT = Pattern.compile("(.+?)\\s*(?:\\(([^)]*)\\)|\\[([^\\]]*)\\]|,\\s*(\\S+))");
    private static final List<PartColumn> BY_ORDER = List.of(PartColumn.NAME, PartColumn.MASS, PartColumn.GIVE, PartColumn.SOURCE,
            PartColumn.X, PartColumn.Y, PartColumn.Z, PartColumn.PLACE_GIVE);

    static PasteColumn of(PartColumn column) {
        return new PasteColumn(Optional.of(column), Optional.empty(), "");
    }

    static PasteColumn of(Stage stage) {
        return new PasteColumn(Optional.empty(), Optional.of(stage), "");
    }

    /** Tells whether a row is a header: one cell of it is the word for the name, and no cell begins with a digit. */
    static boolean isHeader(List<String> row) {
        return row.stream().anyMatch(cell -> word(cell).filter(PartColumn.NAME::equals).isPresent())
                && row.stream().noneMatch(cell -> !cell.isEmpty() && Character.isDigit(cell.charAt(0)));
    }

    /** Reads a header; a cell that it does not know is not entered. */
    static List<PasteColumn> ofHeader(List<String> header, List<Stage> stages) {
        List<PasteColumn> all = new ArrayList<>();
        for (String cell : header) {
            Optional<Stage> stage = stages.stream().filter(each -> Nouns.name(each).equalsIgnoreCase(cell)).findFirst();
            PasteColumn found = stage.map(PasteColumn::of).orElseGet(() -> ofWord(cell));
            boolean second = found.column.filter(PartColumn.GIVE::equals).isPresent()
                    && (has(all, PartColumn.GIVE) || has(all, PartColumn.X) && !last(all, PartColumn.MASS));
            PasteColumn meant = second ? new PasteColumn(Optional.of(PartColumn.PLACE_GIVE), Optional.empty(), found.unit) : found;
            boolean known = meant.column.filter(column -> has(all, column)).isPresent();
            all.add(known ? SKIPPED : meant);
        }
        return List.copyOf(all);
    }

    private static boolean has(List<PasteColumn> all, PartColumn column) {
        return all.stream().anyMatch(each -> each.column.filter(column::equals).isPresent());
    }

    private static boolean last(List<PasteColumn> all, PartColumn column) {
        return !all.isEmpty() && all.get(all.size() - 1).column.filter(column::equals).isPresent();
    }

    private static PasteColumn ofWord(String cell) {
        Optional<PartColumn> bare = word(cell);
        if (bare.isPresent()) {
            return of(bare.get());
        }
        Matcher parts = WITH_UNIT.matcher(cell);
        if (!parts.matches()) {
            return SKIPPED;
        }
        String unit = Arrays.asList(parts.group(2), parts.group(3), parts.group(4)).stream().filter(each -> each != null).findFirst()
                .orElse("").strip();
        return word(parts.group(1)).map(column -> new PasteColumn(Optional.of(column), Optional.empty(), unit)).orElse(SKIPPED);
    }

    private static Optional<PartColumn> word(String cell) {
        String wanted = cell.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(PartColumn.values()).filter(column -> words(column).contains(wanted)).findFirst();
    }

    private static List<String> words(PartColumn column) {
        return List.of((switch (column) {
            case NAME -> Messages.Header_name;
            case MASS -> Messages.Header_mass;
            case GIVE -> Messages.Header_give;
            case SOURCE -> Messages.Header_source;
            case X -> Messages.Header_x;
            case Y -> Messages.Header_y;
            case Z -> Messages.Header_z;
            case PLACE_GIVE -> Messages.Header_placeGive;
            case PIECE -> Messages.Header_piece;
            case WHERE -> Messages.Header_where;
        }).split("\\|"));
    }

    /** Returns a first proposal for columns without a header: name, mass, give or take, source, and the balance point. */
    static List<PasteColumn> proposed(int columns) {
        List<PasteColumn> all = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            all.add(i < BY_ORDER.size() ? of(BY_ORDER.get(i)) : SKIPPED);
        }
        return List.copyOf(all);
    }

    /** Returns a cell with the unit of the header when it is a bare number. */
    String with(String cell) {
        boolean bare = !unit.isEmpty() && cell.matches("[-+−]?[0-9.,/ ]+");
        return bare ? cell + " " + unit : cell;
    }
}
