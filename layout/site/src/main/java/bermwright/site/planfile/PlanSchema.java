// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Writes the table of keys as a JSON Schema. */
final class PlanSchema {
    /** Control characters, as a class of a pattern names them. */
    private static final String CONTROL = "\\u0000-\\u001f\\u007f-\\u009f";

    private PlanSchema() {
    }

    static String text() {
        Map<String, Json> root = new LinkedHashMap<>();
        root.put("$schema", Json.Leaf.text("https://json-schema.org/draft/2020-12/schema"));
        root.put("title", Json.Leaf.text("Bermwright plan, version " + Versions.RELEASED.newest()));
        root.put("description", Json.Leaf.text("A key that carries a quantity ends in its unit. Points are objects with"
                + " east_m and north_m; outlines and lines are lists of [east, north] in metres. Azimuths run clockwise"
                + " from grid north. Keys left out take the default printed here; default_source says where it is"
                + " from, left_out what leaving out a key without a default means. note is free text on any object;"
                + " keys that begin with x_ are kept untouched."));
        root.putAll(object(Plan.class).members());
        Map<String, Json> parts = new LinkedHashMap<>();
        for (Class<? extends Record> type : PlanKeys.objects()) {
            if (type != Plan.class) {
                parts.put(name(type), object(type));
            }
        }
        parts.put("point", point());
        root.put("$defs", new Json.Fields(0, parts));
        return JsonText.pretty(new Json.Fields(0, root));
    }

    private static String name(Class<? extends Record> type) {
        String simple = type.getSimpleName();
        String owner = type.getEnclosingClass() == null ? "" : type.getEnclosingClass().getSimpleName() + "_";
        return (owner + simple).replaceAll("([a-z])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
    }

    private static Json.Fields object(Class<? extends Record> type) {
        Map<String, Json> properties = new LinkedHashMap<>();
        List<Json> required = new ArrayList<>();
        if (type == Plan.class) {
            required.add(Json.Leaf.text(Versions.KEY));
            properties.put(Versions.KEY, fields("type", Json.Leaf.text("integer"), "minimum", Json.Leaf.number(1),
                    "maximum", Json.Leaf.number(Versions.RELEASED.newest()), "description",
                    Json.Leaf.text("Version of the plan file.")));
        }
        for (Key key : PlanKeys.of(type)) {
            Map<String, Json> property = new LinkedHashMap<>(type(key.type()).members());
            property.put("description", Json.Leaf.text(key.doc()));
            key.standard().ifPresent(json -> property.put("default", JsonReading.read(json, "")));
            if (key.required()) {
                required.add(Json.Leaf.text(key.name()));
            } else {
                property.put(key.standard().isPresent() ? "default_source" : "left_out", Json.Leaf.text(key.source()));
            }
            properties.put(key.name(), new Json.Fields(0, property));
            if (SpreadKeys.takes(type, key) && PlanKeys.key(type, SpreadKeys.name(key)).isEmpty()) {
                properties.put(SpreadKeys.name(key), spread(key));
            }
        }
        properties.put("note", fields("type", Json.Leaf.text("string"), "description", Json.Leaf.text("Free text.")));
        Map<String, Json> object = new LinkedHashMap<>();
        object.put("type", Json.Leaf.text("object"));
        object.put("properties", new Json.Fields(0, properties));
        object.put("patternProperties", fields("^x_", new Json.Fields(0, Map.of())));
        object.put("additionalProperties", Json.Leaf.flag(false));
        if (!required.isEmpty()) {
            object.put("required", new Json.Items(0, required));
        }
        if (type == ExposurePlan.Limit.class) {
            object.put("anyOf", new Json.Items(0, Stream.of("limit_mSv", "published").map(name ->
                    (Json) fields("required", new Json.Items(0, List.of(Json.Leaf.text(name))))).toList()));
        }
        return new Json.Fields(0, object);
    }

    private static Json spread(Key key) {
        ValueType.Quantity quantity = (ValueType.Quantity) key.type();
        return fields("type", Json.Leaf.text("number"), "minimum", Json.Leaf.number(0), "maximum",
                Json.Leaf.number(quantity.range().greatest()), "unit", Json.Leaf.text(quantity.unit().word()),
                "description", Json.Leaf.text("One standard deviation of " + key.name() + ", for doubts."), "left_out",
                Json.Leaf.text("it is taken as known"));
    }

    private static Json.Fields type(ValueType type) {
        if (type instanceof ValueType.Quantity quantity) {
            return range("number", quantity.range(), quantity.unit().word());
        } else if (type instanceof ValueType.Direction) {
            return range("number", ValueType.Direction.TURN, Unit.DEGREE.word());
        } else if (type instanceof ValueType.Count count) {
            return range("integer", count.range(), Unit.ONE.word());
        } else if (type instanceof ValueType.Text text) {
            return text.mayBeEmpty() ? fields("type", Json.Leaf.text("string"))
                    : fields("type", Json.Leaf.text("string"), "pattern", Json.Leaf.text(text.mayHoldSlash()
                    ? "^[^" + CONTROL + "]*[^\\s" + CONTROL + "][^" + CONTROL + "]*$"
                    : "^[^/" + CONTROL + "]*[^/\\s" + CONTROL + "][^/" + CONTROL + "]*$"));
        } else if (type instanceof ValueType.Choice choice) {
            List<Json> words = choice.words().stream().map(w -> (Json) Json.Leaf.text(w)).toList();
            return fields("enum", new Json.Items(0, words));
        } else if (type instanceof ValueType.Day) {
            return fields("type", Json.Leaf.text("string"), "format", Json.Leaf.text("date"), "pattern",
                    Json.Leaf.text("^[0-9]{4}-[0-9]{2}-[0-9]{2}$"));
        } else if (type instanceof ValueType.Flag) {
            return fields("type", Json.Leaf.text("boolean"));
        } else if (type instanceof ValueType.Place) {
            return fields("$ref", Json.Leaf.text("#/$defs/point"));
        } else if (type instanceof ValueType.Outline) {
            return points(3);
        } else if (type instanceof ValueType.Way) {
            return points(2);
        } else if (type instanceof ValueType.Part part) {
            return fields("$ref", Json.Leaf.text("#/$defs/" + name(part.type())));
        } else if (type instanceof ValueType.Many many) {
            return fields("type", Json.Leaf.text("array"), "items", type(many.of()));
        }
        throw new AssertionError("a kind of value nobody describes: " + type);
    }

    private static Json.Fields range(String type, Range range, String unit) {
        return fields("type", Json.Leaf.text(type), range.leastItself() ? "minimum" : "exclusiveMinimum",
                Json.Leaf.number(range.least()), range.greatestItself() ? "maximum" : "exclusiveMaximum",
                Json.Leaf.number(range.greatest()), "unit", Json.Leaf.text(unit));
    }

    private static Json.Fields points(int least) {
        Json number = fields("type", Json.Leaf.text("number"));
        Json pair = fields("type", Json.Leaf.text("array"), "prefixItems", new Json.Items(0, List.of(number, number)),
                "minItems", Json.Leaf.number(2), "maxItems", Json.Leaf.number(2));
        return fields("type", Json.Leaf.text("array"), "minItems", Json.Leaf.number(least), "items", pair, "unit",
                Json.Leaf.text(Unit.METRE.word()));
    }

    private static Json.Fields point() {
        Json number = fields("type", Json.Leaf.text("number"), "unit", Json.Leaf.text(Unit.METRE.word()));
        return fields("type", Json.Leaf.text("object"),
                "properties", fields("east_m", number, "north_m", number, "note",
                        fields("type", Json.Leaf.text("string"))),
                "patternProperties", fields("^x_", new Json.Fields(0, Map.of())),
                "additionalProperties", Json.Leaf.flag(false),
                "required", new Json.Items(0, List.of(Json.Leaf.text("east_m"), Json.Leaf.text("north_m"))));
    }

    private static Json.Fields fields(Object... namesAndValues) {
        Map<String, Json> members = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            members.put((String) namesAndValues[i], (Json) namesAndValues[i + 1]);
        }
        return new Json.Fields(0, members);
    }
}
