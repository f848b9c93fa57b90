// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;

/** JSON objects of results; what could not be computed is left out. */
final class JsonPage {
    private JsonPage() {
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

    static ArrayNode place(Point place) {
        return JsonNodeFactory.instance.arrayNode().add(place.east()).add(place.north());
    }

    static ArrayNode point(Vec3 point) {
        return JsonNodeFactory.instance.arrayNode().add(point.x()).add(point.y()).add(point.z());
    }

    static String text(ObjectNode page) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)).withObjectIndenter(indent);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(page);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a result could not be written as JSON: " + page, e);
        }
    }
}
