// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.edit.Part;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.Key;
import bermwright.site.planfile.PlanKeys;
import bermwright.site.planfile.ValueType;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormModelTest {
    @TempDir
    private Path folder;
    private OpenSample sample;
    private Workbench bench;
    private FormModel form;

    @BeforeEach
    void open() {
        sample = new OpenSample(folder);
        bench = sample.bench();
        form = new FormModel(bench);
        bench.pick(Optional.of(Part.hull("A")));
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private List<FormEntry.Field> fields(FormEntry entry) {
        return entries(entry).filter(FormEntry.Field.class::isInstance).map(FormEntry.Field.class::cast).toList();
    }

    private FormEntry.Field field(String path) {
        return fields(form.form().orElseThrow()).stream().filter(f -> f.path().equals(path)).findFirst()
                .orElseThrow(() -> new AssertionError("no field " + path));
    }

    @Test
    void everyKeyOfEveryKindHasAnEntryWithItsRule() {
        for (Part part : Inventory.parts(bench.plan())) {
            bench.pick(Optional.of(part));
            FormEntry.Block block = form.whole().orElseThrow();
            List<Key> keys = part.kind() == Part.Kind.PLAN ? List.of() : PlanKeys.of(type(part.kind()));
            for (Key key : keys) {
                assertTrue(block.entries().stream().anyMatch(e -> e.path().startsWith(block.path() + "." + key.name())),
                        part.words() + " shows " + key.name());
            }
            fields(block).forEach(f -> assertFalse(f.rule().isBlank(), f.path()));
        }
    }

    private static Class<? extends Record> type(Part.Kind kind) {
        ValueType type = PlanKeys.key(Plan.class, kind.key()).orElseThrow().type();
        return ((ValueType.Part) (type instanceof ValueType.Many many ? many.of() : type)).type();
    }

    @Test
    void unitsStandAtTheFieldAndNotInItsName() {
        FormEntry.Field mass = field("hulls[0].mass_t");
        assertEquals("mass", mass.label());
        assertEquals("t", mass.unit());
        FormEntry.Field skin = field("hulls[0].skin[0].areal_density_g_cm2");
        assertEquals("areal density", skin.label());
        assertEquals("g/cm2", skin.unit().replace("\u00b2", "2"));
    }

    @Test
    void noTwoFieldsOfABlockHaveOneName() {
        assertEquals("far end, in m", field("hulls[0].cover.far_end_m").label());
        assertEquals("far end", field("hulls[0].cover.far_end").label());
        entries(form.form().orElseThrow()).filter(FormEntry.Block.class::isInstance).map(FormEntry.Block.class::cast)
                .forEach(block -> assertEquals(block.entries().size(), block.entries().stream().map(FormEntry::label)
                        .distinct().count(), block.path()));
    }

    @Test
    void aValueOutOfRangeStaysInItsFieldAndThePlanKeepsTheOldOne() {
        assertFalse(form.type(field("hulls[0].length_m"), "-3"));
        FormModel.Refused refused = form.refused(field("hulls[0].length_m")).orElseThrow();
        assertEquals("-3", refused.text());
        assertTrue(refused.reason().contains("0.1 to "), refused.reason());
        assertEquals("38", refused.standing());
        assertEquals(38, bench.plan().hull("A").orElseThrow().length());
        assertFalse(bench.document().isUnsaved());
    }

    @Test
    void whatIsNotANumberIsRefusedWithTheSameRange() {
        for (String text : List.of("abc", "NaN", "1e999", "0x10", "12m")) {
            assertFalse(form.type(field("hulls[0].length_m"), text), text);
            assertTrue(form.refused(field("hulls[0].length_m")).orElseThrow().reason().contains("0.1 to "),
                    text);
        }
        assertEquals(1, form.refusedCount());
        assertTrue(form.type(field("hulls[0].length_m"), " 41,5 "), "a decimal comma is understood");
        assertEquals(41.5, bench.plan().hull("A").orElseThrow().length());
        assertEquals(0, form.refusedCount());
    }

    @Test
    void aRefusedTextGivesWayOnceThePlanTakesAnotherValue() {
        form.type(field("hulls[0].length_m"), "-3");
        assertTrue(form.type(field("hulls[0].length_m"), "40"));
        form.type(field("hulls[0].length_m"), "-4");
        bench.undo();
        assertEquals(Optional.empty(), form.refused(field("hulls[0].length_m")));
    }

    @Test
    void anEmptyFieldTakesItsDefault() {
        assertTrue(form.type(field("hulls[0].lowering.wander_deg"), ""));
        assertFalse(field("hulls[0].lowering.wander_deg").isGiven());
        assertFalse(form.type(field("hulls[0].mass_t"), ""), "a plan cannot do without a mass");
    }

    @Test
    void blocksAndItemsCanBeAddedAndTakenOut() {
        FormEntry.Block root = form.whole().orElseThrow();
        for (FormEntry entry : root.entries()) {
            if (entry instanceof FormEntry.Block block && !block.isThere()) {
                assertTrue(form.add(block), "add " + block.label());
            } else if (entry instanceof FormEntry.Items items) {
                assertTrue(form.add(items), "add to " + items.label());
            }
        }
        FormEntry.Block shell = (FormEntry.Block) form.whole().orElseThrow().entries().stream()
                .filter(e -> e.path().endsWith(".shell")).findFirst().orElseThrow();
        assertTrue(shell.isThere());
        assertTrue(form.remove(shell));
        assertTrue(bench.plan().hull("A").orElseThrow().shell().isEmpty());
    }

    @Test
    void whatPassesThroughACoverIsAddedChangedAndShownOnTheMap() {
        FormEntry.Items none = (FormEntry.Items) entry("hulls[0].cover.pass_throughs");
        assertTrue(form.add(none));
        assertTrue(form.add(entry("hulls[0].cover.pass_throughs")));
        assertEquals("feed-through-2", field("hulls[0].cover.pass_throughs[1].id").text());
        assertTrue(form.type(field("hulls[0].cover.pass_throughs[0].kind"), "shaft"));
        assertTrue(form.type(field("hulls[0].cover.pass_throughs[0].along_m"), "12"));
        assertTrue(form.type(field("hulls[0].cover.pass_throughs[0].clear_m"), "0.5"));
        List<MapFigure> shown = bench.figures().stream().filter(f -> f.look() == FigureLook.PASS_THROUGH).toList();
        assertEquals(List.of("shaft feed-through", "feed-through feed-through-2"),
                shown.stream().map(MapFigure::label).toList());
        // Lying towards 80 degrees from east 120, its pivot line 3.7 m ahead: 12 m on the middle of the shaft.
        assertEquals(120 + 15.7 * Math.sin(Math.toRadians(80)), shown.get(0).box().centre().east(), 0.01);
        assertEquals(1, bench.figures().stream().filter(f -> f.look() == FigureLook.KEPT_CLEAR).count());
        assertTrue(form.remove((FormEntry.Block) entry("hulls[0].cover.pass_throughs[1]")));
        assertEquals(1, bench.plan().hull("A").orElseThrow().cover().orElseThrow().passThroughs().size());
    }

    private FormEntry entry(String path) {
        return entries(form.form().orElseThrow()).filter(e -> e.path().equals(path)).findFirst().orElseThrow();
    }

    /** An entry and all that is in it. */
    static Stream<FormEntry> entries(FormEntry entry) {
        List<? extends FormEntry> inner = entry instanceof FormEntry.Block block ? block.entries()
                : entry instanceof FormEntry.Items items ? items.items()
                : entry instanceof FormEntry.Group group ? group.entries() : List.of();
        return Stream.concat(Stream.of(entry), inner.stream().flatMap(FormModelTest::entries));
    }

    @Test
    void aFormIsGroupedAndShowsOnlyWhatTheKindHas() {
        List<String> headings = form.form().orElseThrow().entries().stream().map(FormEntry::label).toList();
        assertEquals(List.of("Place", "Shape", "Mass", "Wall", "Laying down", "Cover", "People", "More"), headings);
        String anchor = "hulls[0].lowering.stays[0].anchor";
        assertTrue(fields(form.form().orElseThrow()).stream().noneMatch(f -> f.path().equals(anchor + ".width_m")),
                "ballast has no width");
        assertFalse(field(anchor + ".mass_t").text().isEmpty());
        assertTrue(form.type(field(anchor + ".kind"), "screw"));
        assertTrue(field(anchor + ".diameter_m").text().isEmpty());
        assertFalse(field(anchor + ".mass_t").text().isEmpty(), "what is given is never hidden");
    }

    @Test
    void whatHasANameIsChosenFromAListWithItsSource() {
        assertTrue(field("hulls[0].skin[0].material").choices().contains("aluminium"));
        assertFalse(field("hulls[0].skin[0].material").sources().get("steel").isBlank());
        bench.pick(Optional.of(new Part(Part.Kind.WORK_STEP, "2")));
        assertEquals(List.of("A", "B"), field("order_of_work[1].of").choices());
        assertEquals(List.of("1", "2", "3"), field("order_of_work[1].after").choices());
        assertEquals(List.of("hauler"), field("order_of_work[1].machine").choices());
        bench.pick(Optional.of(new Part(Part.Kind.EXPOSURE, "")));
        assertTrue(field("exposure.event").choices().contains("august 1972"));
        assertFalse(field("exposure.limits[0].published").sources().isEmpty());
    }

    @Test
    void noFormShowsAKeyOfTheFile() {
        java.util.Set<String> keys = new java.util.HashSet<>();
        PlanKeys.objects().forEach(type -> PlanKeys.of(type).stream().map(Key::name).filter(n -> n.contains("_"))
                .forEach(keys::add));
        for (Part part : Inventory.parts(bench.plan())) {
            bench.pick(Optional.of(part));
            entries(form.form().orElseThrow()).forEach(e -> {
                String words = e.label() + " " + (e instanceof FormEntry.Field f ? f.rule() : "");
                keys.forEach(key -> assertFalse(words.matches("(?s).*\\b" + key + "\\b.*") && !key.equals("plan_json"),
                        e.path() + " says " + key + ": " + words));
            });
        }
        assertFalse(form.type(field("rules.hull_spacing_m"), "-1"));
        assertFalse(form.refused(field("rules.hull_spacing_m")).orElseThrow().reason().contains("_m"));
    }

    @Test
    void aRenamedPartStaysPicked() {
        assertTrue(form.type(field("hulls[0].id"), "alpha"));
        assertEquals(Optional.of(Part.hull("alpha")), bench.picked());
        assertFalse(form.type(field("hulls[0].id"), "B"), "an id stands once");
    }

    @Test
    void cornersAreTypedAsLines() {
        bench.pick(Optional.of(new Part(Part.Kind.KEEP_OUT, "boulders")));
        FormEntry.Field area = field("keep_outs[0].area");
        assertEquals("290  280\n330  280\n330  320\n290  320", area.text());
        assertTrue(form.type(area, "290 280\n330 280\n310 330"));
        assertEquals(3, bench.plan().keepOuts().get(0).area().corners().size());
        assertFalse(form.type(field("keep_outs[0].area"), "290 280\n330"));
    }
}
