// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ValidationTest {
    @Test
    void thePageOfComparisonsIsThatOfToday() throws IOException {
        String page = Validation.page();
        Path target = Path.of(System.getProperty("bermwright.target", "target"));
        Files.createDirectories(target);
        Files.writeString(target.resolve("VALIDATION.md"), page);
        Path committed = Path.of(System.getProperty("bermwright.root", ".."), "shielding", "VALIDATION.md");
        assertEquals(page, Files.readString(committed).replace("\r\n", "\n"),
                "look at the change, then copy target/VALIDATION.md over shielding/VALIDATION.md");
    }

    @Test
    void thereAreAtLeastSixtyPrintedFigures() {
        assertTrue(Validation.checks() >= 60, Validation.checks() + " figures");
        for (String[] row : DoseRows.printed()) {
            assertTrue(Double.parseDouble(row[2]) <= Double.parseDouble(row[1])
                    && Double.parseDouble(row[1]) <= Double.parseDouble(row[3]), row[0]);
            assertFalse(row[7].isBlank(), row[0]);
        }
    }

    @Test
    void aKnownMissIsStillOne() {
        for (String[] row : DoseRows.printed()) {
            double ours = DoseRows.answers().get(row[0]);
            boolean inside = ours >= Double.parseDouble(row[2]) && ours <= Double.parseDouble(row[3]);
            assertNotEquals(row[5].equals("yes"), inside, row[0] + ": ours is " + ours);
        }
    }
}
