// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanKeysTest {
    static List<Class<? extends Record>> objects() {
        return PlanKeys.objects();
    }

    @ParameterizedTest
    @MethodSource("objects")
    void everyComponentOfEveryRecordHasOneKey(Class<? extends Record> type) {
        List<String> held = PlanKeys.of(type).stream().map(Key::component).sorted().toList();
        List<String> components = Arrays.stream(type.getRecordComponents())
                .filter(c -> c.getType() != Annotations.class)
                .flatMap(c -> inParts(c, held)).sorted().toList();
        assertEquals(components, held);
        assertEquals(held.size(), PlanKeys.of(type).stream().map(Key::name).distinct().count());
    }

    /** A component, or, where keys name parts of it with a dot, all components of its own record. */
    private static Stream<String> inParts(RecordComponent component, List<String> held) {
        String start = component.getName() + ".";
        return held.stream().noneMatch(key -> key.startsWith(start)) ? Stream.of(component.getName())
                : Arrays.stream(component.getType().getRecordComponents()).map(c -> start + c.getName());
    }

    @ParameterizedTest
    @MethodSource("objects")
    void aKeyThatCarriesAQuantityEndsInItsUnit(Class<? extends Record> type) {
        for (Key key : PlanKeys.of(type)) {
            if (key.type() instanceof ValueType.Quantity quantity && quantity.unit() != Unit.ONE) {
                String ending = switch (quantity.unit()) {
                    case DAY -> "days";
                    case HOUR -> "h";
                    case A_SQUARE_CENTIMETRE -> "per_cm2";
                    default -> quantity.unit().word().replaceAll("[ /]", "_");
                };
                boolean hours = quantity.unit() == Unit.HOUR && key.name().startsWith("hours_");
                assertTrue(hours || key.name().endsWith("_" + ending), key.name() + " in " + quantity.unit().word());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("objects")
    void everyKeySaysWhatItIsAndWhereItsDefaultIsFrom(Class<? extends Record> type) {
        for (Key key : PlanKeys.of(type)) {
            assertTrue(key.doc().endsWith("."), key.name());
            assertEquals(key.required(), key.source().isEmpty(), key.name());
            key.standard().ifPresent(json -> RecordReading.standard(key, json));
        }
    }

    @Test
    void everyKindOfValueIsUsedSoThatReadingWritingAndSchemaAreTried() {
        Set<Class<?>> used = new HashSet<>();
        PlanKeys.objects().forEach(o -> PlanKeys.of(o).forEach(k -> used.add(k.type().getClass())));
        Set<Class<?>> kinds = Arrays.stream(ValueType.class.getPermittedSubclasses()).collect(Collectors.toSet());
        assertEquals(kinds, used);
    }

    @Test
    void theExampleOfEveryKeyHasEveryKey() {
        Json.Fields example = (Json.Fields) JsonReading.read(Sample.EVERY_KEY, "every-key.json");
        Set<String> seen = new HashSet<>();
        walk(example, Plan.class, seen);
        for (Class<? extends Record> type : PlanKeys.objects()) {
            for (Key key : PlanKeys.of(type)) {
                assertTrue(seen.contains(type.getName() + " " + key.name()), type.getName() + " " + key.name());
            }
        }
        assertFalse(seen.isEmpty());
    }

    private static void walk(Json.Fields fields, Class<? extends Record> type, Set<String> seen) {
        for (Key key : PlanKeys.of(type)) {
            fields.member(key.name()).ifPresent(value -> {
                seen.add(type.getName() + " " + key.name());
                if (key.type() instanceof ValueType.Part part) {
                    walk((Json.Fields) value, part.type(), seen);
                } else if (key.type() instanceof ValueType.Many many && many.of() instanceof ValueType.Part part) {
                    ((Json.Items) value).items().forEach(item -> walk((Json.Fields) item, part.type(), seen));
                }
            });
        }
    }
}
