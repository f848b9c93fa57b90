// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.fuzz.Changes;
import bermwright.fuzz.Fuzz;
import bermwright.site.plan.Plan;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans and judgements changed by chance are read with every key they hold, or refused. */
class PlanFuzzTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int DRAWN = 40;
    private static final String JUDGEMENTS = """
            {
              "bermwright_judgements": 1,
              "judgements": [
                { "of": "F1", "decision": "accepted", "name": "A. Reviewer", "date": "2031-02-14", "reason": "seen" }
              ]
            }
            """;

    @TempDir
    Path folder;

    @Test
    void plansAreReadWithEveryKeyOrRefused() throws IOException {
        List<byte[]> good = new ArrayList<>(List.of(Fuzz.bytes(Sample.EVERY_KEY), Fuzz.bytes(Sample.LEAST)));
        for (int seed = 0; seed < DRAWN; seed++) {
            good.add(Fuzz.bytes(JsonText.pretty(new DrawnPlan(seed).plan())));
        }
        new Fuzz("plan", 300, good).run(PlanFuzzTest.class, PlanFuzzTest::changed, input -> {
            String text = Fuzz.text(input);
            Plan plan = PlanFiles.read(text, "plan.json");
            String written = PlanFiles.text(plan);
            if (!plan.equals(PlanFiles.read(written, "written.json"))) {
                return "another plan comes back";
            }
            return dropped(JSON.readTree(text), JSON.readTree(written), "");
        });
    }

    @Test
    void judgementsAreReadOrRefused() throws IOException {
        Path plan = folder.resolve("plan.json");
        Path file = JudgementFiles.beside(plan);
        new Fuzz("judgements", 30, List.of(Fuzz.bytes(JUDGEMENTS))).run(PlanFuzzTest.class, PlanFuzzTest::changed,
                input -> {
                    Files.write(file, input);
                    JudgementFiles.of(plan);
                    return "";
                });
    }

    /** The first key of what was read that is not in what is written, or holds something else there. */
    private static String dropped(JsonNode read, JsonNode written, String place) {
        if (read.isObject()) {
            for (Map.Entry<String, JsonNode> member : read.properties()) {
                String key = place + "." + member.getKey();
                if (!written.has(member.getKey())) {
                    return "dropped " + key;
                }
                String inside = dropped(member.getValue(), written.get(member.getKey()), key);
                if (!inside.isEmpty()) {
                    return inside;
                }
            }
            return "";
        } else if (read.isArray()) {
            // A ring that ends with its first corner is the ring without that corner.
            boolean isClosed = read.size() == written.size() + 1 && read.get(0).equals(read.get(read.size() - 1));
            if (read.size() != written.size() && !isClosed) {
                return "another length of " + place;
            }
            for (int i = 0; i < written.size(); i++) {
                String inside = dropped(read.get(i), written.get(i), place + "[" + i + "]");
                if (!inside.isEmpty()) {
                    return inside;
                }
            }
            return "";
        }
        boolean isSame = read.isNumber() && written.isNumber() ? read.doubleValue() == written.doubleValue()
                : read.equals(written);
        return isSame ? "" : place + " was " + read + ", is " + written;
    }

    private static byte[] changed(byte[] input, byte[] other, Random random) {
        if (random.nextInt(4) == 0) {
            return Changes.ofText(input, other, random);
        }
        try {
            JsonNode tree = JSON.readTree(Fuzz.text(input));
            List<JsonNode> holders = new ArrayList<>();
            collect(tree, holders);
            List<JsonNode> others = new ArrayList<>();
            collect(JSON.readTree(Fuzz.text(other)), others);
            if (!holders.isEmpty() && !others.isEmpty()) {
                change(holders.get(random.nextInt(holders.size())), others.get(random.nextInt(others.size())), random);
                return Fuzz.bytes(tree.toPrettyString());
            }
        } catch (JsonProcessingException | StackOverflowError noTree) {
            return Changes.ofText(input, other, random);
        }
        return Changes.ofText(input, other, random);
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainerNode() && !node.isEmpty()) {
            holders.add(node);
            node.forEach(child -> collect(child, holders));
        }
    }

    private static void change(JsonNode holder, JsonNode other, Random random) {
        JsonNode given = element(other, random);
        if (holder instanceof ObjectNode object) {
            List<String> names = new ArrayList<>(object.properties().stream().map(Map.Entry::getKey).toList());
            String name = names.get(random.nextInt(names.size()));
            switch (random.nextInt(6)) {
                case 0 -> object.remove(name);
                case 1 -> object.set(name + (random.nextBoolean() ? "s" : ""), given);
                case 2 -> object.set(List.of("x_own", "note", "id", "kind", "spread", "", name + "_spread")
                        .get(random.nextInt(7)), odd(random));
                case 3 -> object.set(names.get(random.nextInt(names.size())), object.get(name).deepCopy());
                case 4 -> object.set(name, scaled(object.get(name), random));
                default -> object.set(name, odd(random));
            }
        } else if (holder instanceof ArrayNode array) {
            int at = random.nextInt(array.size());
            switch (random.nextInt(4)) {
                case 0 -> array.remove(at);
                case 1 -> array.insert(at, array.get(random.nextInt(array.size())).deepCopy());
                case 2 -> array.set(at, given);
                default -> array.set(at, odd(random));
            }
        }
    }

    private static JsonNode element(JsonNode holder, Random random) {
        int at = random.nextInt(holder.size());
        for (JsonNode child : holder) {
            if (at-- == 0) {
                return child.deepCopy();
            }
        }
        return odd(random);
    }

    /** A number a little, much or far beside what it was. */
    private static JsonNode scaled(JsonNode value, Random random) {
        double factor = List.of(-1.0, 0.0, 0.5, 0.999, 2.0, 1e3, 1e9, 1e300).get(random.nextInt(8));
        return value.isNumber() ? JsonNodeFactory.instance.numberNode(value.doubleValue() * factor) : odd(random);
    }

    private static JsonNode odd(Random random) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        return List.<JsonNode>of(make.nullNode(), make.numberNode(-1), make.numberNode(0), make.numberNode(1e308),
                make.numberNode(Long.MAX_VALUE), make.numberNode(1e-300), make.textNode(""), make.textNode("NaN"),
                make.textNode("../../etc/hosts"), make.textNode("lowered"), make.textNode("\u0000"),
                make.booleanNode(true), make.objectNode(), make.arrayNode(), make.arrayNode().add(make.arrayNode()),
                make.objectNode().put("note", "x")).get(random.nextInt(16));
    }
}
