// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.foundation.InputException;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and changes single values of a plan by their path in the file, such as {@code hulls[0].length_m}. */
public final class PlanValues {
    private static final Pattern STEP = Pattern.compile("\\.?([A-Za-z_][A-Za-z0-9_]*)|\\[(\\d{1,6})]");

    private PlanValues() {
    }

    /**
     * The value at a path as it stands, or would stand, in the file.
     *
     * @param plan the plan
     * @param path path of the value
     * @return the value as JSON in the units of the file; a key left out gives its default; empty where there is
     *         neither
     */
    public static Optional<String> json(Plan plan, String path) {
        Json here = PlanFiles.tree(plan);
        Optional<ValueType> type = Optional.of(new ValueType.Part(Plan.class));
        for (Object step : steps(path)) {
            Optional<Key> key = type.flatMap(t -> key(t, step));
            Optional<Json> next = child(here, step)
                    .or(() -> key.flatMap(Key::standard).map(json -> JsonReading.read(json, "")));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            here = next.get();
            type = step instanceof String ? key.map(Key::type) : type.flatMap(PlanValues::itemType);
        }
        return Optional.of(JsonText.compact(here));
    }

    /**
     * The key a path ends in, with unit, range and default.
     *
     * @param path path of a value; the numbers of list items do not matter
     * @return the key, empty where the path ends in a list item or leads nowhere
     */
    public static Optional<Key> key(String path) {
        Optional<ValueType> type = Optional.of(new ValueType.Part(Plan.class));
        Optional<Key> key = Optional.empty();
        for (Object step : steps(path)) {
            Optional<ValueType> here = type;
            key = here.flatMap(t -> key(t, step));
            type = step instanceof String ? key.map(Key::type) : here.flatMap(PlanValues::itemType);
        }
        return key;
    }

    /**
     * A plan with one value changed, checked like a file.
     *
     * @param plan the plan
     * @param path path of the value; an index one past the end of a list adds an item
     * @param json the value as JSON, in the units of the file
     * @return the changed plan
     * @throws InputException if the value is not accepted there
     */
    public static Plan with(Plan plan, String path, String json) {
        Json value = JsonReading.read(json, path);
        return PlanFiles.plan(changed(PlanFiles.tree(plan), steps(path), Optional.of(value), path), new At("", ""));
    }

    /**
     * A plan with many numbers changed at once, checked like a file.
     *
     * @param plan    the plan
     * @param numbers the numbers by their paths, in the units of the file
     * @return the changed plan
     * @throws InputException if a number is not accepted where it is put
     */
    public static Plan with(Plan plan, Map<String, Double> numbers) {
        Json tree = PlanFiles.tree(plan);
        for (Map.Entry<String, Double> number : numbers.entrySet()) {
            tree = changed(tree, steps(number.getKey()), Optional.of(Json.Leaf.number(number.getValue())),
                    number.getKey());
        }
        return PlanFiles.plan(tree, new At("", ""));
    }

    /**
     * The spreads that a plan states beside its numbers, by keys with {@code _spread} before their unit.
     *
     * @param plan the plan
     * @return the spreads, in the order of the file
     */
    public static List<StatedSpread> spreads(Plan plan) {
        return SpreadKeys.stated(PlanFiles.tree(plan));
    }

    /**
     * A plan with one value taken out, so that it takes its default, or with one list item less.
     *
     * @param plan the plan
     * @param path path of the value
     * @return the changed plan
     * @throws InputException if the plan cannot do without it
     */
    public static Plan without(Plan plan, String path) {
        return PlanFiles.plan(changed(PlanFiles.tree(plan), steps(path), Optional.empty(), path), new At("", ""));
    }

    private static Optional<Key> key(ValueType type, Object step) {
        return type instanceof ValueType.Part part && step instanceof String name ? PlanKeys.key(part.type(), name)
                : Optional.empty();
    }

    private static Optional<ValueType> itemType(ValueType type) {
        return type instanceof ValueType.Many many ? Optional.of(many.of()) : Optional.empty();
    }

    private static Optional<Json> child(Json here, Object step) {
        if (here instanceof Json.Fields fields && step instanceof String name) {
            return fields.member(name);
        } else if (here instanceof Json.Items items && step instanceof Integer index && index < items.items().size()) {
            return Optional.of(items.items().get(index));
        }
        return Optional.empty();
    }

    private static Json changed(Json here, List<Object> steps, Optional<Json> value, String path) {
        Object step = steps.get(0);
        boolean last = steps.size() == 1;
        List<Object> rest = steps.subList(1, steps.size());
        if (here instanceof Json.Fields fields && step instanceof String name) {
            if (last) {
                return value.map(v -> fields.with(name, v)).orElseGet(() -> fields.without(name));
            }
            Json inner = fields.member(name).orElseGet(() -> rest.get(0) instanceof String
                    ? JsonReading.read("{}", "") : JsonReading.read("[]", ""));
            return fields.with(name, changed(inner, rest, value, path));
        } else if (here instanceof Json.Items items && step instanceof Integer index) {
            int size = items.items().size();
            if (last && value.isPresent() && index <= size) {
                return items.with(index, value.get());
            } else if (last && value.isEmpty() && index < size) {
                return items.without(index);
            } else if (!last && index < size) {
                return items.with(index, changed(items.items().get(index), rest, value, path));
            }
        }
        throw nowhere(path);
    }

    private static List<Object> steps(String path) {
        List<Object> steps = new ArrayList<>();
        Matcher matcher = STEP.matcher(path);
        int end = 0;
        while (matcher.find() && matcher.start() == end) {
            steps.add(matcher.group(1) != null ? matcher.group(1) : Integer.valueOf(matcher.group(2)));
            end = matcher.end();
        }
        if (steps.isEmpty() || end != path.length()) {
            throw nowhere(path);
        }
        return steps;
    }

    private static InputException nowhere(String path) {
        return InputException.badValue(new InputException.Place("", 0, path), "a path that leads nowhere",
                "a path such as hulls[0].length_m");
    }
}
