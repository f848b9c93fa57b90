// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.fuzz.Changes;
import bermwright.fuzz.Fuzz;
import bermwright.shielding.spectrum.TabulatedSpectrum;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of events and of responses changed by chance are read or refused. */
class TableFuzzTest {
    private static final String RESPONSE = """
            # per: day
            # quantity: gray equivalent, skin
            # open_ground_return_mSv: 0.05
            # skin_equivalence: 0.95
            # source: invented
            areal_density_g_cm2,isotropic_dose_mSv,low_mSv,high_mSv
            0,1.6,1.2,2.1
            100,0.9,0.6,1.3
            300,0.3,0.2,0.5
            """;
    private static final String EVENT = """
            # source: invented
            # beyond: power law in rigidity
            energy_MeV,fluence_above_per_cm2
            10,1e10
            30,3e9
            60,8e8
            100,1e8
            """;

    @TempDir
    Path folder;

    @Test
    void responsesAreReadOrRefused() throws IOException {
        Path file = folder.resolve("response.csv");
        new Fuzz("response", 100, List.of(Fuzz.bytes(RESPONSE), Fuzz.bytes(RESPONSE.replace("day", "event"))))
                .run(TableFuzzTest.class, Changes::ofText, input -> {
                    Files.write(file, input);
                    Response response = ReviewersTable.read(file).response();
                    double dose = response.isotropicDose(500);
                    return dose >= 0 && dose < 1e6 ? "" : "a dose of " + dose;
                });
    }

    @Test
    void eventsAreReadOrRefused() throws IOException {
        Path file = folder.resolve("event.csv");
        byte[] ending = Fuzz.bytes(EVENT.replace("power law in rigidity", "nothing"));
        new Fuzz("event", 100, List.of(Fuzz.bytes(EVENT), ending))
                .run(TableFuzzTest.class, Changes::ofText, input -> {
                    Files.write(file, input);
                    double fluence = TabulatedSpectrum.read(file).above(50);
                    return fluence >= 0 && fluence < 1e300 ? "" : "a fluence of " + fluence;
                });
    }
}
