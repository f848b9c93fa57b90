// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EventSpectraTest {
    /** Central differences of a smooth function. */
    private static final double DERIVATIVE = 1e-4;

    /** The other integration was written down with two to three digits. */
    private static final double TWO_DIGITS = 0.01;

    @TempDir
    private Path directory;

    @Test
    void theFluencePerEnergyIsTheFallOfTheFluenceAbove() {
        for (String name : EventSpectra.names()) {
            EventSpectrum event = EventSpectra.named(name);
            for (double energy : List.of(12.0, 60.0, 150.0, 400.0)) {
                double fall = (event.above(energy * 0.999) - event.above(energy * 1.001)) / (0.002 * energy);
                assertEquals(fall, event.perMeV(energy), fall * DERIVATIVE, name + " at " + energy);
            }
        }
    }

    @Test
    void theDesignSpectraHoldTheFluenceOfAnotherIntegration() {
        // Integrated once by other means from the same printed figures: years, above 30 MeV, above 100 MeV (1/cm2).
        double[][] other = {{10, 1.26e9, 7.7e7}, {20, 1.98e9, 1.22e8}, {50, 3.04e9, 1.88e8}, {100, 3.85e9, 2.38e8},
            {300, 5.18e9, 3.22e8}, {1000, 6.68e9, 4.15e8}, {10000, 9.63e9, 6.00e8}};
        for (double[] row : other) {
            EventSpectrum event = EventSpectra.named("one in " + (int) row[0] + " years");
            assertEquals(row[1], event.above(30) * 1e-4, row[1] * TWO_DIGITS);
            assertEquals(row[2], event.above(100) * 1e-4, row[2] * TWO_DIGITS);
        }
    }

    @Test
    void theDesignSpectrumIsSmoothAtItsBreak() {
        RigidityBandSpectrum band = (RigidityBandSpectrum) EventSpectra.named("one in 100 years");
        double at = band.breakGV();
        assertEquals(band.perGV(at * (1 - 1e-9)), band.perGV(at * (1 + 1e-9)), band.perGV(at) * 1e-7);
    }

    @Test
    void knowsTheGreatEvents() {
        for (String name : List.of("august 1972", "february 1956", "november 1960", "september 1989",
                "October 1989")) {
            assertTrue(EventSpectra.named(name).above(30) > 1e12, name);
        }
        String message = assertThrows(IllegalArgumentException.class, () -> EventSpectra.named("may 2030"))
                .getMessage();
        assertTrue(message.startsWith("event may 2030 is unknown; accepted: august 1972; "), message);
    }

    @Test
    void aUsersSpectrumGoesThroughItsPoints() throws IOException {
        TabulatedSpectrum spectrum = TabulatedSpectrum.read(write(
                "energy_MeV,fluence_above_per_cm2", "10,1e10", "100,1e8", "1000,0"));
        assertEquals(1e14, spectrum.above(5), 1);
        assertEquals(1e13, spectrum.above(Math.sqrt(1000)), 1e2);
        assertEquals(5e11, spectrum.above(550), 1e2);
        assertEquals(0, spectrum.above(2000), 0);
        assertEquals(0, spectrum.perMeV(5), 0);
    }

    @Test
    void refusesAUsersSpectrumByLineAndColumn() throws IOException {
        String head = "energy_MeV,fluence_above_per_cm2";
        refuses("line 3: energy_MeV is 5; accepted: greater than 10.0 of the row before", head, "10,1e10", "5,1e9");
        refuses("line 3: fluence_above_per_cm2 is -1; accepted: a number from 0.0 to 1.0E14", head, "10,1e10",
                "50,-1");
        refuses("line 3: fluence_above_per_cm2 is 2.0E10; accepted: at most 1.0E10 of the row before", head,
                "10,1e10", "50,2e10");
        refuses("line 1: head is energy,fluence; accepted: energy_MeV,fluence_above_per_cm2", "energy,fluence");
        refuses("line 2: energy_MeV is NaN; accepted: a number from 0.1 to 100000.0", head, "NaN,1");
    }

    private void refuses(String words, String... lines) throws IOException {
        Path file = write(lines);
        String message = assertThrows(InputException.class, () -> TabulatedSpectrum.read(file)).getMessage();
        assertEquals(file + ", " + words, message);
    }

    private Path write(String... lines) throws IOException {
        return Files.write(directory.resolve("event.csv"), List.of(lines));
    }
}
