// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The answers hold the keys that scripts rely on, and their figures agree with each other. */
class AnswersTest {
    /** Sums of figures that were each written in full. */
    private static final double SUM = 1e-9;

    @TempDir
    static Path folder;
    private static JsonNode all;

    @BeforeAll
    static void assessed() throws IOException {
        all = Run.of("assess", Run.site(folder, Run.plan()).toString(), "--json").json();
    }

    private static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static void has(JsonNode object, String... wanted) {
        assertTrue(keys(object).containsAll(List.of(wanted)), keys(object) + " lack some of " + List.of(wanted));
    }

    @Test
    void theWholeIsThere() {
        has(all, "plan", "bermwright", "cautions", "models", "findings", "hulls");
        assertEquals(folder.resolve("plan.json").toString(), all.get("plan").asText());
        assertTrue(all.get("cautions").size() > 0);
        has(all.get("models").get(0), "id", "model", "valid_for", "spread", "status", "source");
        for (JsonNode model : all.get("models")) {
            assertTrue(List.of("computed", "provisional", "extrapolated").contains(model.get("status").asText()));
        }
        has(all.get("findings").get(0), "rule", "level", "subject", "unit", "source", "text");
    }

    @Test
    void theLoweringIsThereTiltByTilt() {
        JsonNode hull = all.get("hulls").get(0);
        assertEquals("elm", hull.get("id").asText());
        has(hull.get("lying"), "axis_start", "axis_end", "slope_along_deg", "slope_across_deg");
        assertEquals(1, hull.get("lying").get("slope_along_deg").asDouble(), 0.01);
        JsonNode lowering = hull.get("lowering");
        has(lowering, "balance_tilt_deg", "hand_over_tilt_deg", "greatest_pull_over_kN", "greatest_line_tension_kN",
                "at_tilt_deg", "line_angle_at_rest_deg", "tilts", "factors");
        JsonNode last = lowering.get("tilts").get(lowering.get("tilts").size() - 1);
        has(last, "tilt_deg", "line_total_kN", "line_each_kN", "hand_balance_kN", "pull_over_kN", "pivot_up_kN",
                "pivot_along_kN", "pole_each_kN");
        double greatest = 0;
        for (JsonNode tilt : lowering.get("tilts")) {
            greatest = Math.max(greatest, tilt.get("line_each_kN").asDouble());
        }
        assertEquals(greatest, lowering.get("greatest_line_tension_kN").asDouble(), SUM);
        assertEquals(200 / greatest, lowering.get("factors").get("line").asDouble(), 0.05 * 200 / greatest);
    }

    @Test
    void theCoverIsThere() {
        JsonNode cover = all.get("hulls").get(0).get("cover");
        has(cover, "volume_m3", "placed_mass_t", "least_depth_m", "least_depth_at", "least_areal_density_g_cm2");
        has(cover.get("least_depth_at"), "along_m", "around_deg");
        assertEquals(1.65, cover.get("placed_mass_t").asDouble() / cover.get("volume_m3").asDouble(), SUM);
        assertEquals(165 * cover.get("least_depth_m").asDouble() + 3,
                cover.get("least_areal_density_g_cm2").asDouble(), 1e-6);
    }

    @Test
    void theDoseAddsUp() {
        JsonNode station = all.get("hulls").get(0).get("stations").get(0);
        has(station, "id", "quantity", "upright_mSv", "covered_mSv", "reduction", "cosmic_mSv", "event_mSv",
                "ground_return_mSv", "low_mSv", "high_mSv", "least_areal_density_g_cm2",
                "median_areal_density_g_cm2", "share_beyond_table");
        double covered = station.get("covered_mSv").asDouble();
        assertEquals(covered, station.get("cosmic_mSv").asDouble() + station.get("event_mSv").asDouble()
                + station.get("ground_return_mSv").asDouble(), SUM);
        assertEquals(1 - covered / station.get("upright_mSv").asDouble(), station.get("reduction").asDouble(), SUM);
        assertTrue(station.get("low_mSv").asDouble() < covered && covered < station.get("high_mSv").asDouble());
    }

    @Test
    void everyCommandGivesItsPartOfTheSame() {
        String plan = folder.resolve("plan.json").toString();
        JsonNode hull = all.get("hulls").get(0);
        assertEquals(hull.get("lowering"), Run.of("lower", plan, "--json").json().get("hulls").get(0).get("lowering"));
        assertEquals(hull.get("cover"), Run.of("cover", plan, "--json").json().get("hulls").get(0).get("cover"));
        assertEquals(hull.get("stations"), Run.of("dose", plan, "--json").json().get("hulls").get(0).get("stations"));
    }

    @Test
    void peopleReadFiguresAndNoNonsense() {
        for (String command : List.of("assess", "lower", "cover", "dose", "size-cover")) {
            String text = Run.of(command, folder.resolve("plan.json").toString()).out();
            assertTrue(text.contains("elm") && text.contains("Cautions"), command);
            assertFalse(text.matches("(?s).*(NaN|Infinity|null|Optional|%[.\\d]*[sdf]).*"), command + ": " + text);
        }
    }
}
