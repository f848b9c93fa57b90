// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.EventFit;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Stowage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** A plan file drawn at random by the table of keys; the same seed draws the same file. */
final class DrawnPlan {
    /** Figures of a fit that hold each other's order: the index grows and the fold lies higher beyond the break. */
    private static final Map<String, Double> FIT = Map.of("soft_index", 0.5, "fold_GV", 0.125, "steep_index", 4.0,
            "steep_fold_GV", 2.0);

    /** What stands against a wall ends after it begins. */
    private static final Map<String, Integer> STOWED = Map.of("from_along_m", 0, "to_along_m", 100,
            "from_around_deg", -170, "to_around_deg", 20);

    private final Random random;
    private int ids;
    private double depth = -1.0 / 16;

    DrawnPlan(long seed) {
        this.random = new Random(seed);
    }

    Json.Fields plan() {
        Map<String, Json> members = new LinkedHashMap<>();
        members.put(Versions.KEY, Json.Leaf.number(1));
        members.putAll(object(Plan.class).members());
        return new Json.Fields(0, members);
    }

    private Json.Fields object(Class<? extends Record> type) {
        Map<String, Json> members = new LinkedHashMap<>();
        for (Key key : PlanKeys.of(type)) {
            if (key.required() || random.nextBoolean() || isNeeded(type, key)) {
                members.put(key.name(), key.name().equals("id") ? Json.Leaf.text("id " + ids++) : value(type, key));
            }
        }
        if (random.nextInt(4) == 0) {
            members.put("note", Json.Leaf.text("eine Notiz \u2014 \"quoted\" \\ \u6708"));
        }
        if (random.nextInt(4) == 0) {
            members.put("x_own", JsonReading.read("{\"a\": [1, {\"b\": null}], \"c\": 0.125}", ""));
        }
        return new Json.Fields(0, members);
    }

    private static boolean isNeeded(Class<? extends Record> type, Key key) {
        return type == LoweringGear.class && (key.name().equals("lines") || key.name().equals("side_thrusters"))
                || type == ExposurePlan.Limit.class && key.name().equals("limit_mSv");
    }

    /** Keys that must fit another key are drawn so that they do. */
    private Json value(Class<? extends Record> type, Key key) {
        if (type == Hull.class && key.name().equals("length_m")) {
            return Json.Leaf.number(400 + random.nextInt(100));
        } else if (type == Hull.class && key.name().equals("centre_of_mass_from_base_m")
                || type == Hull.End.class && key.name().equals("depth_m")) {
            return Json.Leaf.number(1 + random.nextInt(150));
        } else if ((type == GroundPlan.DensityAtDepth.class || type == GroundPlan.StrengthAtDepth.class)
                && key.name().equals("depth_m")) {
            depth += (1 + random.nextInt(100)) / 16.0;
            return Json.Leaf.number(depth);
        } else if (type == Stowage.class && STOWED.containsKey(key.name())) {
            return Json.Leaf.number(STOWED.get(key.name()) + random.nextInt(80));
        } else if (type == EventFit.class && FIT.containsKey(key.name())) {
            return Json.Leaf.number(FIT.get(key.name()) + random.nextInt(8) / 8.0);
        }
        return value(key.type());
    }

    private Json value(ValueType type) {
        if (type instanceof ValueType.Quantity quantity) {
            return Json.Leaf.number(number(quantity.range()));
        } else if (type instanceof ValueType.Direction) {
            return Json.Leaf.number(Math.floor(random.nextDouble() * 3600) / 10);
        } else if (type instanceof ValueType.Count count) {
            return Json.Leaf.number(Math.ceil(number(count.range())));
        } else if (type instanceof ValueType.Text) {
            return Json.Leaf.text("text " + random.nextInt(100));
        } else if (type instanceof ValueType.Choice choice) {
            return Json.Leaf.text(choice.words().get(random.nextInt(choice.words().size())));
        } else if (type instanceof ValueType.Day day) {
            return Json.Leaf.text(day.first().plusDays(random.nextInt(20_000)).toString());
        } else if (type instanceof ValueType.Flag) {
            return Json.Leaf.flag(random.nextBoolean());
        } else if (type instanceof ValueType.Place) {
            Json.Fields place = (Json.Fields) JsonReading.read("{\"east_m\": 1.5, \"north_m\": -2.25}", "");
            return random.nextBoolean() ? place : place.with("note", Json.Leaf.text("here"));
        } else if (type instanceof ValueType.Outline) {
            String size = JsonText.number(1 + random.nextInt(1000) / 8.0);
            return JsonReading.read("[[0, 0], [%1$s, 0], [%1$s, %1$s], [0, %1$s]]".formatted(size), "");
        } else if (type instanceof ValueType.Way) {
            return JsonReading.read("[[0, 0], [%s, 4]]".formatted(1 + random.nextInt(99)), "");
        } else if (type instanceof ValueType.Part part) {
            return object(part.type());
        } else if (type instanceof ValueType.Many many) {
            List<Json> items = new ArrayList<>();
            for (int i = random.nextInt(3); i > 0; i--) {
                items.add(value(many.of()));
            }
            return new Json.Items(0, items);
        }
        throw new AssertionError("a kind of value nobody draws: " + type);
    }

    /** A number inside the range with up to seven digits, as a person would type it. */
    private double number(Range range) {
        while (true) {
            double share = random.nextInt(4) == 0 ? random.nextInt(2) : Math.pow(random.nextDouble(), 4);
            double number = range.least() + share * (range.greatest() - range.least());
            double typed = Double.parseDouble(String.format(Locale.ROOT, "%.7g", number));
            if (range.contains(typed)) {
                return typed;
            }
        }
    }
}
