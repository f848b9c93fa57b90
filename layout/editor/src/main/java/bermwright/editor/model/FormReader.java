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
import java.util.Optional;
import java.util.StringJoiner;

/** Makes the form of a part from the plan file's table of keys, so that no key can be forgotten. */
final class FormReader {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Plan plan;

    private FormReader(Plan plan) {
        this.plan = plan;
    }

    /** The form of a part: a block whose path is the part's. */
    static Optional<FormEntry.Block> read(Plan plan, Part part) {
        if (!part.isIn(plan)) {
            return Optional.empty();
        }
        FormReader reader = new FormReader(plan);
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
            add(entries, path + "." + key.name(), key, value.path(key.name()));
        }
        tellApart(entries);
        entries.add(note(path + ".note", value.path("note")));
        return entries;
    }

    /** Of two fields of one name, as thickness and kind of an end of a cover, the one with a unit says so. */
    private static void tellApart(List<FormEntry> entries) {
        for (int i = 0; i < entries.size(); i++) {
            FormEntry entry = entries.get(i);
            boolean isDouble = entries.stream().filter(e -> e.label().equals(entry.label())).count() > 1;
            if (isDouble && entry instanceof FormEntry.Field f && !f.unit().isEmpty()) {
                entries.set(i, new FormEntry.Field(f.path(), f.label() + ", in " + f.unit(), f.unit(), f.kind(),
                        f.text(), f.isGiven(), f.isNeeded(), f.choices(), f.rule()));
            }
        }
    }

    private static FormEntry.Field note(String path, JsonNode value) {
        return new FormEntry.Field(path, "note", "", FormEntry.Kind.TEXT, value.asText(""), !value.isMissingNode(),
                false, List.of(), "Free text, kept with the plan.");
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
        String rule = rule(key);
        if (key.type() instanceof ValueType.Part part) {
            boolean there = !value.isMissingNode();
            boolean canGo = !key.required() && !given.isMissingNode();
            entries.add(new FormEntry.Block(path, label(key), there, canGo, rule, NewBlock.json(part.type(), plan),
                    there ? entries(path, part.type(), value) : List.of()));
        } else if (key.type() instanceof ValueType.Many many && many.of() instanceof ValueType.Part part) {
            List<FormEntry.Block> items = new ArrayList<>();
            for (int i = 0; i < value.size(); i++) {
                String item = path + "[" + i + "]";
                String name = value.get(i).path("id").asText(label(key) + " " + (i + 1));
                items.add(new FormEntry.Block(item, name, true, true, rule, "",
                        entries(item, part.type(), value.get(i))));
            }
            entries.add(new FormEntry.Items(path, label(key), rule, NewBlock.json(part.type(), plan), items));
        } else if (key.type() instanceof ValueType.Place) {
            for (String side : List.of("east_m", "north_m")) {
                entries.add(new FormEntry.Field(path + "." + side, label(key) + " " + side.replace("_m", ""), "m",
                        FormEntry.Kind.NUMBER, text(value.path(side)), true, true, List.of(), rule));
            }
        } else {
            entries.add(new FormEntry.Field(path, label(key), unit(key.type()), kind(key.type()), text(value),
                    !given.isMissingNode(), key.required(), choices(key.type()), rule));
        }
    }

    /** What a key says, accepts and stands for when left out, for a tooltip. */
    static String rule(Key key) {
        String left = key.required() ? "Must be given." : "Left out: " + key.standard()
                .filter(s -> !s.startsWith("{") && !s.startsWith("[")).map(s -> s + " (" + key.source() + ")")
                .orElse(key.source().isEmpty() ? "nothing" : key.source()) + ".";
        return key.doc() + "\nAccepted: " + key.type().accepted() + ".\n" + left + "\nKey in the file: " + key.name();
    }

    static String unit(ValueType type) {
        if (type instanceof ValueType.Quantity quantity) {
            return quantity.unit() == Unit.ONE ? "" : UnitWords.shown(quantity.unit().word());
        }
        return type instanceof ValueType.Direction ? "\u00b0" : "";
    }

    /** The key's name without its unit, in plain words. */
    static String label(Key key) {
        String name = key.name();
        if (key.type() instanceof ValueType.Quantity quantity && quantity.unit() != Unit.ONE) {
            String ending = "_" + quantity.unit().word().replace('/', '_').replace(' ', '_');
            name = name.endsWith(ending) ? name.substring(0, name.length() - ending.length()) : name;
        } else if (key.type() instanceof ValueType.Direction && name.endsWith("_deg")) {
            name = name.substring(0, name.length() - 4);
        }
        return name.replace('_', ' ');
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
