// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns JSON into plan values by the table of keys. */
final class ValueReading {
    private static final Range PLANE = Range.between(-1e7, 1e7);
    private static final int MOST_CORNERS = 10_000;
    /** Below this size and above 0 numbers have fewer digits than they are written with, in one unit or another. */
    private static final double LEAST_SIZE = 1e-300;

    private ValueReading() {
    }

    static Object read(ValueType type, Json value, At at) {
        if (type instanceof ValueType.Quantity quantity) {
            return quantity.unit().toSi(number(value, at, quantity.range(), type));
        } else if (type instanceof ValueType.Direction) {
            return new Azimuth(Unit.DEGREE.toSi(number(value, at, ValueType.Direction.TURN, type)));
        } else if (type instanceof ValueType.Count count) {
            double number = number(value, at, count.range(), type);
            if (number != Math.rint(number)) {
                throw at.refuse(value, type.accepted());
            }
            return (int) number;
        } else if (type instanceof ValueType.Text text) {
            return text(text, value, at);
        } else if (type instanceof ValueType.Choice choice) {
            int index = choice.words().indexOf(leaf(value, Json.Kind.TEXT, at, type).text());
            if (index < 0) {
                throw at.refuse(value, type.accepted());
            }
            return choice.values().get(index);
        } else if (type instanceof ValueType.Day day) {
            return day(day, value, at);
        } else if (type instanceof ValueType.Flag) {
            return Boolean.valueOf(leaf(value, Json.Kind.FLAG, at, type).text());
        } else if (type instanceof ValueType.Part part) {
            return RecordReading.read(part.type(), fields(value, at, type), at);
        } else if (type instanceof ValueType.Many many) {
            return many(many, value, at);
        }
        return shape(type, value, at);
    }

    private static Object shape(ValueType type, Json value, At at) {
        if (type instanceof ValueType.Place) {
            return place(value, at, type);
        } else if (type instanceof ValueType.Outline) {
            List<Point> corners = points(value, at, type);
            if (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
                corners.remove(corners.size() - 1);
            }
            Optional<String> trouble = Outlines.trouble(corners);
            if (trouble.isPresent()) {
                throw at.refuse(value.line(), trouble.get(), type.accepted());
            }
            return new Ring(corners);
        } else if (type instanceof ValueType.Way) {
            List<Point> points = points(value, at, type);
            if (points.size() < 2) {
                throw at.refuse(value.line(), "a line of " + points.size() + " points", type.accepted());
            }
            for (int i = 1; i < points.size(); i++) {
                if (points.get(i).equals(points.get(i - 1))) {
                    throw at.item(i).refuse(value.line(), "the same point as the one before it", type.accepted());
                }
            }
            return List.copyOf(points);
        }
        throw new AssertionError("a kind of value nobody reads: " + type);
    }

    private static double number(Json value, At at, Range range, ValueType type) {
        // Nothing added to -0 is 0: the two are one value, and are written alike.
        double number = Double.parseDouble(leaf(value, Json.Kind.NUMBER, at, type).text()) + 0.0;
        if (!range.contains(number)) {
            throw at.refuse(value, type.accepted());
        } else if (number != 0 && Math.abs(number) < LEAST_SIZE) {
            throw at.refuse(value, type.accepted() + "; a number so near 0 that it loses digits is given as 0");
        }
        return number;
    }

    private static String text(ValueType.Text type, Json value, At at) {
        String text = leaf(value, Json.Kind.TEXT, at, type).text();
        if (!type.accepts(text)) {
            throw at.refuse(value, type.accepted());
        }
        return text;
    }

    private static LocalDate day(ValueType.Day type, Json value, At at) {
        try {
            LocalDate day = LocalDate.parse(leaf(value, Json.Kind.TEXT, at, type).text());
            if (!day.isBefore(type.first()) && !day.isAfter(type.last())) {
                return day;
            }
        } catch (DateTimeParseException e) {
            throw at.refuse(value, type.accepted());
        }
        throw at.refuse(value, type.accepted());
    }

    private static Json.Leaf leaf(Json value, Json.Kind kind, At at, ValueType type) {
        if (value instanceof Json.Leaf leaf && leaf.kind() == kind) {
            return leaf;
        }
        throw at.refuse(value, type.accepted());
    }

    static Json.Fields fields(Json value, At at, ValueType type) {
        if (value instanceof Json.Fields fields) {
            return fields;
        }
        throw at.refuse(value, type.accepted());
    }

    private static List<Object> many(ValueType.Many type, Json value, At at) {
        List<Object> read = new ArrayList<>();
        List<Json> items = items(value, at, type);
        for (int i = 0; i < items.size(); i++) {
            read.add(read(type.of(), items.get(i), at.item(i)));
        }
        return List.copyOf(read);
    }

    private static List<Json> items(Json value, At at, ValueType type) {
        if (value instanceof Json.Items items) {
            return items.items();
        }
        throw at.refuse(value, type.accepted());
    }

    private static Point place(Json value, At at, ValueType type) {
        Json.Fields fields = fields(value, at, type);
        for (Map.Entry<String, Json> member : fields.members().entrySet()) {
            String key = member.getKey();
            if (!key.equals("east_m") && !key.equals("north_m") && !RecordReading.isKept(key)) {
                throw RecordReading.unknown(key, List.of("east_m", "north_m"), member.getValue().line(), at);
            }
        }
        return new Point(coordinate(fields, "east_m", at), coordinate(fields, "north_m", at));
    }

    private static double coordinate(Json.Fields fields, String key, At at) {
        ValueType type = new ValueType.Quantity(Unit.METRE, PLANE);
        Json value = fields.member(key)
                .orElseThrow(() -> at.key(key).refuse(fields.line(), "missing", type.accepted()));
        return number(value, at.key(key), PLANE, type);
    }

    private static List<Point> points(Json value, At at, ValueType type) {
        List<Json> items = items(value, at, type);
        if (items.size() > MOST_CORNERS) {
            throw at.refuse(value.line(), "a list of " + items.size() + " points", "at most " + MOST_CORNERS);
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            At here = at.item(i);
            String accepted = "[east, north] in m";
            if (!(items.get(i) instanceof Json.Items pair) || pair.items().size() != 2) {
                throw here.refuse(items.get(i), accepted);
            }
            ValueType coordinate = new ValueType.Quantity(Unit.METRE, PLANE);
            points.add(new Point(number(pair.items().get(0), here.item(0), PLANE, coordinate),
                    number(pair.items().get(1), here.item(1), PLANE, coordinate)));
        }
        return points;
    }
}
