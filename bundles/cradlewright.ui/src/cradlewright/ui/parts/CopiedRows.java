package cradlewright.ui.parts;

import cradlewright.model.vehicle.Stage;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;

/** Rows of a parts list as text for a spreadsheet, tabs between the cells, under a header; pasted again they change nothing. */
final class CopiedRows {

    private CopiedRows() {
    }

    static String of(PartsTable table, List<EObject> things) {
        List<Stage> stages = table.car().getStages();
        List<String> lines = new ArrayList<>();
        List<String> header = new ArrayList<>(Arrays.stream(PartColumn.values()).map(table::title).toList());
        stages.forEach(stage -> header.add(Nouns.name(stage)));
        lines.add(line(header));
        for (EObject thing : things) {
            List<String> cells = new ArrayList<>(Arrays.stream(PartColumn.values()).map(column -> cell(table, thing, column)).toList());
            stages.forEach(stage -> cells.add(Ticks.isOn(stage, thing) ? Messages.Tick_on : Messages.Tick_off));
            lines.add(line(cells));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String cell(PartsTable table, EObject thing, PartColumn column) {
        return switch (column) {
            case GIVE, PLACE_GIVE -> table.typed(thing, column);
            default -> table.text(thing, column);
        };
    }

    private static String line(List<String> cells) {
        return cells.stream().map(CopiedRows::quoted).collect(Collectors.joining("\t"));
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == '\t' || c == '\n' || c == '\r') && !cell.startsWith("\"");
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
