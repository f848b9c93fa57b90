// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.shielding.material.Materials;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class StoppingPublishedTest {
    /** Goal for protons from 30 MeV to 2 GeV; the tables themselves claim 1 to 2 %. */
    private static final double PROTONS = 0.01;
    /** Goal between 1 and 30 MeV. */
    private static final double SLOW_PROTONS = 0.02;
    /** Goal for ions above 30 MeV per nucleon; the tables use another mean excitation energy of water. */
    private static final double IONS = 0.04;
    /** Ions at 10 MeV per nucleon, where the effective charge scatters. */
    private static final double SLOW_IONS = 0.07;
    private static final double FAST_FROM_MEV = 30;
    private static final Map<String, Integer> CHARGES =
            new TreeMap<>(Map.of("He", 2, "C", 6, "O", 8, "Ne", 10, "Si", 14, "Ar", 18));

    @PublishedTable("/bermwright/shielding/published/pstar-protons.csv")
    void protonsLoseEnergyAsTabulated(PublishedRow row) {
        double energy = row.number("energy_MeV");
        for (String material : List.of("water", "aluminium", "silicon", "alumina", "air")) {
            row.assertShare(material, Stopping.in(Materials.named(material)).protonMeVPerGCm2(energy),
                    energy < FAST_FROM_MEV ? SLOW_PROTONS : PROTONS);
        }
    }

    @PublishedTable("/bermwright/shielding/published/pstar-ranges.csv")
    void protonsReachAsFarAsTabulated(PublishedRow row) {
        double energy = row.number("energy_MeV");
        for (String material : List.of("water", "aluminium", "silicon", "alumina")) {
            row.assertShare(material, Stopping.in(Materials.named(material)).protonRangeGCm2(energy),
                    energy < FAST_FROM_MEV ? SLOW_PROTONS : PROTONS);
        }
    }

    @PublishedTable("/bermwright/shielding/published/icru-ions-water.csv")
    void ionsLoseEnergyInWaterAsTabulated(PublishedRow row) {
        double energy = row.number("energy_MeV_n");
        Stopping water = Stopping.in(Materials.named("water"));
        for (Map.Entry<String, Integer> ion : CHARGES.entrySet()) {
            if (row.has(ion.getKey())) {
                row.assertShare(ion.getKey(), water.ionMeVPerGCm2(ion.getValue(), energy),
                        energy < FAST_FROM_MEV ? SLOW_IONS : IONS);
            }
        }
    }

    @PublishedTable("/bermwright/shielding/published/astar-alumina.csv")
    void heliumLosesEnergyInAluminaAsTabulated(PublishedRow row) {
        double energy = row.number("energy_MeV_n");
        row.assertShare("He", Stopping.in(Materials.named("alumina")).ionMeVPerGCm2(2, energy), SLOW_PROTONS);
    }

    @Test
    @Published(work = "ICRU Report 49 (1993), protons in water", place = "table, 1 MeV", printedValue = 260.8,
            unit = "MeV cm2/g", tolerance = 5.2, remembered = true)
    void slowProtonsInWater(PublishedValue printed) {
        printed.assertEqualTo(Stopping.in(Materials.named("water")).protonMeVPerGCm2(1));
    }

    @Test
    @Published(work = "ICRU Report 49 (1993), protons in water", place = "table, 2 MeV", printedValue = 162.9,
            unit = "MeV cm2/g", tolerance = 3.3, remembered = true)
    void protonsInWaterAtTwoMegaelectronvolts(PublishedValue printed) {
        printed.assertEqualTo(Stopping.in(Materials.named("water")).protonMeVPerGCm2(2));
    }

    @Test
    @Published(work = "ICRU Report 49 (1993), protons in water", place = "table, 5 MeV", printedValue = 79.11,
            unit = "MeV cm2/g", tolerance = 1.6, remembered = true)
    void protonsInWaterAtFiveMegaelectronvolts(PublishedValue printed) {
        printed.assertEqualTo(Stopping.in(Materials.named("water")).protonMeVPerGCm2(5));
    }
}
