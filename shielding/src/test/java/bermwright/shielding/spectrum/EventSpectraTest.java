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
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
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
                assertIsItsFall(event, energy);
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
    void aTableThatEndsEarlyGoesOnByAStatedLaw() throws IOException {
        String[] rows = {"energy_MeV,fluence_above_per_cm2", "10,1.68e10", "30,7.9e9", "60,2.547e9", "100,5.63e8"};
        TabulatedSpectrum power = TabulatedSpectrum.read(write(rows));
        // Rigidity of 60, 100 and 200 MeV: 0.34087, 0.44458 and 0.64444 GV; by hand from the last two points.
        double index = Math.log(2.547e9 / 5.63e8) / Math.log(0.44458 / 0.34087);
        double byHand = 5.63e12 * Math.pow(0.44458 / 0.64444, index);
        assertEquals(byHand, power.above(200), byHand * 1e-3);
        assertEquals("by a power law in rigidity through the last two points of its table, taken here since its file"
                + " states no law", power.continuation());
        EventSpectrum exponential = power.otherwise().get(0);
        double fold = (0.44458 - 0.34087) / Math.log(2.547e9 / 5.63e8);
        assertEquals(5.63e12 * Math.exp((0.44458 - 0.64444) / fold), exponential.above(200), byHand * 1e-3);
        TabulatedSpectrum stated = TabulatedSpectrum.read(write(with(rows, "# beyond: exponential in rigidity")));
        assertEquals(exponential.above(300), stated.above(300), 1);
        assertEquals(List.of(), stated.otherwise());
        TabulatedSpectrum ended = TabulatedSpectrum.read(write(with(rows, "# beyond: nothing")));
        assertEquals(0, ended.above(101), 0);
        assertEquals("not at all", ended.continuation());
        for (EventSpectrum event : List.of(power, stated)) {
            assertEquals(event.above(100 * (1 - 1e-9)), event.above(100), event.above(100) * 1e-6);
            assertIsItsFall(event, 250);
            assertEquals(0, new CutSpectrum(event).perMeV(101), 0);
            assertEquals(event.perMeV(80), new CutSpectrum(event).perMeV(80), 0);
        }
    }

    @Test
    void refusesATableThatDoesNotSayHowItGoesOn() throws IOException {
        String head = "energy_MeV,fluence_above_per_cm2";
        refuses("line 3: energy_MeV is 60.0; accepted: a last energy of 100.0 MeV or more, a last fluence of 0, or a"
                + " note \"# beyond:\" with power law in rigidity, or exponential in rigidity, or nothing: what comes"
                + " through hull and cover is above that energy", head, "10,1e10", "60,1e9");
        refuses("line 3: fluence_above_per_cm2 is 1.0E9; accepted: less than the row before, so that the event can be"
                + " continued, or a note \"# beyond: nothing\"", head, "10,1e9", "200,1e9");
        refuses("line 1: beyond is a guess; accepted: power law in rigidity, or exponential in rigidity, or nothing",
                "# beyond: a guess", head, "10,1e9", "200,1e8");
    }

    @Test
    void aFitOfTheFluenceIsSmoothAtItsBreakWithAndWithoutItsSecondFold() {
        for (OptionalDouble second : List.of(OptionalDouble.empty(), OptionalDouble.of(2.5))) {
            FluenceBandSpectrum fit = new FluenceBandSpectrum("x", 1e13, 0.6, 0.3, 5, second, "invented");
            double mass = EventSpectrum.PROTON_MEV / 1000;
            double at = 1000 * (Math.hypot(fit.breakGV(), mass) - mass);
            assertEquals(fit.above(at * (1 - 1e-9)), fit.above(at * (1 + 1e-9)), fit.above(at) * 1e-7);
            assertEquals(fit.perMeV(at * (1 - 1e-9)), fit.perMeV(at * (1 + 1e-9)), fit.perMeV(at) * 1e-7);
            for (double energy : new double[] {30, 200, 1500, 4000}) {
                assertIsItsFall(fit, energy);
            }
        }
        assertThrows(IllegalArgumentException.class,
                () -> new FluenceBandSpectrum("x", 1e13, 5, 0.3, 0.6, OptionalDouble.empty(), "invented"));
    }

    @Test
    void aGreatEventLastsHoursEvenAtItsGreatestFlux() {
        // Worked by hand from the printed figures above 100 MeV: 2.38e8 over 8.1e3 a second (1/cm2).
        assertEquals(2.38e8 / 8.1e3, EventSpectra.shortestDuration(), 600);
        assertEquals(Optional.of("ground-level"), EventSpectra.kind("February 1956"));
    }

    private static void assertIsItsFall(EventSpectrum event, double energy) {
        double fall = (event.above(energy * 0.999) - event.above(energy * 1.001)) / (0.002 * energy);
        assertEquals(fall, event.perMeV(energy), fall * DERIVATIVE);
    }

    private static String[] with(String[] rows, String note) {
        return Stream.concat(Stream.of(note), Stream.of(rows)).toArray(String[]::new);
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
