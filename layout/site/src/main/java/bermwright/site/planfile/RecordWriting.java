// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Annotations;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Turns the records of the plan into JSON objects by the table of keys. */
final class RecordWriting {
    private RecordWriting() {
    }

    static Json.Fields write(Record plan) {
        Map<String, Json> members = new LinkedHashMap<>();
        Annotations annotations = (Annotations) component(plan, "annotations");
        for (Key key : PlanKeys.of(plan.getClass())) {
            Optional<Object> value = unwrapped(component(plan, key.component()));
            if (value.isEmpty() || isLeftOut(key, value.get(), annotations)) {
                continue;
            }
            members.put(key.name(), write(key.type(), value.get()));
        }
        annotations.note().ifPresent(note -> members.put("note", Json.Leaf.text(note)));
        annotations.extras().forEach((name, json) -> extra(members, name, json));
        return new Json.Fields(0, members);
    }

    private static void extra(Map<String, Json> members, String name, String json) {
        Json value = JsonReading.read(json, "");
        int slash = name.indexOf('/');
        if (name.startsWith("x_") || slash < 0) {
            members.put(name, value);
        } else if (members.get(name.substring(0, slash)) instanceof Json.Fields inner) {
            members.put(name.substring(0, slash), inner.with(name.substring(slash + 1), value));
        }
    }

    private static boolean isLeftOut(Key key, Object value, Annotations annotations) {
        return !annotations.given().contains(key.name())
                && key.standard().map(json -> RecordReading.standard(key, json).equals(value)).orElse(false);
    }

    private static Object component(Record plan, String name) {
        int dot = name.indexOf('.');
        if (dot > 0) {
            return component((Record) component(plan, name.substring(0, dot)), name.substring(dot + 1));
        }
        try {
            return plan.getClass().getMethod(name).invoke(plan);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the table of keys does not fit " + plan.getClass() + ": " + name, e);
        }
    }

    private static Optional<Object> unwrapped(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(v -> v);
        } else if (value instanceof OptionalDouble number) {
            return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
        } else if (value instanceof OptionalInt number) {
            return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
        }
        return Optional.of(value);
    }

    static Json write(ValueType type, Object value) {
        if (type instanceof ValueType.Quantity quantity) {
            return Json.Leaf.number(quantity.unit().fromSi((Double) value));
        } else if (type instanceof ValueType.Direction) {
            return Json.Leaf.number(Unit.DEGREE.fromSi(((Azimuth) value).radians()));
        } else if (type instanceof ValueType.Count) {
            return Json.Leaf.number((Integer) value);
        } else if (type instanceof ValueType.Text) {
            return Json.Leaf.text((String) value);
        } else if (type instanceof ValueType.Choice choice) {
            return Json.Leaf.text(choice.words().get(choice.values().indexOf(value)));
        } else if (type instanceof ValueType.Day) {
            return Json.Leaf.text(value.toString());
        } else if (type instanceof ValueType.Flag) {
            return Json.Leaf.flag((Boolean) value);
        } else if (type instanceof ValueType.Place) {
            Point place = (Point) value;
            Map<String, Json> members = new LinkedHashMap<>();
            members.put("east_m", Json.Leaf.number(place.east()));
            members.put("north_m", Json.Leaf.number(place.north()));
            return new Json.Fields(0, members);
        } else if (type instanceof ValueType.Outline) {
            return points(((Ring) value).corners());
        } else if (type instanceof ValueType.Way) {
            return points(((List<?>) value).stream().map(Point.class::cast).toList());
        } else if (type instanceof ValueType.Part) {
            return write((Record) value);
        } else if (type instanceof ValueType.Many many) {
            return new Json.Items(0, ((List<?>) value).stream().map(item -> write(many.of(), item)).toList());
        }
        throw new AssertionError("a kind of value nobody writes: " + type);
    }

    private static Json points(List<Point> points) {
        return new Json.Items(0, points.stream().map(p -> (Json) new Json.Items(0,
                List.of(Json.Leaf.number(p.east()), Json.Leaf.number(p.north())))).toList());
    }
}
