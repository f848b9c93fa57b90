// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.util.Optional;

/**
 * A key of the plan file: everything reader, writer, schema, error messages and screens need to know of it.
 *
 * @param name          name in the file, ending in the unit of a quantity
 * @param component     component of the plan record that holds it; a dot stands between a group and its component
 * @param type          what kind of value it takes, with unit and range
 * @param required      whether it has to be given
 * @param standard      the value it takes where it is left out, as JSON; empty where there is none
 * @param source        where that value is from, or what leaving the key out means
 * @param doc           what the key says, in a sentence
 */
public record Key(String name, String component, ValueType type, boolean required, Optional<String> standard,
        String source, String doc) {

    /** A key that must be given. */
    static Key required(String name, String component, ValueType type, String doc) {
        return new Key(name, component, type, true, Optional.empty(), "", doc);
    }

    /** A key that takes a value of its own where it is left out. */
    static Key standard(String name, String component, ValueType type, Standard standard, String doc) {
        return new Key(name, component, type, false, Optional.of(standard.json), standard.source, doc);
    }

    /** A key that may be left out, and what that means. */
    static Key optional(String name, String component, ValueType type, String leftOut, String doc) {
        return new Key(name, component, type, false, Optional.empty(), leftOut, doc);
    }

    /** The value of a key left out, as JSON, and where it is from. */
    record Standard(String json, String source) {
        static Standard of(String json, String source) {
            return new Standard(json, source);
        }

        static Standard of(double number, String source) {
            return new Standard(JsonText.number(number), source);
        }

        static Standard word(String word, String source) {
            return new Standard(JsonText.quoted(word), source);
        }

        /** An empty list. */
        static Standard none() {
            return new Standard("[]", "none");
        }

        /** An object whose keys all take their own values. */
        static Standard ofItsParts() {
            return new Standard("{}", "its keys take their own values");
        }
    }
}
