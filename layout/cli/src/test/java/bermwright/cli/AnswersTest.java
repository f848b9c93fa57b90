// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
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
        String plan = Run.plan().replace("\"half_spread_m\": 4 },", """
                "half_spread_m": 4, "diameter_m": 0.4, "wall_mm": 10, "yield_MPa": 350, "modulus_GPa": 200 },""")
                .replace("\"rating_each_kN\": 60 }", """
                "rating_each_kN": 60, "anchor": { "kind": "ballast", "mass_t": 40 } }""");
        String ordered = plan.substring(0, plan.lastIndexOf('}')) + """
                ,
                "order_of_work": [
                  { "id": "down", "step": "lower", "of": "elm" },
                  { "id": "low", "step": "cover", "of": "elm", "lift": 1, "up_to_height_m": 3, "after": ["down"] },
                  { "id": "crown", "step": "cover", "of": "elm", "lift": 2, "after": ["low"] }
                ] }""";
        all = Run.of("assess", Run.site(folder, ordered).toString(), "--json").json();
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
        has(all, "plan", "bermwright", "cautions", "models", "findings", "hulls", "earthworks", "stages");
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
        has(lowering.get("factors"), "line", "winch", "pole", "anchor", "pivot_hold");
        has(last, "tilt_deg", "line_total_kN", "line_each_kN", "hand_balance_kN", "pull_over_kN", "pivot_up_kN",
                "pivot_along_kN", "pole_each_kN");
        double greatest = 0;
        for (JsonNode tilt : lowering.get("tilts")) {
            greatest = Math.max(greatest, tilt.get("line_each_kN").asDouble());
        }
        assertEquals(greatest, lowering.get("greatest_line_tension_kN").asDouble(), SUM);
        double factor = lowering.get("factors").get("line").asDouble();
        assertTrue(factor > 0 && factor <= 1.05 * 200 / greatest, "that of the governing case, held still or harder: "
                + factor);
    }

    @Test
    void theCoverIsThere() {
        JsonNode cover = all.get("hulls").get(0).get("cover");
        has(cover, "volume_m3", "placed_mass_t", "least_depth_m", "least_depth_at", "least_areal_density_g_cm2",
                "shell_factor");
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
    void theWaysToShelterAreThere(@TempDir Path own) throws IOException {
        String plan = Run.plan().replace("\"cover\": { \"thickness_m\": 2.5 }", """
                "hatches": [{ "id": "main", "end": "base", "width_m": 1.2, "height_m": 2 }],
                "cover": { "thickness_m": 2.5, "base_end": "open" }""");
        JsonNode ways = Run.of("assess", Run.site(own, plan).toString(), "--json").json().get("ways_out");
        assertEquals(1, ways.get("hulls").get(0).get("independent_ways").asInt());
        has(ways, "inside_speed_m_s", "outside_speed_m_s", "steepest_walked_deg", "hulls", "to_shelter");
        boolean outside = false;
        for (JsonNode row : ways.get("to_shelter")) {
            has(row, "from", "shelter", "inside_m", "outside_m", "time_min", "way");
            assertEquals(row.get("inside_m").asDouble() / ways.get("inside_speed_m_s").asDouble()
                    + row.get("outside_m").asDouble() / ways.get("outside_speed_m_s").asDouble(),
                    row.get("time_min").asDouble() * 60, 1e-6);
            assertEquals(row.get("outside_m").asDouble() > 0, row.get("way").size() > 1);
            double length = 0;
            for (int i = 0; i + 1 < row.get("way").size(); i++) {
                length += Math.hypot(row.get("way").get(i + 1).get(0).asDouble()
                        - row.get("way").get(i).get(0).asDouble(), row.get("way").get(i + 1).get(1).asDouble()
                        - row.get("way").get(i).get(1).asDouble());
            }
            // The ground falls by one degree and is rough: the way over it is a little longer than on the plan.
            assertEquals(length, row.get("outside_m").asDouble(), 0.02 * length);
            outside |= length > 0;
        }
        assertTrue(outside, ways.toString());
    }

    @Test
    void theShellUnderItsSoilIsThere() {
        JsonNode hull = all.get("hulls").get(0);
        JsonNode burial = hull.get("burial");
        has(burial, "shell_factor", "seat", "lifts");
        assertEquals(hull.get("cover").get("shell_factor"), burial.get("shell_factor"));
        has(burial.get("seat"), "load_kN_m", "sinking_m", "half_width_m", "greatest_pressure_kPa");
        has(burial.get("supports"), "kind", "loads", "bending_over_support_kN_m", "bending_between_kN_m");
        double borne = 0;
        for (JsonNode load : burial.get("supports").get("loads")) {
            has(load, "support", "along_m", "load_kN", "pressure_kPa", "bearing_kPa", "bearing_factor");
            borne += load.get("load_kN").asDouble();
        }
        double wholeLength = borne / burial.get("seat").get("load_kN_m").asDouble();
        assertEquals(22, wholeLength, 22 * SUM);
        // Without a stated shell the inner pressure of 60 kPa alone stands against the soil.
        double least = Double.POSITIVE_INFINITY;
        for (JsonNode lift : burial.get("lifts")) {
            has(lift, "height_m", "greatest_pressure_kPa", "side_push_kN_m", "slide_factor");
            if (lift.has("factor_pressurised")) {
                double factor = lift.get("factor_pressurised").asDouble();
                assertEquals(60 / lift.get("greatest_pressure_kPa").asDouble(), factor, SUM * factor);
                least = Math.min(least, factor);
            }
        }
        assertEquals(least, burial.get("shell_factor").asDouble(), SUM);
    }

    @Test
    void theSoilAddsUp() {
        JsonNode soil = all.get("earthworks");
        has(soil, "placed_m3", "bank_m3", "loose_m3", "hauls", "machine_hours", "borrow_left_m3");
        double covers = 0;
        double hours = 0;
        for (JsonNode haul : soil.get("hauls")) {
            has(haul, "from", "to", "bank_m3", "distance_m", "machine_hours");
            covers += haul.get("kind").asText().equals("cover") ? haul.get("bank_m3").asDouble() : 0;
            hours += haul.get("machine_hours").asDouble();
        }
        assertEquals(soil.get("bank_m3").asDouble(), covers + soil.get("shortage_m3").asDouble(), 1e-6);
        assertEquals(soil.get("machine_hours").asDouble(), hours, 1e-6);
        assertEquals(all.get("hulls").get(0).get("cover").get("volume_m3").asDouble(),
                soil.get("placed_m3").asDouble(), 1e-6);
    }

    @Test
    void theWorkIsThereStepByStep() {
        JsonNode steps = all.get("stages");
        assertEquals(3, steps.size());
        for (JsonNode step : steps) {
            has(step, "id", "step", "of", "after", "start_day", "end_day", "machine_hours", "critical", "standing",
                    "lying", "cover_heights_m", "placed_m3", "ramp_m3", "lift_tops_m");
            assertTrue(step.get("start_day").asDouble() < step.get("end_day").asDouble());
            assertEquals("[\"elm\"]", step.get("lying").toString());
            assertTrue(step.get("critical").asBoolean());
        }
        assertEquals("lower", steps.get(0).get("step").asText());
        // 90 deg at the default rate of 2 deg a minute.
        assertEquals(0.75, steps.get(0).get("machine_hours").asDouble(), SUM);
        JsonNode low = steps.get(1);
        assertEquals(1, low.get("lift").asInt());
        assertEquals(3, low.get("cover_heights_m").get("elm").asDouble(), SUM);
        JsonNode crown = steps.get(2);
        assertEquals(all.get("work").get("days").asDouble(), crown.get("end_day").asDouble(), SUM);
        assertEquals("[\"down\",\"low\",\"crown\"]", all.get("work").get("critical_chain").toString());
        double half = dose(low);
        double whole = dose(crown);
        assertTrue(half > 1.5 * whole, half + " mSv half built, " + whole + " mSv under the whole cover");
        double finished = all.get("hulls").get(0).get("stations").get(0).get("covered_mSv").asDouble();
        assertEquals(finished, whole, 0.02 * finished);
        has(low.get("part_built").get("covers").get(0), "id", "least_depth_m", "least_depth_at",
                "least_areal_density_g_cm2");
        assertFalse(low.get("part_built").get("covers").get(0).get("is_whole").asBoolean());
        assertTrue(crown.get("part_built").get("covers").get(0).get("is_whole").asBoolean());
        assertFalse(low.get("part_built").get("stations").get(0).has("share_of_limit"), "the plan has no limit");
    }

    private static double dose(JsonNode step) {
        JsonNode station = step.get("part_built").get("stations").get(0);
        has(station, "hull", "id", "quantity", "covered_mSv", "low_mSv", "high_mSv");
        return station.get("covered_mSv").asDouble();
    }

    @Test
    void aLoweringByThrustersAnswersUnderTheSameKeys(@TempDir Path other) throws IOException {
        String plan = Run.plan().replace("\"means\": \"lines\",", """
                "means": "side thrusters", "side_thrusters": { "count": 4, "thrust_each_kN": 9, "from_base_m": 20,
                  "cant_deg": 10, "specific_impulse_s": 310, "plume_radius_m": 40 },""");
        String file = Run.site(other, plan).toString();
        JsonNode lowering = Run.of("lower", file, "--json").json().get("hulls").get(0).get("lowering");
        has(lowering, "means", "balance_tilt_deg", "greatest_pull_over_kN", "greatest_brake_kN", "at_tilt_deg",
                "propellant_kg", "seconds", "tilts", "factors");
        assertEquals("side thrusters", lowering.get("means").asText());
        double brake = 0;
        double at = Double.NaN;
        for (JsonNode tilt : lowering.get("tilts")) {
            has(tilt, "tilt_deg", "thrust_kN", "share_of_thrust", "pivot_up_kN", "pivot_along_kN");
            if (tilt.get("thrust_kN").asDouble() > brake) {
                brake = tilt.get("thrust_kN").asDouble();
                at = tilt.get("tilt_deg").asDouble();
            }
        }
        assertEquals(lowering.get("greatest_brake_kN").asDouble(), brake, SUM);
        assertEquals(lowering.get("at_tilt_deg").asDouble(), at, SUM);
        // Four of 9 kN, canted 10 deg sideways.
        assertEquals(4 * 9 * Math.cos(Math.toRadians(10)) / brake, lowering.get("factors").get("thrust").asDouble(),
                1e-6);
        assertFalse(lowering.has("greatest_line_tension_kN"));
    }

    @Test
    void aCommandWorksOutOnlyWhatItShows() {
        String plan = folder.resolve("plan.json").toString();
        for (String command : List.of("lower", "cover", "earthworks")) {
            JsonNode answer = Run.of(command, plan, "--json").json();
            for (JsonNode model : answer.get("models")) {
                assertFalse(model.get("id").asText().contains("dose"), command + " shows " + model);
            }
            for (JsonNode finding : answer.get("findings")) {
                assertFalse(finding.get("unit").asText().equals("mSv"), command + " shows " + finding);
            }
        }
    }

    @Test
    void everyCommandGivesItsPartOfTheSame() {
        String plan = folder.resolve("plan.json").toString();
        JsonNode hull = all.get("hulls").get(0);
        assertEquals(hull.get("lowering"), Run.of("lower", plan, "--json").json().get("hulls").get(0).get("lowering"));
        assertEquals(hull.get("cover"), Run.of("cover", plan, "--json").json().get("hulls").get(0).get("cover"));
        assertEquals(hull.get("stations"), Run.of("dose", plan, "--json").json().get("hulls").get(0).get("stations"));
        assertEquals(all.get("earthworks"), Run.of("earthworks", plan, "--json").json().get("earthworks"));
    }

    @Test
    void peopleReadFiguresAndNoNonsense() {
        for (String command : List.of("assess", "lower", "cover", "dose", "size-cover")) {
            String text = Run.of(command, folder.resolve("plan.json").toString()).out();
            assertTrue(text.contains("elm") && text.contains("Cautions"), command);
            assertFalse(text.matches("(?s).*(NaN|Infinity|null|Optional|%[.\\d]*[sdf]).*"), command + ": " + text);
        }
    }

    @Test
    void theLeastCoverIsSaidWithItsDosesAndDrawn(@TempDir Path own) throws IOException {
        String plan = folder.resolve("plan.json").toString();
        Path drawing = own.resolve("trade.svg");
        JsonNode sized = Run.of("size-cover", plan, "--json", "--drawing", drawing.toString()).json();
        has(sized, "is_met", "hulls", "volume_m3", "bank_m3", "bank_available_m3", "stations", "trade", "intervals");
        assertEquals("elm/bunks", sized.get("stations").get(0).get("station").asText());
        assertTrue(sized.get("trade").size() > 10);
        String svg = Files.readString(drawing);
        assertTrue(svg.contains("<svg") && svg.contains("soil placed"), svg);
        Run refused = Run.of("size-cover", plan, "--drawing", own.resolve("none/trade.svg").toString());
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("--drawing") && refused.err().contains("a file in a folder"), refused.err());
    }
}
