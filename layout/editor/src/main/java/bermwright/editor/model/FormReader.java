// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.Key;
import bermwright.site.planfile.PlanKeys;
import bermwright.site.planfile.PlanValues;
import bermwright.site.planfile.Unit;
import bermwright.site.planfile.ValueType;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;

/** Makes the form of a part from the plan file's table of keys, so that no key can be forgotten. */
final class FormReader {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Plan plan;
    private final boolean isWhole;

    private FormReader(Plan plan, boolean isWhole) {
        this.plan = plan;
        this.isWhole = isWhole;
    }

    /**
     * The form of a part: a block whose path is the part's.
     *
     * @param isWhole whether keys that a thing of its kind does not have are shown all the same
     */
    static Optional<FormEntry.Block> read(Plan plan, Part part, boolean isWhole) {
        if (!part.isIn(plan)) {
            return Optional.empty();
        }
        FormReader reader = new FormReader(plan, isWhole);
        if (part.kind() == Part.Kind.PLAN) {
            return Optional.of(new FormEntry.Block("", part.words(), true, false, "", "", reader.ofPlan()));
        }
        ValueType type = PlanKeys.key(Plan.class, part.kind().key()).orElseThrow().type();
        ValueType own = type instanceof ValueType.Many many ? many.of() : type;
        String path = part.path(plan);
        JsonNode value = reader.value(path);
        return Optional.of(new FormEntry.Block(path, part.words(), true, false, "", "",
                reader.entries(path, ((ValueType.Part) own).type(), value)));
    }

    private JsonNode value(String path) {
        return PlanValues.json(plan, path).map(FormReader::parsed).orElse(MissingNode.getInstance());
    }

    private static JsonNode parsed(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the plan wrote text that is not JSON: " + json, impossible);
        }
    }

    private List<FormEntry> entries(String path, Class<? extends Record> type, JsonNode value) {
        List<FormEntry> entries = new ArrayList<>();
        for (Key key : PlanKeys.of(type)) {
            JsonNode given = value.path(key.name());
            boolean isGiven = !given.isMissingNode() && !(given.isArray() && given.isEmpty());
            if (isWhole || isGiven || KindFields.has(type, key.name(), other -> word(type, value, other))) {
                add(entries, path + "." + key.name(), key, given);
            }
        }
        tellApart(entries);
        entries.add(note(path + ".note", value.path("note")));
        return entries;
    }

    /** The word at a key, its default where it is left out. */
    private static String word(Class<? extends Record> type, JsonNode value, String name) {
        JsonNode given = value.path(name);
        return given.isMissingNode() ? PlanKeys.key(type, name).flatMap(Key::standard).map(FormReader::parsed)
                .map(JsonNode::asText).orElse("") : given.asText();
    }

    /** Of two fields of one name, as thickness and kind of an end of a cover, the one with a unit says so. */
    private static void tellApart(List<FormEntry> entries) {
        for (int i = 0; i < entries.size(); i++) {
            FormEntry entry = entries.get(i);
            boolean isDouble = entries.stream().filter(e -> e.label().equals(entry.label())).count() > 1;
            if (isDouble && entry instanceof FormEntry.Field f && !f.unit().isEmpty()) {
                entries.set(i, new FormEntry.Field(f.path(), f.label() + ", in " + f.unit(), f.unit(), f.kind(),
                        f.text(), f.isGiven(), f.isNeeded(), f.choices(), f.sources(), f.rule()));
            }
        }
    }

    private static FormEntry.Field note(String path, JsonNode value) {
        return new FormEntry.Field(path, "note", "", FormEntry.Kind.TEXT, value.asText(""), !value.isMissingNode(),
                false, List.of(), Map.of(), "Free text, kept with the plan.");
    }

    /** What the plan has of its own; the parts it holds have forms of their own. */
    private List<FormEntry> ofPlan() {
        List<FormEntry> entries = new ArrayList<>();
        for (Key key : PlanKeys.of(Plan.class)) {
            if (!(key.type() instanceof ValueType.Part) && !(key.type() instanceof ValueType.Many)) {
                add(entries, key.name(), key, value(key.name()));
            }
        }
        entries.add(note("note", value("note")));
        return entries;
    }

    private void add(List<FormEntry> entries, String path, Key key, JsonNode given) {
        JsonNode value = given.isMissingNode() ? key.standard().map(FormReader::parsed).orElse(given) : given;
        String rule = FormWords.rule(key);
        String label = FormWords.label(path, key);
        if (key.type() instanceof ValueType.Part part) {
            boolean there = !value.isMissingNode();
            boolean canGo = !key.required() && !given.isMissingNode();
            entries.add(new FormEntry.Block(path, label, there, canGo, rule, NewBlock.json(part.type(), plan),
                    there ? entries(path, part.type(), value) : List.of()));
        } else if (key.type() instanceof ValueType.Many many && many.of() instanceof ValueType.Part part) {
            List<FormEntry.Block> items = new ArrayList<>();
            for (int i = 0; i < value.size(); i++) {
                String item = path + "[" + i + "]";
                String name = value.get(i).path("id").asText(label + " " + (i + 1));
                items.add(new FormEntry.Block(item, name, true, true, rule, "",
                        entries(item, part.type(), value.get(i))));
            }
            entries.add(new FormEntry.Items(path, label, rule, NewBlock.json(part.type(), plan), items));
        } else if (key.type() instanceof ValueType.Place) {
            for (String side : List.of("east_m", "north_m")) {
                entries.add(new FormEntry.Field(path + "." + side, label + " " + side.replace("_m", ""), "m",
                        FormEntry.Kind.NUMBER, text(value.path(side)), true, true, List.of(), Map.of(), rule));
            }
        } else {
            entries.add(field(path, key, value, !given.isMissingNode()));
        }
    }

    private FormEntry.Field field(String path, Key key, JsonNode value, boolean isGiven) {
        Map<String, String> names = NamesInPlan.of(plan, path);
        boolean isNamed = !names.isEmpty();
        FormEntry.Kind kind = NamesInPlan.isFile(path) ? FormEntry.Kind.FILE
                : isNamed && key.type() instanceof ValueType.Text ? FormEntry.Kind.CHOICE : kind(key.type());
        List<String> choices = new ArrayList<>(isNamed ? List.copyOf(names.keySet()) : choices(key.type()));
        String text = text(value);
        if (kind == FormEntry.Kind.CHOICE && !text.isEmpty() && !choices.contains(text)) {
            // A name that nothing has any more stays to be seen, and can be changed for one that something has.
            choices.add(text);
        }
        return new FormEntry.Field(path, FormWords.label(path, key), unit(key.type()), kind, text, isGiven,
                key.required(), choices, names, FormWords.rule(key));
    }

    static String unit(ValueType type) {
        if (type instanceof ValueType.Quantity quantity) {
            return quantity.unit() == Unit.ONE ? "" : UnitWords.shown(quantity.unit().word());
        }
        return type instanceof ValueType.Direction ? "\u00b0" : "";
    }

    private static FormEntry.Kind kind(ValueType type) {
        if (type instanceof ValueType.Quantity || type instanceof ValueType.Direction
                || type instanceof ValueType.Count) {
            return FormEntry.Kind.NUMBER;
        } else if (type instanceof ValueType.Choice) {
            return FormEntry.Kind.CHOICE;
        } else if (type instanceof ValueType.Flag) {
            return FormEntry.Kind.FLAG;
        } else if (type instanceof ValueType.Outline || type instanceof ValueType.Way) {
            return FormEntry.Kind.CORNERS;
        } else if (type instanceof ValueType.Many) {
            return FormEntry.Kind.WORDS;
        } else if (type instanceof ValueType.Text || type instanceof ValueType.Day) {
            return FormEntry.Kind.TEXT;
        }
        throw new AssertionError(type + " has no field");
    }

    private static List<String> choices(ValueType type) {
        return type instanceof ValueType.Choice choice ? choice.words() : List.of();
    }

    private static String text(JsonNode value) {
        if (value.isMissingNode()) {
            return "";
        } else if (value.isArray()) {
            boolean corners = value.size() > 0 && value.get(0).isArray();
            StringJoiner lines = new StringJoiner(corners ? "\n" : ", ");
            value.forEach(item -> lines.add(item.isArray() ? item.get(0).asText() + "  " + item.get(1).asText()
                    : item.asText()));
            return lines.toString();
        }
        return value.asText();
    }
}
