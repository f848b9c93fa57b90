// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A JSON value that knows the line it stood on and keeps numbers as they were written. */
sealed interface Json {
    /** The line from 1; 0 for a value that did not stand in a file. */
    int line();

    /** What was found, as a person would read it in an error message. */
    String found();

    /** An object; the order of its keys is kept. */
    record Fields(int line, Map<String, Json> members) implements Json {
        public Fields {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        }

        Optional<Json> member(String key) {
            return Optional.ofNullable(members.get(key));
        }

        /** This object with one key set, in its place where it stood, else last. */
        Fields with(String key, Json value) {
            Map<String, Json> changed = new LinkedHashMap<>(members);
            changed.put(key, value);
            return new Fields(line, changed);
        }

        Fields without(String key) {
            Map<String, Json> changed = new LinkedHashMap<>(members);
            changed.remove(key);
            return new Fields(line, changed);
        }

        @Override
        public String found() {
            return "an object";
        }
    }

    /** A list. */
    record Items(int line, List<Json> items) implements Json {
        public Items {
            items = List.copyOf(items);
        }

        Items with(int index, Json value) {
            List<Json> changed = new ArrayList<>(items);
            if (index == changed.size()) {
                changed.add(value);
            } else {
                changed.set(index, value);
            }
            return new Items(line, changed);
        }

        Items without(int index) {
            List<Json> changed = new ArrayList<>(items);
            changed.remove(index);
            return new Items(line, changed);
        }

        @Override
        public String found() {
            return "a list";
        }
    }

    /** Kinds of value without parts. */
    enum Kind { TEXT, NUMBER, FLAG, NOTHING }

    /** A text, number, flag or null; {@code text} is the text itself or what was written. */
    record Leaf(int line, Kind kind, String text) implements Json {
        static Leaf text(String value) {
            return new Leaf(0, Kind.TEXT, value);
        }

        static Leaf number(double value) {
            return new Leaf(0, Kind.NUMBER, JsonText.number(value));
        }

        static Leaf flag(boolean value) {
            return new Leaf(0, Kind.FLAG, Boolean.toString(value));
        }

        @Override
        public String found() {
            if (kind != Kind.TEXT) {
                return text;
            }
            return JsonText.quoted(text.length() > 60 ? text.substring(0, 60) + "…" : text);
        }
    }
}
