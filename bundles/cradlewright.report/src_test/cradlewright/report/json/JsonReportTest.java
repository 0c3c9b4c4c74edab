package cradlewright.report.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.quantity.Dimension;
import cradlewright.report.Answers;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class JsonReportTest {

    private static JsonObject schema() throws Exception {
        try (Reader in = new InputStreamReader(JsonReport.class.getResourceAsStream(JsonReport.SCHEMA), StandardCharsets.UTF_8)) {
            return JsonParser.parseReader(in).getAsJsonObject();
        }
    }

    private static JsonObject written(ShopAnswers answers) {
        return JsonParser.parseString(new JsonReport().write(answers, Answers.DAY, Answers.engine().reader())).getAsJsonObject();
    }

    private static JsonObject finding(JsonObject root, int number) {
        return root.getAsJsonArray("subjects").get(0).getAsJsonObject().getAsJsonArray("findings").get(number).getAsJsonObject();
    }

    @Test
    void answersOfEveryKindFollowTheSchema() throws Exception {
        assertEquals(List.of(), new SchemaRules(schema()).complaints(written(Answers.all())));
        assertEquals(List.of(), new SchemaRules(schema()).complaints(written(new ShopAnswers(1, "", List.of(), List.of()))));
    }

    @Test
    void eachCarHasOneEntry() throws Exception {
        String text = new JsonReport().write(Answers.all(), Answers.DAY, Answers.engineWithCar().reader());
        JsonObject root = JsonParser.parseString(text).getAsJsonObject();
        assertEquals(List.of(), new SchemaRules(schema()).complaints(root));
        assertEquals("[{\"id\":\"car\",\"name\":\"red & <b>\\\"tired\\\"</b> 'coupe'\",\"verdict\":\"STOP\","
                + "\"stands\":[{\"visit\":\"visit\",\"where\":\"nobody wrote down where\",\"on\":\"nobody wrote down on what\"}],"
                + "\"waiting\":\"no job is written down\"}]",
                new GsonBuilder().disableHtmlEscaping().create().toJson(root.get("cars")));
        root.getAsJsonArray("cars").get(0).getAsJsonObject().remove("waiting");
        assertFalse(new SchemaRules(schema()).complaints(root).isEmpty());
    }

    @Test
    void theSchemaTurnsDownWhatIsWrong() throws Exception {
        SchemaRules rules = new SchemaRules(schema());
        JsonObject root = written(Answers.all());
        root.addProperty("verdict", "FINE");
        assertFalse(rules.complaints(root).isEmpty());
        root = written(Answers.all());
        root.addProperty("format", 2);
        assertFalse(rules.complaints(root).isEmpty());
        root = written(Answers.all());
        root.addProperty("surplus", 1);
        assertFalse(rules.complaints(root).isEmpty());
        root = written(Answers.all());
        finding(root, 0).remove("caution");
        assertFalse(rules.complaints(root).isEmpty());
        root = written(Answers.all());
        finding(root, 0).getAsJsonObject("demand").addProperty("value", "1003");
        assertFalse(rules.complaints(root).isEmpty());
        root = written(Answers.all());
        finding(root, 1).add("missing", new JsonArray());
        assertEquals("CAN'T SAY", finding(root, 1).get("verdict").getAsString());
        assertFalse(rules.complaints(root).isEmpty());
    }

    @Test
    void everyDimensionIsInTheSchema() throws Exception {
        JsonArray listed = schema().getAsJsonObject("$defs").getAsJsonObject("dimension").getAsJsonArray("enum");
        for (Dimension dimension : Dimension.values()) {
            assertTrue(listed.contains(new JsonPrimitive(dimension.name().toLowerCase(Locale.ROOT))), dimension.name());
        }
        assertEquals(Dimension.values().length, listed.size());
    }

    @Test
    void numbersStayInSiUnitsAndNoLimitIsNull() {
        JsonObject root = written(Answers.all());
        assertEquals("STOP", root.get("verdict").getAsString());
        JsonObject stop = finding(root, 0);
        assertEquals(1003, stop.getAsJsonObject("demand").get("value").getAsDouble());
        assertEquals("TIGHT", stop.getAsJsonArray("remedies").get(1).getAsJsonObject().get("after").getAsString());
        List<String> proofs = stop.getAsJsonArray("remedies").asList().stream().map(r -> r.getAsJsonObject().get("proof").getAsString())
                .toList();
        assertEquals(List.of("advice", "mends", "alone", "harms"), proofs);
        JsonObject harm = stop.getAsJsonArray("remedies").get(3).getAsJsonObject().getAsJsonArray("harms").get(0).getAsJsonObject();
        assertEquals("STOP", harm.get("verdict").getAsString());
        assertTrue(finding(root, 3).getAsJsonObject("capacity").get("value").isJsonNull());
    }

    @Test
    void whatNothingIsAskedAboutHasNoVerdict() {
        JsonElement dolly = written(Answers.all()).getAsJsonArray("subjects").get(1);
        assertTrue(dolly.getAsJsonObject().get("verdict").isJsonNull());
        assertEquals("CAN'T SAY", written(new ShopAnswers(1, "Shed", List.of(), List.of())).get("verdict").getAsString());
    }
}
