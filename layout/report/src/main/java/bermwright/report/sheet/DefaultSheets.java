// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which keys a plan left out, what they were taken as, and where that is from. */
public final class DefaultSheets {
    private static final int DIGITS = 6;
    private final JsonNode schema;
    private final Map<String, List<String>> rows = new LinkedHashMap<>();

    private DefaultSheets(JsonNode schema) {
        this.schema = schema;
    }

    /** The table of defaults taken; the same default in several places is one row. */
    public static Table table(Plan plan) {
        DefaultSheets sheets;
        try {
            ObjectMapper json = new ObjectMapper();
            sheets = new DefaultSheets(json.readTree(PlanFiles.schema()));
            sheets.walk(json.readTree(PlanFiles.text(plan)), sheets.schema, "");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the plan's own text or its schema is no JSON: " + e.getMessage(), e);
        }
        return new Table("defaults-taken", "Keys the plan leaves out, and what was taken for them", List.of(
                Column.words("key", "key"), Column.words("taken", "taken"), Column.words("source", "source")),
                new ArrayList<>(sheets.rows.values()));
    }

    /** The soil as every part of the answer takes it. */
    public static Table soil(Plan plan) {
        return new Table("soil-taken", "The soil, and the keys of the plan it is from", List.of(
                Column.words("about", "about"), Column.words("taken", "taken"), Column.words("from", "from")),
                PlanSoil.of(plan.ground()).statements().stream().map(s -> List.of(s.about(), s.taken(), s.from()))
                        .toList());
    }

    /** The figures of the soil, one number a cell: low and high one standard deviation apart from the value. */
    public static Table soilFigures(Plan plan) {
        return new Table("soil-figures", "The soil in figures; low and high are one standard deviation down and up",
                List.of(Column.words("state", "soil"), Column.words("quantity", "quantity"),
                Column.number("depth_m", "at depth (m)"), Column.number("value", "value"), Column.words("unit", "unit"),
                Column.number("low", "low"), Column.number("high", "high"), Column.words("key", "from")),
                PlanSoil.of(plan.ground()).figures().stream().map(f -> List.of(f.state(), f.quantity(),
                        f.depth().isPresent() ? number(f.depth().getAsDouble()) : "", number(f.value()), f.unit(),
                        f.spread().isPresent() ? number(f.value() - f.spread().getAsDouble()) : "",
                        f.spread().isPresent() ? number(f.value() + f.spread().getAsDouble()) : "", f.key())).toList());
    }

    private static String number(double value) {
        return new BigDecimal(value).round(new MathContext(DIGITS)).stripTrailingZeros().toPlainString();
    }

    private void walk(JsonNode node, JsonNode rule, String path) {
        JsonNode meant = rule.has("$ref") ? schema.at(rule.get("$ref").asText().substring(1)) : rule;
        if (node.isArray()) {
            node.forEach(item -> walk(item, meant.path("items"), path + "[]"));
            return;
        }
        if (!node.isObject()) {
            return;
        }
        meant.path("properties").properties().forEach(property -> {
            String key = path.isEmpty() ? property.getKey() : path + "." + property.getKey();
            JsonNode value = node.get(property.getKey());
            if (value != null) {
                walk(value, property.getValue(), key);
            } else if (property.getValue().has("default")) {
                rows.putIfAbsent(key, List.of(key, property.getValue().get("default").toString(),
                        property.getValue().path("default_source").asText("")));
            }
        });
    }
}
