// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Answers;
import bermwright.site.answer.Figure;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The JSON Schema of what {@code assess --json} gives, made from the tables of results. */
final class AnswerSchema {
    private static final List<String[]> FINDING = List.of(
            new String[] {"rule", "string", "Rule of the catalogue, which `rules` prints."},
            new String[] {"level", "string", "refuse, warn or note."},
            new String[] {"subject", "string", "What it is about."},
            new String[] {"measured", "number", "What was found, in its unit."},
            new String[] {"limit", "number", "What is allowed, in its unit."},
            new String[] {"unit", "string", "Unit of measured and limit."},
            new String[] {"place", "array", "East and north, in projected metres."},
            new String[] {"source", "string", "Where the limit is from."},
            new String[] {"text", "string", "What was found and what it means."},
            new String[] {"todo", "string", "What to do."},
            new String[] {"id", "string", "Rule, subject and parts concerned; the name by which it is known again."},
            new String[] {"group", "string", "Findings with one group are read as one."},
            new String[] {"number", "string", "Its number in text, pages and drawings."});

    private AnswerSchema() {
    }

    static ObjectNode made() {
        ObjectNode schema = JsonObjects.object().put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("title", "What bermwright answers about a plan").put("type", "object");
        ObjectNode finding = at(schema, "findings[]").put("description", "What is wrong or worth knowing.");
        FINDING.forEach(f -> finding.withObjectProperty("properties").putObject(f[0]).put("type", f[1])
                .put("description", f[2]));
        Answers.all().forEach(table -> put(schema, table));
        CommandSchemas.into(schema);
        return schema;
    }

    private static void put(ObjectNode schema, AnswerTable<?> table) {
        put(at(schema, table.path()).put("description", table.meaning()), table, table.model());
    }

    /** The figures of a table and of what belongs to it. */
    static void put(ObjectNode object, AnswerTable<?> table, String model) {
        for (Figure<?> figure : table.figures()) {
            int point = figure.key().indexOf('.');
            ObjectNode holder = point < 0 ? object : at(object, figure.key().substring(0, point));
            ObjectNode one = holder.withObjectProperty("properties").putObject(figure.key().substring(point + 1))
                    .put("type", figure.type().word()).put("description", figure.meaning());
            figure.unit().ifPresent(u -> one.put("unit", u.symbol().isEmpty() ? "1" : u.symbol())
                    .put(figure.digits() < 0 ? "significant_digits" : "digits", Math.abs(figure.digits())));
            if (!model.isEmpty()) {
                one.put("model", model);
            }
        }
        for (AnswerTable.Part<?, ?> part : table.parts()) {
            String inner = part.table().model().isEmpty() ? model : part.table().model();
            ObjectNode holder = part.key().isEmpty() ? object
                    : at(object, part.key() + (part.many() ? "[]" : "")).put("description", part.table().meaning());
            put(holder, part.table(), inner);
        }
    }

    /** The schema of the object at a path; {@code []} stands behind an array. */
    static ObjectNode at(ObjectNode schema, String path) {
        ObjectNode here = schema;
        for (String step : path.split("\\.")) {
            boolean many = step.endsWith("[]");
            here = here.withObjectProperty("properties").withObjectProperty(step.replace("[]", ""));
            here.put("type", many ? "array" : "object");
            if (many) {
                here = here.withObjectProperty("items").put("type", "object");
            }
        }
        return here;
    }
}
