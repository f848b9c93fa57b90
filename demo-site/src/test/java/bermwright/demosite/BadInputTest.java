// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read ends with two and one clear line; what is a bad plan is a finding. */
class BadInputTest {
    private static final long A_HUNDRED_MEGABYTES = 100L * 1024 * 1024;

    @TempDir
    Path folder;
    private Path plan;

    @BeforeEach
    void copy() throws IOException {
        for (String file : List.of("ground.tif", "survey-low-lifts.tif")) {
            Files.copy(Cli.DEMO.resolve(file), folder.resolve(file));
        }
        plan = folder.resolve("plan.json");
        Files.copy(Cli.DEMO.resolve("plan.json"), plan);
    }

    private void refused(Cli run, String... words) {
        assertEquals(2, run.code(), run.out());
        String text = run.json().get("error").get("text").asText();
        assertEquals(1, run.err().lines().filter(l -> l.startsWith("bermwright: ")).count(), run.err());
        for (String word : words) {
            assertTrue(text.contains(word), text);
        }
        assertFalse(Files.exists(folder.resolve("out")), "something was written");
    }

    private Cli report() {
        return Cli.run("report", plan.toString(), "--out", folder.resolve("out").toString(), "--json");
    }

    private void change(String good, String bad) throws IOException {
        String text = Files.readString(plan);
        assertTrue(text.contains(good), good);
        Files.writeString(plan, text.replace(good, bad));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.02, 0.5, 0.99})
    void aTruncatedElevationFile(double share) throws IOException {
        byte[] whole = Files.readAllBytes(folder.resolve("ground.tif"));
        Files.write(folder.resolve("ground.tif"), Arrays.copyOf(whole, (int) (whole.length * share)));
        refused(report(), "ground.tif");
        refused(Cli.run("ground", folder.resolve("ground.tif").toString(), "--json"), "ground.tif");
    }

    @Test
    void anElevationFileThatSaysItIsLargerThanItIs() throws IOException {
        byte[] file = Files.readAllBytes(folder.resolve("ground.tif"));
        int fields = (file[4] & 255 | (file[5] & 255) << 8 | (file[6] & 255) << 16 | (file[7] & 255) << 24);
        int count = file[fields] & 255 | (file[fields + 1] & 255) << 8;
        boolean found = false;
        for (int i = 0; i < count; i++) {
            int at = fields + 2 + 12 * i;
            if ((file[at] & 255 | (file[at + 1] & 255) << 8) == 257) {
                file[at + 8] = 0;
                file[at + 9] = (byte) 200;
                found = true;
            }
        }
        assertTrue(found, "the field of the image's length");
        Files.write(folder.resolve("ground.tif"), file);
        refused(report(), "ground.tif");
    }

    @Test
    void aHundredMegabytesOfJunk() throws IOException {
        for (Path file : new Path[] {plan, folder.resolve("ground.tif")}) {
            copyAgain();
            try (RandomAccessFile junk = new RandomAccessFile(file.toFile(), "rw")) {
                junk.setLength(A_HUNDRED_MEGABYTES);
                junk.seek(0);
                junk.write(new byte[] {77, 0, 77, 42, 99});
            }
            refused(report(), file.getFileName().toString());
        }
    }

    private void copyAgain() throws IOException {
        Files.delete(plan);
        Files.delete(folder.resolve("ground.tif"));
        Files.delete(folder.resolve("survey-low-lifts.tif"));
        copy();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"length_m\": 38.4 | \"length_m\": -38.4 | hulls[0].length_m is -38.4",
        "\"length_m\": 38.4 | \"length_m\": 38400 | hulls[0].length_m is 38400",
        "\"diameter_m\": 7.6 | \"diameter_m\": 0 | hulls[0].diameter_m is 0",
        "\"mass_t\": 71 | \"mass_t\": \"71\" | hulls[0].mass_t is \"71\"",
        "\"mass_t\": 71 | \"mass\": 71 | hulls[0].mass is not a known key; accepted: mass_t",
        "\"mass_t\": 71 | \"mass_t\": true | hulls[0].mass_t is true",
        "\"stay_days\": 170 | \"stay_days\": 0 | exposure.stay_days is 0",
        "\"composition\": \"highland\" | \"composition\": \"cheese\" | ground.regolith.composition is \"cheese\"",
        "\"bermwright_plan\": 1 | \"bermwright_plan\": 9 | written by a later version"})
    void valuesAndKeysThatCannotBe(String good, String bad, String words) throws IOException {
        change(good, bad);
        refused(report(), plan.toString() + ", line ", words);
    }

    @Test
    void anOutlineThatCrossesItself() {
        PlanFiles.read(plan);
        try {
            String text = Files.readString(plan);
            int area = text.indexOf("\"area\": [");
            int end = text.indexOf("      ]\n", area);
            Files.writeString(plan, text.substring(0, area)
                    + "\"area\": [[18000, -12000], [18010, -11990], [18010, -12000], [18000, -11990]\n"
                    + text.substring(end));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        refused(report(), "crosses or touches itself");
    }

    @Test
    void oneHullWithoutStationsIsQuickToTryOn() throws IOException {
        String one = "{\"bermwright_plan\": 1, \"ground\": {\"elevation_file\": \"ground.tif\"}, \"hulls\": [HULL]}";
        String hull = "{\"id\": \"fir\", \"length_m\": 20, \"diameter_m\": 5, \"mass_t\": 20,"
                + " \"centre_of_mass_from_base_m\": 8, \"base_centre\": {\"east_m\": EAST, \"north_m\": -12100},"
                + " \"lay_down_azimuth_deg\": 90, \"stations\": STATIONS}";
        finding(one.replace("HULL", hull.replace("EAST", "19900").replace("STATIONS", "[]")), "hull-off-grid");
        finding(one.replace("HULL", hull.replace("EAST", "18300").replace("STATIONS",
                "[{\"id\": \"roof\", \"along_m\": 10, \"up_m\": 9}]")), "station-outside-hull");
        finding(one.replace("HULL", hull.replace("EAST", "18300").replace("STATIONS", "[]") + ", "
                + hull.replace("fir", "yew").replace("EAST", "18305").replace("STATIONS", "[]")),
                "hulls-cut-each-other");
        finding(one.replace("HULL", ""), "no-hull");
    }

    private void finding(String text, String rule) throws IOException {
        Files.writeString(plan, text);
        Cli run = Cli.run("assess", plan.toString(), "--json");
        assertTrue(run.code() <= 1, run.err());
        assertTrue(run.findings().stream().anyMatch(f -> f.endsWith("\t" + rule)), rule + ": " + run.findings());
    }

    @Test
    void noDataUnderAHullIsAFinding() throws IOException {
        Files.delete(folder.resolve("ground.tif"));
        StringBuilder ground = new StringBuilder("ncols 80\nnrows 80\nxllcenter 18180\nyllcenter -12240\ncellsize 1.5\n"
                + "nodata_value -9999\n");
        for (int i = 0; i < 80 * 80; i++) {
            ground.append(i % 80 > 30 ? "-9999" : "-80").append(i % 80 == 79 ? '\n' : ' ');
        }
        Files.writeString(folder.resolve("ground.asc"), ground);
        Files.writeString(plan, PlanFiles.text(PlanValues.with(PlanFiles.read(plan), "ground.elevation_file",
                "\"ground.asc\"")));
        Cli run = Cli.run("assess", plan.toString(), "--json");
        assertEquals(1, run.code(), run.err());
        assertTrue(run.findings().stream().anyMatch(f -> f.contains("alder") && f.contains("unknown")),
                run.findings().toString());
    }
}
