// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No validation row may have set a number in the production of particles. */
class ClosureNumbersTest {
    @Test
    void noFittedNumberSawAValidationRow() throws IOException {
        List<String> rows = rows();
        assertFalse(rows.isEmpty());
        assertEquals(List.of(), breaches(rows));
    }

    @Test
    void aPlantedBreachIsFound() {
        String planted = "neutron yield,2.0,1,Cascade,air-226 and regolith-180,hand-set";
        assertEquals(List.of(planted), breaches(List.of(planted)));
    }

    private static List<String> breaches(List<String> rows) {
        return rows.stream().filter(row -> {
            String saw = row.split(",")[4];
            return DoseRows.ids().stream().anyMatch(saw::contains) || saw.contains("air") || saw.contains("sea");
        }).toList();
    }

    private static List<String> rows() throws IOException {
        Path file = Path.of(System.getProperty("bermwright.root", ".."), "shielding", "closure-numbers.csv");
        return Files.readAllLines(file).stream().filter(l -> !l.startsWith("#") && !l.startsWith("name,")).toList();
    }
}
