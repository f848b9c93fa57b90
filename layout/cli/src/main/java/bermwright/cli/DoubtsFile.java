// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Finding.Level;
import bermwright.report.reader.DocumentControl;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.Figure;
import bermwright.site.doubt.FigureDoubt;
import bermwright.site.doubt.UncertainInput;
import bermwright.site.plan.Plan;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Doubts kept in a file, so that a report shows them later without sampling anew: every figure's samples, with the
 * checksums of the plan and the elevation file that they are of.
 */
final class DoubtsFile {
    static final String NAME = "doubts.json";
    private static final String OPTION = "--doubts";
    private static final String PLAN = "plan_sha256";
    private static final String ELEVATION = "elevation_sha256";

    private DoubtsFile() {
    }

    private static Path elevation(Plan plan, Path file) {
        return file.resolveSibling(plan.ground().elevationFile());
    }

    static void write(Doubts doubts, Plan plan, Path planFile, Path folder) throws IOException {
        ObjectNode page = JsonObjects.object();
        page.put(PLAN, DocumentControl.checksum(planFile)).put(ELEVATION, DocumentControl.checksum(elevation(plan,
                planFile)));
        page.put("samples", doubts.samples()).put("failed", doubts.failed()).put("seed", doubts.seed());
        ArrayNode inputs = page.putArray("inputs");
        doubts.inputs().forEach(i -> inputs.addObject().put("input", i.group()).put("kind", i.kind().name())
                .put("best", i.value()).put("spread", i.spread()).put("unit", i.unit()).put("source", i.source())
                .put("finding_out", i.finding().words()).put("is_sampled", i.finding().isSampled()));
        ArrayNode figures = page.putArray("figures");
        doubts.figures().forEach(f -> put(figures.addObject(), f));
        chances(page.putArray("findings"), doubts.findings());
        ObjectNode full = page.putObject("in_full").put("samples", doubts.inFull().samples());
        ArrayNode confirmed = full.putArray("confirmed");
        doubts.inFull().confirmed().forEach(c -> figure(confirmed.addObject(), c.figure()).put("middle", c.middle())
                .put("greatest", c.greatest()));
        chances(full.putArray("findings"), doubts.inFull().findings());
        Files.writeString(folder.resolve(NAME), new ObjectMapper().writeValueAsString(page) + "\n");
    }

    private static ObjectNode figure(ObjectNode one, Figure figure) {
        one.put("id", figure.id()).put("figure", figure.name()).put("unit", figure.unit())
                .put("is_least", figure.isLeast());
        JsonObjects.put(one, "limit", figure.limit());
        return one;
    }

    private static void put(ObjectNode one, FigureDoubt f) {
        figure(one, f.figure());
        JsonObjects.put(one, "best", f.best());
        JsonObjects.put(one, "kept", f.kept());
        one.put("left_out", f.leftOut());
        ArrayNode shares = one.putArray("shares");
        f.shares().forEach(s -> shares.addObject().put("input", s.group()).put("first", s.first())
                .put("total", s.total()).put("error", s.error()));
        ArrayNode worth = one.putArray("worth");
        f.worth().forEach(w -> worth.addObject().put("finding_out", w.finding()).put("now", w.now())
                .put("then", w.then()));
        f.values().forEach(one.putArray("values")::add);
    }

    private static void chances(ArrayNode list, List<Doubts.FindingChance> findings) {
        findings.forEach(f -> {
            ObjectNode one = list.addObject().put("id", f.id()).put("refuses", f.refuses()).put("warns", f.warns())
                    .put("notes", f.notes());
            f.best().ifPresent(l -> one.put("best", l.name()));
        });
    }

    /** What a folder of doubts holds; refused where it is of another plan or another ground. */
    static Doubts read(Path folder, Plan plan, Path planFile) {
        Path file = folder.resolve(NAME);
        try {
            if (!Files.isRegularFile(file)) {
                throw Options.bad(OPTION, folder.toString(), "a folder that doubts --out has written, with " + NAME);
            }
            JsonNode page = new ObjectMapper().readTree(Files.readString(file));
            same(page, PLAN, planFile, file);
            same(page, ELEVATION, elevation(plan, planFile), file);
            JsonNode full = page.required("in_full");
            return new Doubts(all(page, "inputs", DoubtsFile::input), page.required("samples").asInt(),
                    page.required("failed").asInt(), page.required("seed").asLong(),
                    all(page, "figures", DoubtsFile::doubt), all(page, "findings", DoubtsFile::chance),
                    new Doubts.InFull(full.required("samples").asInt(), all(full, "confirmed", c ->
                            new Doubts.Confirmed(figure(c), number(c, "middle"), number(c, "greatest"))),
                            all(full, "findings", DoubtsFile::chance)));
        } catch (IOException | IllegalArgumentException broken) {
            throw Options.unusable(OPTION, file + " cannot be read (" + broken.getMessage() + ")",
                    "a folder that doubts --out has written", broken);
        }
    }

    private static void same(JsonNode page, String key, Path now, Path file) throws IOException {
        String then = page.required(key).asText();
        String is = DocumentControl.checksum(now);
        if (!then.equals(is)) {
            throw Options.bad(OPTION, file + " with " + key + " " + then, "doubts of " + now + " as it is, " + is
                    + ": run bermwright doubts " + "PLAN --out " + file.getParent() + " again");
        }
    }

    private static <T> List<T> all(JsonNode object, String key, Function<JsonNode, T> read) {
        List<T> all = new ArrayList<>();
        object.required(key).forEach(one -> all.add(read.apply(one)));
        return all;
    }

    private static double number(JsonNode object, String key) {
        return object.path(key).asDouble(Double.NaN);
    }

    private static String words(JsonNode object, String key) {
        return object.required(key).asText();
    }

    private static UncertainInput input(JsonNode one) {
        return new UncertainInput(words(one, "input"), UncertainInput.Kind.valueOf(words(one, "kind")),
                number(one, "best"), number(one, "spread"), words(one, "unit"), words(one, "source"),
                new UncertainInput.FindingOut(words(one, "finding_out"), one.required("is_sampled").asBoolean()),
                List.of());
    }

    private static Figure figure(JsonNode one) {
        return new Figure(words(one, "id"), words(one, "figure"), words(one, "unit"), one.has("limit")
                ? OptionalDouble.of(number(one, "limit")) : OptionalDouble.empty(),
                one.required("is_least").asBoolean());
    }

    private static FigureDoubt doubt(JsonNode one) {
        return new FigureDoubt(figure(one), number(one, "best"), all(one, "values", JsonNode::asDouble),
                number(one, "kept"), all(one, "shares", s -> new FigureDoubt.GroupShare(words(s, "input"),
                        number(s, "first"), number(s, "total"), number(s, "error"))), number(one, "left_out"),
                all(one, "worth", w -> new FigureDoubt.Worth(words(w, "finding_out"), number(w, "now"),
                        number(w, "then"))));
    }

    private static Doubts.FindingChance chance(JsonNode one) {
        return new Doubts.FindingChance(words(one, "id"), number(one, "refuses"), number(one, "warns"),
                number(one, "notes"), Optional.ofNullable(one.get("best")).map(l -> Level.valueOf(l.asText())));
    }
}
