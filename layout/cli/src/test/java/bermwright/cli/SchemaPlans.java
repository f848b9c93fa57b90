// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * Plans drawn at random from the schema itself: all words, all ranges with their ends, keys put in and left out.
 * Most begin from an ordinary plan, some of whose parts are drawn anew; a few are drawn whole.
 */
final class SchemaPlans {
    /** Places of the ground of the tests. */
    private static final double SIDE_M = 200;
    private static final int DEEPEST = 6;
    private static final List<String> NAMES = List.of("elm", "oak", "main", "elm/main", "oak/main", "elm/bunks", "pit",
            "hauler", "P1", "1", "2", "w", "august 1972", "october 1989", "nobody", "built in", "steel", "aluminium",
            "polyethylene", "effective dose");
    /** Keys left as they are: each other value of them would build a response anew, for a second and more. */
    private static final Set<String> LEFT = Set.of("skin", "composition", "modulation_W", "solar_activity",
            "solar_date", "elevation_file", "reference_system", "bermwright_plan", "event_spectrum_file", "response",
            "more_responses");

    private final JsonNode schema;
    private final Random random;

    SchemaPlans(long seed) {
        random = new Random(seed);
        try {
            schema = new ObjectMapper().readTree(PlanFiles.schema());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the schema is no JSON", e);
        }
    }

    /** A plan, beginning from an ordinary one or drawn whole. */
    ObjectNode plan(ObjectNode ordinary) {
        if (random.nextInt(8) == 0) {
            ObjectNode whole = (ObjectNode) value("", schema, 0);
            whole.set("ground", ordinary.get("ground").deepCopy());
            return whole;
        }
        ObjectNode plan = ordinary.deepCopy();
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            change(plan, schema);
        }
        return plan;
    }

    /** Goes down into the plan at random and draws one key anew, puts one in or takes one out. */
    private void change(ObjectNode object, JsonNode of) {
        JsonNode properties = resolved(of).get("properties");
        List<String> keys = new ArrayList<>();
        properties.fieldNames().forEachRemaining(k -> {
            if (!LEFT.contains(k)) {
                keys.add(k);
            }
        });
        String key = keys.get(random.nextInt(keys.size()));
        JsonNode there = object.get(key);
        JsonNode kind = resolved(properties.get(key));
        if (there instanceof ObjectNode below && random.nextInt(5) > 0) {
            change(below, kind);
        } else if (there instanceof ArrayNode list && !list.isEmpty() && random.nextInt(5) > 0
                && list.get(random.nextInt(list.size())) instanceof ObjectNode below) {
            change(below, resolved(kind.get("items")));
        } else if (there != null && random.nextInt(4) == 0) {
            object.remove(key);
        } else {
            object.set(key, value(key, kind, 2));
        }
    }

    private JsonNode resolved(JsonNode of) {
        JsonNode now = of;
        while (now.has("$ref")) {
            now = schema.at(now.get("$ref").asText().substring(1));
        }
        return now;
    }

    private JsonNode value(String key, JsonNode given, int depth) {
        JsonNode of = resolved(given);
        JsonNodeFactory make = JsonNodeFactory.instance;
        if (of.has("anyOf")) {
            return value(key, of.get("anyOf").get(random.nextInt(of.get("anyOf").size())), depth);
        } else if (of.has("enum")) {
            return of.get("enum").get(random.nextInt(of.get("enum").size()));
        }
        return switch (of.path("type").asText("object")) {
            case "boolean" -> make.booleanNode(random.nextBoolean());
            case "integer" -> make.numberNode(Math.round(number(of)));
            case "number" -> make.numberNode(key.equals("east_m") || key.equals("north_m")
                    ? random.nextDouble() * SIDE_M : number(of));
            case "string" -> make.textNode(of.path("format").asText().equals("date") ? "2031-05-01"
                    : NAMES.get(random.nextInt(NAMES.size())));
            case "array" -> array(of, depth);
            default -> object(of, depth);
        };
    }

    private ObjectNode object(JsonNode of, int depth) {
        ObjectNode made = JsonNodeFactory.instance.objectNode();
        Set<String> required = new HashSet<>();
        of.path("required").forEach(k -> required.add(k.asText()));
        for (Map.Entry<String, JsonNode> entry : of.path("properties").properties()) {
            boolean isWanted = required.contains(entry.getKey()) || !LEFT.contains(entry.getKey()) && depth < DEEPEST
                    && random.nextInt(3) == 0;
            if (isWanted && !entry.getKey().equals("note")) {
                made.set(entry.getKey(), value(entry.getKey(), entry.getValue(), depth + 1));
            }
        }
        return made;
    }

    private ArrayNode array(JsonNode of, int depth) {
        ArrayNode made = JsonNodeFactory.instance.arrayNode();
        if (of.has("prefixItems")) {
            return made.add(random.nextDouble() * SIDE_M).add(random.nextDouble() * SIDE_M);
        }
        int least = of.path("minItems").asInt(0);
        if (least >= 2) {
            // A line or an outline: corners in order around a middle, so that it does not cross itself.
            double east = SIDE_M * random.nextDouble();
            double north = SIDE_M * random.nextDouble();
            double reach = 1 + 40 * random.nextDouble();
            int corners = least + random.nextInt(4);
            for (int i = 0; i < corners; i++) {
                double turn = 2 * Math.PI * i / corners;
                made.add(JsonNodeFactory.instance.arrayNode().add(east + reach * Math.cos(turn))
                        .add(north + reach * Math.sin(turn)));
            }
            return made;
        }
        int count = least + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            made.add(value("", of.get("items"), depth + 1));
        }
        return made;
    }

    /** A number the schema allows: its default, an end of its range, or something between, small ones as often. */
    private double number(JsonNode of) {
        boolean isOpenBelow = of.has("exclusiveMinimum");
        double least = isOpenBelow ? of.get("exclusiveMinimum").asDouble() : of.path("minimum").asDouble(-1000);
        boolean isOpenAbove = of.has("exclusiveMaximum");
        double greatest = isOpenAbove ? of.get("exclusiveMaximum").asDouble() : of.path("maximum").asDouble(1000);
        double span = greatest - least;
        return switch (random.nextInt(8)) {
            case 0 -> isOpenBelow ? least + span * 1e-9 : least;
            case 1 -> isOpenAbove ? greatest - span * 1e-9 : greatest;
            case 2, 3, 4 -> of.has("default") && of.get("default").isNumber() ? of.get("default").asDouble()
                    : least + span * Math.pow(10, -4 * random.nextDouble());
            case 5 -> least + span * random.nextDouble();
            default -> least + span * Math.pow(10, -6 * random.nextDouble());
        };
    }
}
