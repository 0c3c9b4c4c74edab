package cradlewright.report.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The part of JSON Schema 2020-12 that the schema of the answers uses; a keyword that is not known here makes every document fail, so
 * that no rule is passed over in silence.
 */
final class SchemaRules {

    private static final Set<String> NOTES = Set.of("$schema", "$id", "$defs", "title", "description");

    private final JsonObject root;

    SchemaRules(JsonObject root) {
        this.root = root;
    }

    /** Returns what is wrong with a document, empty when nothing is. */
    List<String> complaints(JsonElement document) {
        List<String> complaints = new ArrayList<>();
        check(root, document, "", complaints);
        return complaints;
    }

    private void check(JsonObject schema, JsonElement value, String at, List<String> complaints) {
        for (Map.Entry<String, JsonElement> rule : schema.entrySet()) {
            if (!NOTES.contains(rule.getKey())) {
                check(schema, rule.getKey(), rule.getValue(), value, at, complaints);
            }
        }
    }

    private void check(JsonObject schema, String keyword, JsonElement rule, JsonElement value, String at, List<String> complaints) {
        switch (keyword) {
            case "$ref" -> check(definition(rule.getAsString()), value, at, complaints);
            case "type" -> require(isOfType(rule, value), at + ": not of type " + rule, complaints);
            case "const" -> require(rule.equals(value), at + ": not " + rule, complaints);
            case "enum" -> require(rule.getAsJsonArray().contains(value), at + ": none of " + rule, complaints);
            case "minLength" -> require(!isString(value) || value.getAsString().length() >= rule.getAsInt(), at + ": too short",
                    complaints);
            case "minItems" -> require(!value.isJsonArray() || value.getAsJsonArray().size() >= rule.getAsInt(), at + ": too few",
                    complaints);
            case "maxItems" -> require(!value.isJsonArray() || value.getAsJsonArray().size() <= rule.getAsInt(), at + ": too many",
                    complaints);
            case "format" -> require("date".equals(rule.getAsString()) && LocalDate.parse(value.getAsString()) != null, at, complaints);
            case "required" -> rule.getAsJsonArray().forEach(name -> require(!value.isJsonObject()
                    || value.getAsJsonObject().has(name.getAsString()), at + ": without " + name, complaints));
            case "properties" -> properties(rule.getAsJsonObject(), value, at, complaints);
            case "additionalProperties" -> require(!value.isJsonObject() || schema.getAsJsonObject("properties").keySet()
                    .containsAll(value.getAsJsonObject().keySet()), at + ": more than wanted", complaints);
            case "items" -> items(rule.getAsJsonObject(), value, at, complaints);
            case "anyOf" -> require(rule.getAsJsonArray().asList().stream().anyMatch(one -> holds(one, value)), at + ": none fits",
                    complaints);
            case "if" -> {
                if (holds(rule, value)) {
                    check(schema.getAsJsonObject("then"), value, at, complaints);
                }
            }
            case "then" -> require(schema.has("if"), at + ": then without if", complaints);
            default -> complaints.add(at + ": rule not known here: " + keyword);
        }
    }

    private boolean holds(JsonElement schema, JsonElement value) {
        List<String> complaints = new ArrayList<>();
        check(schema.getAsJsonObject(), value, "", complaints);
        return complaints.isEmpty();
    }

    private JsonObject definition(String reference) {
        return root.getAsJsonObject("$defs").getAsJsonObject(reference.substring("#/$defs/".length()));
    }

    private void properties(JsonObject rules, JsonElement value, String at, List<String> complaints) {
        if (value.isJsonObject()) {
            rules.entrySet().stream().filter(rule -> value.getAsJsonObject().has(rule.getKey())).forEach(rule -> check(
                    rule.getValue().getAsJsonObject(), value.getAsJsonObject().get(rule.getKey()), at + "/" + rule.getKey(), complaints));
        }
    }

    private void items(JsonObject rule, JsonElement value, String at, List<String> complaints) {
        if (value.isJsonArray()) {
            for (int i = 0; i < value.getAsJsonArray().size(); i++) {
                check(rule, value.getAsJsonArray().get(i), at + "/" + i, complaints);
            }
        }
    }

    private static boolean isOfType(JsonElement type, JsonElement value) {
        if (type.isJsonArray()) {
            return ((JsonArray) type).asList().stream().anyMatch(one -> isOfType(one, value));
        }
        return switch (type.getAsString()) {
            case "object" -> value.isJsonObject();
            case "array" -> value.isJsonArray();
            case "null" -> value.isJsonNull();
            case "string" -> isString(value);
            case "boolean" -> value instanceof JsonPrimitive primitive && primitive.isBoolean();
            case "number" -> value instanceof JsonPrimitive primitive && primitive.isNumber();
            default -> false;
        };
    }

    private static boolean isString(JsonElement value) {
        return value instanceof JsonPrimitive primitive && primitive.isString();
    }

    private static void require(boolean held, String complaint, List<String> complaints) {
        if (!held) {
            complaints.add(complaint);
        }
    }
}
