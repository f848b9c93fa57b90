// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.answer.ReviewAnswers;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code lower} answers beside the table by tilt. */
class LowerChoicesTest {
    @TempDir
    static Path folder;

    @Test
    void comparesAndSuggestsForPrograms() throws IOException {
        Path plan = Run.site(folder, Run.plan());
        JsonNode hull = Run.of("lower", plan.toString(), "--compare", "--suggest", "--json").json().get("hulls").get(0);
        assertTrue(hull.get("means").size() >= 3);
        assertEquals("lines over poles", hull.get("means").get(0).get("means").asText());
        assertTrue(hull.get("by_mass").size() > 5);
        assertFalse(hull.get("suggestions").get("words").isEmpty());
        assertTrue(hull.get("review").get("one_thing_lost").size() > 10);
        assertTrue(hull.get("rest").get("contacts_along_m").size() == 2);
    }

    @Test
    void saysItInWords() throws IOException {
        Path plan = Run.site(folder, Run.plan());
        String out = Run.of("lower", plan.toString(), "--compare", "--suggest").out();
        assertTrue(out.contains("All means for"), out);
        assertTrue(out.contains("Poles for"), out);
        assertTrue(out.contains(ReviewAnswers.LOSSES.meaning()), out);
        String plain = Run.of("lower", plan.toString()).out();
        assertFalse(plain.contains("All means for"));
    }
}
