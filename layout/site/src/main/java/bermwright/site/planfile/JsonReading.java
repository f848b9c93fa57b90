// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.foundation.InputException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns text into JSON values that know their lines; keys that stand twice are refused. */
final class JsonReading {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonParser parser;
    private final String file;

    private JsonReading(JsonParser parser, String file) {
        this.parser = parser;
        this.file = file;
    }

    /** Reads one JSON value and nothing after it. */
    static Json read(String text, String file) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonReading reading = new JsonReading(parser, file);
            if (parser.nextToken() == null) {
                throw InputException.unreadable(InputException.Place.of(file), "the file is empty", "one JSON object",
                        Optional.empty());
            }
            Json value = reading.value("");
            if (parser.nextToken() != null) {
                throw InputException.unreadable(new InputException.Place(file, reading.line(), ""),
                        "something stands after the end of the plan", "one JSON object and nothing after it",
                        Optional.empty());
            }
            return value;
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw InputException.unreadable(new InputException.Place(file, Math.max(line, 0), ""),
                    "not JSON: " + firstSentence(e.getOriginalMessage()), "JSON in UTF-8", Optional.of(e));
        } catch (IOException e) {
            throw InputException.unreadable(InputException.Place.of(file), "not readable: " + e.getMessage(),
                    "JSON in UTF-8", Optional.of(e));
        }
    }

    private static String firstSentence(String message) {
        String line = message.split("\\R", 2)[0];
        return line.length() > 160 ? line.substring(0, 160) + "…" : line;
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private Json value(String path) throws IOException {
        int line = line();
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> fields(path, line);
            case START_ARRAY -> items(path, line);
            case VALUE_STRING -> new Json.Leaf(line, Json.Kind.TEXT, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Leaf(line, Json.Kind.NUMBER, parser.getText());
            case VALUE_TRUE, VALUE_FALSE -> new Json.Leaf(line, Json.Kind.FLAG, parser.getText());
            default -> new Json.Leaf(line, Json.Kind.NOTHING, "null");
        };
    }

    private Json.Fields fields(String path, int line) throws IOException {
        Map<String, Json> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            int keyLine = line();
            String keyPath = path.isEmpty() ? key : path + "." + key;
            if (members.containsKey(key)) {
                throw InputException.badValue(new InputException.Place(file, keyLine, keyPath),
                        "given twice, first on line " + members.get(key).line(), "each key once");
            }
            parser.nextToken();
            members.put(key, value(keyPath));
        }
        return new Json.Fields(line, members);
    }

    private Json.Items items(String path, int line) throws IOException {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(path + "[" + items.size() + "]"));
        }
        return new Json.Items(line, items);
    }
}
