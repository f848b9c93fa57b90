// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.spectrum.EventSpectrum;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResponsesTest {
    private static final Shield BARE = Shield.of("highland", List.of());
    private static final String[] NOTES = {"# per: day", "# open_ground_return_mSv: 0.05", "# skin_equivalence: 0.95",
        "# source: somebody, somehow", "areal_density_g_cm2,isotropic_dose_mSv,low_mSv,high_mSv"};

    /** Where nothing arrives any more the logarithm rounds. */
    private static final double ROUNDING = 1 + 1e-9;
    /** Stopping of soil hangs on how its mean excitation energy is taken, by about a hundredth. */
    private static final double EQUIVALENCE = 0.02;

    /** Where the build may write; tests share what is computed there. */
    private static final Path CACHE =
            Path.of(System.getProperty("bermwright.target", "target")).resolve("responses");

    @TempDir
    private Path directory;

    @Test
    void anEventFallsWithEveryPieceOfSoil() {
        for (String name : EventSpectra.names()) {
            Response response = event(name);
            double before = Double.POSITIVE_INFINITY;
            for (double depth = 0; depth <= response.deepest(); depth += 20) {
                double dose = response.isotropicDose(depth);
                assertTrue(dose <= before * ROUNDING, name + " rises at " + depth);
                before = dose;
            }
        }
    }

    @Test
    void whatIsKeptOnDiskIsUsedAndDamageIsNoTrouble() throws IOException {
        EventSpectrum spectrum = EventSpectra.named("august 1972");
        Responses responses = new Responses(directory.resolve("kept"));
        double computed = responses.event(BARE, spectrum, Progress.NONE).isotropicDose(300);
        Path file;
        try (Stream<Path> files = Files.list(directory.resolve("kept"))) {
            file = files.findFirst().orElseThrow();
        }
        List<String> lines = new java.util.ArrayList<>(Files.readAllLines(file));
        lines.replaceAll(l -> l.equals(lines.get(9)) ? "0 0 1 0 0 0 0" : l);
        Files.write(file, lines);
        assertEquals(1, responses.event(BARE, spectrum, Progress.NONE).isotropicDose(100), 1e-12);
        Files.writeString(file, "junk");
        assertEquals(computed, responses.event(BARE, spectrum, Progress.NONE).isotropicDose(300), 0);
        Files.delete(file);
        Files.createDirectory(file);
        assertEquals(computed, responses.event(BARE, spectrum, Progress.NONE).isotropicDose(300), 0);
    }

    @Test
    void theSunsRangeIsTheDoseOfAQuieterAndAMoreActiveOne() {
        Responses responses = new Responses(CACHE);
        Response planned = responses.cosmic(BARE, 55, Progress.NONE);
        Response quieter = responses.cosmic(BARE, 45, Progress.NONE);
        Response moreActive = responses.cosmic(BARE, 65, Progress.NONE);
        for (double depth : TransportResponse.depths()) {
            double best = planned.isotropicDose(depth);
            Band sun = planned.solarBand(depth);
            assertEquals(quieter.isotropicDose(depth) / best, sun.high(), 1e-9);
            assertEquals(moreActive.isotropicDose(depth) / best, sun.low(), 1e-9);
        }
        Band open = planned.solarBand(0);
        Band deep = planned.solarBand(10_000);
        assertTrue(open.high() > 1.05 && deep.high() < open.high(),
                "the sun matters less under more soil: " + open + ", " + deep);
        assertEquals(Band.NONE, event("august 1972").solarBand(100));
        assertTrue(planned.note().spread().contains("W 45.0 to 65.0"), planned.note().spread());
    }

    @Test
    void aCancelledResponseStops() {
        Progress cancelled = new Progress() {
            @Override
            public void report(double share, String step) {
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(java.util.concurrent.CancellationException.class,
                () -> new Responses(directory).cosmic(BARE, 33, cancelled));
    }

    @Test
    void aModulationOutsideTheModelIsRefused() {
        assertEquals("modulation W is 300; accepted: -20 to 200", assertThrows(IllegalArgumentException.class,
                () -> new Responses(directory).cosmic(BARE, 300, Progress.NONE)).getMessage());
    }

    @Test
    void theSkinCountsByItsStopping() {
        Shield aluminium = Shield.of("highland", List.of(new Layer(Materials.named("aluminium"), 20)));
        // 5.68 of aluminium over 5.99 of soil at 100 MeV is 0.95.
        assertEquals(0.95, Responses.skinEquivalence(aluminium), EQUIVALENCE);
        assertEquals(1, Responses.skinEquivalence(BARE), 0);
    }

    @Test
    void aHandedOverTableIsReadInItsUnits() throws IOException {
        Response response = Responses.fromTable(write("0,2,1,4", "100,0.5,0.25,1"));
        assertEquals(0.002, response.isotropicDose(0), 1e-15);
        assertEquals(0.001, response.isotropicDose(500), 1e-15);
        assertEquals(0.0005, response.isotropicDose(5000), 1e-15);
        assertEquals(1000, response.deepest(), 1e-9);
        assertEquals(5e-5, response.openGroundReturn(), 1e-15);
        assertEquals(0.5, response.band(300).low(), 1e-12);
        assertEquals(2, response.band(300).high(), 1e-12);
        assertEquals(Response.Per.DAY, response.per());
    }

    @Test
    void aHandedOverTableOutOfOrderIsRefusedByLineAndColumn() throws IOException {
        refuses("line 7: areal_density_g_cm2 is 0; accepted: greater than 0.0 of the row before", "0,2,1,4",
                "0,1,1,1");
        refuses("line 6: areal_density_g_cm2 is -3; accepted: a number from 0.0 to 100000.0", "-3,2,1,4");
        refuses("line 6: isotropic_dose_mSv is 0; accepted: a number from 1.0E-12 to 1000000.0", "0,0,1,4");
        refuses("line 7: high_mSv is 0.5; accepted: at least the dose 1.0", "0,2,1,4", "10,1,1,0.5");
        refuses("line 6: areal_density_g_cm2 is 5.0; accepted: 0 in the first row", "5,2,1,4", "10,1,1,2");
    }

    /** A note says where it stands; one that is missing, where it belongs. */
    @Test
    void aHandedOverNoteIsRefusedByLine() throws IOException {
        noteRefused("line 1: per is week; accepted: a line '# per: day' or '# per: event'", 0, "# per: week");
        noteRefused("line 2: open_ground_return_mSv is -1; accepted: a line '# open_ground_return_mSv: number' from"
                + " 0.0 to 1000000.0", 1, "# open_ground_return_mSv: -1");
        noteRefused("line 3: skin_equivalence is NaN; accepted: a line '# skin_equivalence: number' from 0.1 to 10.0",
                2, "# skin_equivalence: NaN");
        noteRefused("line 5: source is missing; accepted: a line '# source: who made the table, how and when'", 3,
                "# nothing");
        noteRefused("line 4: quantity is absorbed dose; accepted: effective dose; gray equivalent, skin; gray"
                + " equivalent, eye; gray equivalent, blood-forming organs", 3, "# quantity: absorbed dose");
        noteRefused("line 4: per is event; accepted: one line of it, and line 1 has day", 3, "# per: event");
        noteRefused("line 7: holds 1 rows of numbers; accepted: a head with the columns areal_density_g_cm2,"
                + "isotropic_dose_mSv,low_mSv,high_mSv and at least two rows", 6, "");
        noteRefused("line 5: head is depth,dose; accepted: areal_density_g_cm2,isotropic_dose_mSv,low_mSv,high_mSv", 4,
                "depth,dose");
    }

    private void noteRefused(String words, int index, String line) throws IOException {
        List<String> lines = new java.util.ArrayList<>(List.of(NOTES));
        lines.addAll(List.of("0,2,1,4", "10,1,1,2"));
        lines.set(index, line);
        Path file = Files.write(directory.resolve("response.csv"), lines);
        String said = assertThrows(InputException.class, () -> Responses.fromTable(file)).getMessage();
        assertEquals(file + ", " + words, said);
    }

    private void refuses(String words, String... rows) throws IOException {
        Path file = write(rows);
        assertEquals(file + ", " + words,
                assertThrows(InputException.class, () -> Responses.fromTable(file)).getMessage());
    }

    private Path write(String... rows) throws IOException {
        List<String> lines = new java.util.ArrayList<>(List.of(NOTES));
        lines.addAll(List.of(rows));
        return Files.write(directory.resolve("response.csv"), lines);
    }

    private static Response event(String name) {
        return new Responses(CACHE).event(BARE, EventSpectra.named(name), Progress.NONE);
    }
}
