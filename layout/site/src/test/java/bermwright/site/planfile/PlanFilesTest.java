// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanFilesTest {
    /** Angles and masses are converted with one or two roundings. */
    private static final double ROUNDING = 1e-12;

    @TempDir
    Path folder;

    @Test
    void readsFileUnitsIntoSi() {
        Plan plan = PlanFiles.read(Sample.EVERY_KEY, "every-key.json");
        Hull hull = plan.hull("A").orElseThrow();
        assertEquals(41_000, hull.mass());
        assertEquals(39e5, hull.inertiaAboutCentre().orElseThrow());
        assertEquals(31, hull.skin().get(0).arealDensity(), ROUNDING);
        assertEquals(Math.toRadians(101.3), hull.layDownAzimuth().radians(), ROUNDING);
        assertEquals(Math.toRadians(1.7) / 60, hull.lowering().orElseThrow().rate(), ROUNDING);
        assertEquals(640e3, hull.lowering().orElseThrow().lines().orElseThrow().line().breakingLoad().orElseThrow());
        assertEquals(0.12, plan.exposure().limits().get(0).limit().orElseThrow(), ROUNDING);
        assertEquals(new Point(120.5, 88.25), hull.baseCentre());
        assertEquals(Optional.of("the first"), hull.annotations().note());
    }

    @Test
    void aKeyLeftOutTakesItsPrintedDefault() {
        Plan plan = PlanFiles.read(Sample.LEAST, "least.json");
        assertEquals(1.62, plan.ground().gravity());
        assertEquals(Math.toRadians(33), plan.ground().regolith().stableSlope(), ROUNDING);
        assertEquals(8, plan.rules().hullSpacing());
        assertEquals(List.of(), plan.hulls());
        assertEquals(Sample.LEAST, PlanFiles.text(plan));
    }

    @Test
    void writesWhatItReadInTheSameOrderAndLosesNothing() {
        Plan plan = PlanFiles.read(Sample.EVERY_KEY, "every-key.json");
        String text = PlanFiles.text(plan);
        assertEquals(plan, PlanFiles.read(text, "again"));
        assertEquals(text, PlanFiles.text(PlanFiles.read(text, "again")));
        assertEquals(Sample.EVERY_KEY.replaceAll("\\s+", ""), text.replaceAll("\\s+", ""));
    }

    @Test
    void aValueEqualToItsDefaultStaysWhereItWasGiven() {
        String given = Sample.LEAST.replace("\"ground.tif\"", "\"ground.tif\",\n    \"gravity_m_s2\": 1.62");
        assertEquals(given, PlanFiles.text(PlanFiles.read(given, "given")));
    }

    @Test
    void writesAWholeFileOrNone() throws IOException {
        Path file = folder.resolve("plan.json");
        Plan plan = PlanFiles.read(Sample.EVERY_KEY, "every-key.json");
        PlanFiles.write(plan, file);
        assertEquals(plan, PlanFiles.read(file));
        try (var files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
        Path nowhere = folder.resolve("no/such/plan.json");
        assertThrows(InputException.class, () -> PlanFiles.write(plan, nowhere));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"length_m\": 31 | \"length_ft\": 31 | bad.json, line 26: hulls[0].length_ft is not a known key; accepted:"
            + " length_m (the nearest known key), or a key of your own that begins with x_",
        "\"mass_t\": 41 | \"mass_kg\": 41000 | bad.json, line 33: hulls[0].mass_kg is not a known key; accepted: mass_t"
            + " (the nearest known key), or a key of your own that begins with x_",
        "\"length_m\": 31 | \"length_m\": \"31 m\" | bad.json, line 26: hulls[0].length_m is \"31 m\"; accepted: a"
            + " number 0.1 to 500, in m",
        "\"length_m\": 31 | \"length_m\": -31 | bad.json, line 26: hulls[0].length_m is -31; accepted: a number"
            + " 0.1 to 500, in m",
        "\"length_m\": 31 | \"length_m\": 1e999 | bad.json, line 26: hulls[0].length_m is 1e999; accepted: a number"
            + " 0.1 to 500, in m",
        "\"length_m\": 31, | '' | bad.json, line 24: hulls[0].length_m is missing; accepted: a number 0.1 to"
            + " 500, in m",
        "\"mass_t\": 41 | \"mass_t\": null | bad.json, line 33: hulls[0].mass_t is null; accepted: a number 0.001 to"
            + " 100000, in t",
        "\"mass_t\": 41 | \"length_m\": 41 | bad.json, line 33: hulls[0].length_m is given twice, first on line 26;"
            + " accepted: each key once",
        "\"arrival\": \"lowered\" | \"arrival\": \"dropped\" | bad.json, line 44: hulls[0].arrival is \"dropped\";"
            + " accepted: \"lowered\", \"lands lying\", \"stays upright\"",
        "[10, 0], [10, 10] | [10, 10], [10, 0], [0, 10] | bad.json, line 116: keep_outs[0].area is an outline that"
            + " crosses or touches itself, sides 0 and 2 near [10.00, 0.00]; accepted: a list of 3 or more [east,"
            + " north] in m that does not cross itself",
        "\"centre_of_mass_from_base_m\": 14.2 | \"centre_of_mass_from_base_m\": 35 | bad.json, line 34:"
            + " hulls[0].centre_of_mass_from_base_m is 35; accepted: less than the hull's length, 31, in m",
        "\"to_along_m\": 14 | \"to_along_m\": 8 | bad.json, line 30: hulls[0].stowage[0].to_along_m is 8; accepted:"
            + " more than from_along_m, 8, and at most the hull's length, 31, in m",
        "\"to_around_deg\": 75 | \"to_around_deg\": -75 | bad.json, line 30: hulls[0].stowage[0].to_around_deg is"
            + " -75; accepted: more than from_around_deg, -60, by at most 360, in degrees",
        "\"bermwright_plan\": 1 | \"bermwright_plan\": 2 | bad.json, line 2: bermwright_plan is 2, written by a later"
            + " version of this program; accepted: 1",
        "\"bermwright_plan\": 1 | \"bermwright_plan\": \"1\" | bad.json, line 2: bermwright_plan is \"1\"; accepted: 1",
        "\"count\": 3 | \"count\": 2.5 | bad.json, line 122: machines[0].count is 2.5; accepted: a whole number 1 to"
            + " 10000",
        "\"storm_shelter\": true | \"storm_shelter\": \"yes\" | bad.json, line 95: hulls[0].stations[0].storm_shelter"
            + " is \"yes\"; accepted: true or false",
        "\"id\": \"2\" | \"id\": \"1\" | bad.json, line 149: order_of_work[1].id is \"1\", given already on line 148;"
            + " accepted: an id that stands once in the list",
        "[0, 50], [60, 52] | [0, 50, 1], [60, 52] | bad.json, line 117: corridors[0].line[0] is a list; accepted:"
            + " [east, north] in m",
        "\"id\": \"A\" | \"id\": \"A/1\" | bad.json, line 25: hulls[0].id is \"A/1\"; accepted: a text that is"
            + " not empty and holds no / and no control characters",
        "\"means\": \"lines\" | \"means\": \"winches\" | bad.json, line 46: hulls[0].lowering.means is \"winches\";"
            + " accepted: \"lines\", \"side thrusters\"",
        "\"note\": \"the first\" | \"note\": 7 | bad.json, line 110: hulls[0].note is 7; accepted: a text"})
    void refusesWithFileLineKeyValueAndWhatIsAccepted(String good, String bad, String message) {
        assertTrue(Sample.EVERY_KEY.contains(good), good);
        String text = Sample.EVERY_KEY.replaceFirst(Pattern.quote(good),
                Matcher.quoteReplacement(bad));
        InputException refused = assertThrows(InputException.class, () -> PlanFiles.read(text, "bad.json"));
        assertEquals(message, refused.getMessage());
    }

    @Test
    void refusesGearWithoutTheBlockItsMeansNames() {
        Plan plan = PlanFiles.read(Sample.EVERY_KEY, "every-key.json");
        InputException refused = assertThrows(InputException.class,
                () -> PlanValues.without(plan, "hulls[0].lowering.lines"));
        assertEquals("hulls[0].lowering.lines is missing; accepted: an object, because means is \"lines\"",
                refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{} | bad.json, line 1: bermwright_plan is missing; accepted: 1",
        "[1] | bad.json, line 1:  is a list; accepted: an object",
        "'' | bad.json: the file is empty; accepted: one JSON object",
        "{\"bermwright_plan\": 1, \"ground\": {\"elevation_file\": \"g\"}} 7 | bad.json, line 1: something stands after"
            + " the end of the plan; accepted: one JSON object and nothing after it"})
    void refusesWhatIsNoPlan(String text, String message) {
        InputException refused = assertThrows(InputException.class, () -> PlanFiles.read(text, "bad.json"));
        assertEquals(message.replace("1:  is", "1 is"), refused.getMessage());
    }

    @Test
    void refusesBrokenJsonWithItsLine() {
        InputException refused = assertThrows(InputException.class,
                () -> PlanFiles.read("{\n  \"bermwright_plan\": 1,\n  \"title\" 7\n}", "bad.json"));
        assertEquals(3, refused.line().orElseThrow());
        assertEquals("JSON in UTF-8", refused.accepted());
    }

    @Test
    void refusesAHundredMegabytesAtOnceAndJunkOfASmallerSize() throws IOException {
        Path junk = folder.resolve("junk.json");
        try (RandomAccessFile file = new RandomAccessFile(junk.toFile(), "rw")) {
            file.setLength(100L * 1024 * 1024);
        }
        InputException refused = assertThrows(InputException.class, () -> PlanFiles.read(junk));
        assertEquals(junk + ": is 104857600 bytes long; accepted: a plan file of at most 20971520 bytes",
                refused.getMessage());
        Files.writeString(junk, "[".repeat(5_000_000));
        assertThrows(InputException.class, () -> PlanFiles.read(junk));
    }

    @Test
    void refusesTextThatIsNotUtf8() throws IOException {
        Path file = folder.resolve("latin.json");
        Files.write(file, "{\n\"title\": \"Gr\u00fcn\"}".getBytes(StandardCharsets.ISO_8859_1));
        InputException refused = assertThrows(InputException.class, () -> PlanFiles.read(file));
        assertEquals(file + ", line 2: not UTF-8 text; accepted: JSON in UTF-8", refused.getMessage());
    }

    @Test
    void refusesAFileThatIsNotThereAndAFolder() {
        Path none = folder.resolve("none.json");
        InputException refused = assertThrows(InputException.class, () -> PlanFiles.read(none));
        assertEquals(none + ": there is no such file; accepted: a plan file", refused.getMessage());
        assertThrows(InputException.class, () -> PlanFiles.read(folder));
    }

    @Test
    void carriesALowerVersionUpStepByStep() {
        Versions versions = new Versions(List.of(
                old -> old.without("old_key").with("title", Json.Leaf.text("carried"))));
        Json.Fields file = (Json.Fields) JsonReading.read("{\"bermwright_plan\": 1, \"old_key\": 7}", "old");
        assertEquals("{\"title\": \"carried\"}", JsonText.compact(versions.migrated(file, new At("old", ""))));
        assertEquals(2, versions.newest());
    }

    @Test
    void namesTheNearestKey() {
        assertEquals("length_m", NearestName.to("lenght_m", List.of("id", "length_m", "diameter_m")));
        assertEquals("mass_t", NearestName.to("mass_kg", List.of("mass_t", "shape", "margin_m")));
        assertFalse(RecordReading.isKept("y_own"));
    }
}
