// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.foundation.InputException;
import bermwright.site.plan.Annotations;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Builds the records of the plan from JSON objects by the table of keys. */
final class RecordReading {
    private static final String NOTE = "note";

    private RecordReading() {
    }

    /** Whether a key is kept untouched on any object. */
    static boolean isKept(String key) {
        return key.equals(NOTE) || key.startsWith("x_");
    }

    static InputException unknown(String key, List<String> known, int line, At at) {
        return at.key(key).refuse(line, "not a known key",
                "%s (the nearest known key), or a key of your own that begins with x_".formatted(
                        NearestName.to(key, known)));
    }

    static <R extends Record> R read(Class<R> type, Json.Fields fields, At at) {
        List<Key> keys = PlanKeys.of(type);
        List<String> names = keys.stream().map(Key::name).toList();
        for (Map.Entry<String, Json> member : fields.members().entrySet()) {
            if (!names.contains(member.getKey()) && !isKept(member.getKey())
                    && SpreadKeys.base(type, member.getKey()).isEmpty()) {
                throw unknown(member.getKey(), names, member.getValue().line(), at);
            }
        }
        Map<String, Object> values = new HashMap<>();
        for (Key key : keys) {
            value(key, fields, at).ifPresent(value -> values.put(key.component(), value));
        }
        values.put("annotations", annotations(type, fields, at));
        return build(type, values, fields.line(), at);
    }

    private static Optional<Object> value(Key key, Json.Fields fields, At at) {
        At here = at.key(key.name());
        Optional<Json> given = fields.member(key.name());
        if (given.isPresent()) {
            return Optional.of(ValueReading.read(key.type(), given.get(), here));
        }
        if (key.required()) {
            throw here.refuse(fields.line(), "missing", key.type().accepted());
        }
        return key.standard().map(json -> standard(key, json));
    }

    /** The value a key takes where it is left out. */
    static Object standard(Key key, String json) {
        return ValueReading.read(key.type(), JsonReading.read(json, ""), new At("", key.name()));
    }

    private static Annotations annotations(Class<? extends Record> type, Json.Fields fields, At at) {
        List<Key> keys = PlanKeys.of(type);
        Map<String, String> extras = new LinkedHashMap<>();
        Optional<String> note = fields.member(NOTE).map(n -> note(n, at));
        fields.members().forEach((key, value) -> {
            if (key.startsWith("x_")) {
                extras.put(key, JsonText.compact(value));
            } else if (PlanKeys.key(type, key).isEmpty() && SpreadKeys.base(type, key).isPresent()) {
                extras.put(key, SpreadKeys.read(value, at.key(key)));
            }
        });
        Set<String> given = new LinkedHashSet<>();
        for (Key key : keys) {
            fields.member(key.name()).ifPresent(value -> {
                given.add(key.name());
                if (key.type() instanceof ValueType.Place && value instanceof Json.Fields place) {
                    place.members().forEach((inner, text) -> {
                        if (isKept(inner)) {
                            extras.put(key.name() + "/" + inner, JsonText.compact(text));
                        }
                    });
                }
            });
        }
        return note.isEmpty() && extras.isEmpty() && given.isEmpty() ? Annotations.NOTHING
                : new Annotations(note, extras, given);
    }

    private static String note(Json value, At at) {
        if (value instanceof Json.Leaf leaf && leaf.kind() == Json.Kind.TEXT) {
            return leaf.text();
        }
        throw at.key(NOTE).refuse(value, "a text");
    }

    private static <R extends Record> R build(Class<R> type, Map<String, Object> values, int line, At at) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] arguments = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            Map<String, Object> inside = inside(components[i].getName() + ".", values);
            arguments[i] = inside.isEmpty()
                    ? wrapped(types[i], Optional.ofNullable(values.get(components[i].getName())))
                    : build(types[i].asSubclass(Record.class), inside, line, at);
        }
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw at.refuse(line, "not usable", refused.getMessage());
            }
            throw new IllegalStateException("could not build " + type.getName() + " for " + at.path(), e.getCause());
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            throw new IllegalStateException("the table of keys does not fit " + type.getName() + ": " + values, e);
        }
    }

    /** The values of a component that is a group of its own, without a key of the file. */
    private static Map<String, Object> inside(String group, Map<String, Object> values) {
        Map<String, Object> inside = new HashMap<>();
        values.forEach((name, value) -> {
            if (name.startsWith(group)) {
                inside.put(name.substring(group.length()), value);
            }
        });
        return inside;
    }

    private static Object wrapped(Class<?> component, Optional<Object> value) {
        if (component == Optional.class) {
            return value;
        } else if (component == OptionalDouble.class) {
            return value.map(v -> OptionalDouble.of((Double) v)).orElse(OptionalDouble.empty());
        } else if (component == OptionalInt.class) {
            return value.map(v -> OptionalInt.of((Integer) v)).orElse(OptionalInt.empty());
        }
        return value.orElseThrow(() -> new IllegalStateException("no value for a component of type " + component));
    }
}
