// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.shielding.material.Element;
import org.junit.jupiter.api.Test;

class IonReactionsPublishedTest {
    /** Printed scatter of measured element yields is a tenth; the formula's own is a quarter. */
    private static final double ELEMENTS = 0.25;

    @PublishedTable("/bermwright/shielding/published/ion-cross-sections.csv")
    void reactionsOfIonsAsMeasured(PublishedRow row) {
        double ours = IonReactions.crossSectionMb((int) row.number("projectile"), row.number("mass"),
                Element.of(row.text("target")), row.number("energy_MeV_n"));
        row.assertShare("sigma", ours, row.number("within"));
    }

    /** A measured point that the evaluated table, which ends at 10 GeV, does not hold. */
    @Test
    @Published(work = "Abgrall et al. (2011), Phys. Rev. C 84, 034604", place = "inelastic, 31 GeV/c p on C",
            printedValue = 257.2, unit = "mb", tolerance = 9, remembered = true)
    void fastProtonsReactWithCarbonAsMeasured(PublishedValue printed) {
        printed.assertEqualTo(NucleonReactions.crossSectionMb(false, Element.of("C"), 30_100));
    }

    @Test
    @Published(work = "Suemmerer (2013), Phys. Rev. C 87, 039903 (erratum)",
            place = "test value, Ni-58 on Be-9 to Ni-48", printedValue = 1.408e-14, unit = "b", tolerance = 1.4e-17)
    void theYieldFormulaGivesItsOwnTestValue(PublishedValue printed) {
        printed.assertEqualTo(FragmentYields.crossSectionB(new FragmentYields.Nucleus(58, 28), 9,
                new FragmentYields.Nucleus(48, 28)));
    }

    @PublishedTable("/bermwright/shielding/published/villagrasa-2007-iron.csv")
    void ironBreaksIntoElementsAsMeasured(PublishedRow row) {
        row.assertShare("sigma", iron((int) row.number("charge")), ELEMENTS);
    }

    @Test
    @Published(work = "Villagrasa-Canton et al. (2007), Phys. Rev. C 75, 044603",
            place = "iron on hydrogen at 1 GeV per nucleon, sum of elements 12 to 26", printedValue = 747.5,
            unit = "mb", tolerance = 75)
    void ironFragmentsAddUp(PublishedValue printed) {
        double sum = 0;
        for (int z = 12; z <= 26; z++) {
            sum += iron(z);
        }
        printed.assertEqualTo(sum);
    }

    private static double iron(int charge) {
        double sum = 0;
        for (int a = charge; a < 56; a++) {
            sum += FragmentYields.crossSectionB(new FragmentYields.Nucleus(56, 26), 1,
                    new FragmentYields.Nucleus(a, charge));
        }
        return sum * 1000;
    }
}
