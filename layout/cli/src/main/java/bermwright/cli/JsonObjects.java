// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Figure;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** JSON objects of results; what could not be computed is left out. */
final class JsonObjects {
    private static final ObjectMapper VALUES = new ObjectMapper();

    private JsonObjects() {
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** Puts a number, unless it is not one. */
    static void put(ObjectNode object, String key, double value) {
        if (Double.isFinite(value)) {
            object.put(key, value);
        }
    }

    static void put(ObjectNode object, String key, OptionalDouble value) {
        value.ifPresent(v -> put(object, key, v));
    }

    /** Puts a figure of a table and what belongs to it; a point in a key leads into an object. */
    static <T> void put(ObjectNode object, AnswerTable<T> table, T of) {
        table.figures().forEach(figure -> put(object, figure, of));
        table.parts().forEach(part -> put(object, part, of));
    }

    /** Puts a list of things of one kind. */
    static <T> void putAll(ObjectNode object, String key, AnswerTable<T> table, List<T> things) {
        ArrayNode array = object.putArray(key);
        things.forEach(thing -> put(array.addObject(), table, thing));
    }

    private static <T, U> void put(ObjectNode object, AnswerTable.Part<T, U> part, T of) {
        List<U> things = part.of().apply(of);
        if (part.many()) {
            putAll(object, part.key(), part.table(), things);
        } else {
            things.forEach(u -> put(part.key().isEmpty() ? object : object.withObjectProperty(part.key()),
                    part.table(), u));
        }
    }

    /** Puts one figure. */
    static <T> void put(ObjectNode object, Figure<T> figure, T of) {
        int point = figure.key().indexOf('.');
        figure.value(of).ifPresent(value -> (point < 0 ? object
                : object.withObjectProperty(figure.key().substring(0, point))).set(figure.key().substring(point + 1),
                VALUES.valueToTree(value)));
    }

    static ArrayNode place(Point place) {
        return JsonNodeFactory.instance.arrayNode().add(place.east()).add(place.north());
    }

    static ArrayNode point(Vec3 point) {
        return JsonNodeFactory.instance.arrayNode().add(point.x()).add(point.y()).add(point.z());
    }

    /** The same page without numbers that are none: what could not be computed is absent. */
    private static JsonNode finite(JsonNode node) {
        if (node instanceof ObjectNode object) {
            List<String> none = new ArrayList<>();
            object.properties().forEach(e -> {
                if (isNone(e.getValue())) {
                    none.add(e.getKey());
                } else {
                    finite(e.getValue());
                }
            });
            object.remove(none);
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                if (isNone(array.get(i))) {
                    array.setNull(i);
                } else {
                    finite(array.get(i));
                }
            }
        }
        return node;
    }

    private static boolean isNone(JsonNode value) {
        return value.isFloatingPointNumber() && !Double.isFinite(value.doubleValue());
    }

    /** Writes control characters out that JSON allows to stand and a terminal would obey. */
    private static String plain(String json) {
        StringBuilder plain = new StringBuilder(json.length());
        for (int i = 0; i < json.length(); i++) {
            char c = json.charAt(i);
            plain.append(c >= 0x7f && PlainStream.isControl(c) ? PlainStream.escaped(c) : String.valueOf(c));
        }
        return plain.toString();
    }

    static String text(ObjectNode page) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)).withObjectIndenter(indent);
        try {
            return plain(new ObjectMapper().writer(printer).writeValueAsString(finite(page)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a result could not be written as JSON: " + page, e);
        }
    }
}
