// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.edit.NewPart;
import bermwright.editor.edit.Part;
import bermwright.foundation.Point;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.Key;
import bermwright.site.planfile.PlanKeys;
import bermwright.site.planfile.PlanValues;
import bermwright.site.planfile.ValueType;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether a person can reach and change every key of the plan file through the forms. */
class FormCoverageTest {
    /** Texts that fit some key each; a field takes the first that is accepted and changes the plan. */
    private static final List<String> TYPED = List.of("0.5", "1", "2", "3", "12", "45", "350", "1500", "steel", "other",
            "A", "B", "A/main", "B/main", "A/side", "P1", "hauler", "wall-1", "10 10\n60 10\n60 50", "1, 2", "1",
            "ground.asc", "true", "false", "moon of a sample", "0", "2033-03-01");

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
        for (Part.Kind kind : Part.Kind.values()) {
            if (!kind.isSingle() && Part.ids(bench.plan(), kind).isEmpty()) {
                assertTrue(bench.make(NewPart.of(bench.plan(), kind, new Point(200, 200), 30).orElseThrow()),
                        kind.word());
            }
        }
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private static Part first(Plan plan, Part.Kind kind) {
        return Inventory.parts(plan, kind).get(0);
    }

    /** Puts into the picked part every block it can have and one item more into every list. */
    private void fill() {
        Set<String> done = new TreeSet<>();
        boolean isNew = true;
        while (isNew) {
            isNew = false;
            for (FormEntry entry : FormModelTest.entries(form.whole().orElseThrow()).toList()) {
                boolean isAddable = entry instanceof FormEntry.Items
                        || entry instanceof FormEntry.Block block && !block.isThere();
                if (isAddable && done.add(entry.path())) {
                    assertTrue(form.add(entry), entry.path() + ": " + bench.trouble().orElse(""));
                    isNew = true;
                    break;
                }
            }
        }
    }

    private Stream<FormEntry.Field> fields() {
        return FormModelTest.entries(form.whole().orElseThrow()).filter(FormEntry.Field.class::isInstance)
                .map(FormEntry.Field.class::cast);
    }

    /** The keys that hold a value, with those of the objects in them, such as {@code hulls.cover.lift_m}. */
    private static void keys(Set<String> found, String path, Class<? extends Record> type) {
        for (Key key : PlanKeys.of(type)) {
            ValueType value = key.type() instanceof ValueType.Many many ? many.of() : key.type();
            if (value instanceof ValueType.Part part) {
                keys(found, path + key.name() + ".", part.type());
            } else if (value instanceof ValueType.Place) {
                found.add(path + key.name() + ".east_m");
                found.add(path + key.name() + ".north_m");
            } else {
                found.add(path + key.name());
            }
        }
        found.add(path + "note");
    }

    @Test
    void everyKeyOfTheKeyTableHasAField() {
        Set<String> keys = new TreeSet<>();
        keys(keys, "", Plan.class);
        Set<String> shown = new TreeSet<>();
        for (Part.Kind kind : Part.Kind.values()) {
            bench.pick(Optional.of(first(bench.plan(), kind)));
            fill();
            fields().forEach(f -> shown.add(f.path().replaceAll("\\[\\d+]", "")));
        }
        assertEquals(keys, shown);
    }

    @Test
    void everyKeyIsShownForSomeKindOfItsThing() {
        Set<String> all = new TreeSet<>();
        Set<String> shown = new TreeSet<>();
        bench.pick(Optional.of(first(bench.plan(), Part.Kind.HULL)));
        fill();
        for (String path : fields().map(FormEntry.Field::path).toList()) {
            all.add(path.replaceAll("\\[\\d+]", ""));
        }
        for (FormEntry.Field choice : fields().filter(f -> f.kind() == FormEntry.Kind.CHOICE
                && f.sources().isEmpty()).toList()) {
            for (String word : choice.choices()) {
                form.type(fields().filter(f -> f.path().equals(choice.path())).findFirst().orElseThrow(), word);
                FormModelTest.entries(form.form().orElseThrow()).forEach(e -> shown.add(e.path()
                        .replaceAll("\\[\\d+]", "")));
            }
        }
        all.removeAll(shown);
        assertEquals(Set.of(), all);
    }

    @Test
    void everyFieldTakesAnotherValue() {
        List<String> stuck = new ArrayList<>();
        for (Part.Kind kind : Part.Kind.values()) {
            Part part = first(bench.plan(), kind);
            bench.pick(Optional.of(part));
            fill();
            for (String path : fields().map(FormEntry.Field::path).toList()) {
                bench.pick(Optional.of(part));
                if (!takesAnother(path)) {
                    stuck.add(path);
                }
                bench.pick(Optional.of(part));
            }
        }
        assertEquals(List.of(), stuck);
    }

    private boolean takesAnother(String path) {
        FormEntry.Field field = fields().filter(f -> f.path().equals(path)).findFirst().orElseThrow();
        Optional<String> before = PlanValues.json(bench.plan(), path);
        List<String> texts = new ArrayList<>(field.choices().isEmpty() ? TYPED : field.choices());
        texts.add("");
        for (String text : texts) {
            if (!text.equals(field.text()) && form.type(field, text)
                    && !PlanValues.json(bench.plan(), path).equals(before)) {
                bench.undo();
                return true;
            }
        }
        return false;
    }

    @Test
    void everyBlockAndItemThatWasAddedCanBeTakenOutAgain() {
        bench.pick(Optional.of(Part.hull("A")));
        Plan before = bench.plan();
        fill();
        int steps = 0;
        while (!bench.plan().equals(before) && steps < 200) {
            bench.undo();
            steps++;
        }
        assertEquals(before, bench.plan());
        fill();
        for (boolean isGone = true; isGone;) {
            isGone = FormModelTest.entries(form.whole().orElseThrow()).filter(FormEntry.Block.class::isInstance)
                    .map(FormEntry.Block.class::cast).filter(b -> b.isThere() && b.canGo()).anyMatch(form::remove);
        }
        assertTrue(bench.plan().hull("A").orElseThrow().cover().isEmpty());
        assertTrue(bench.plan().hull("A").orElseThrow().lowering().isEmpty());
        assertTrue(bench.plan().hull("A").orElseThrow().stations().isEmpty());
    }
}
