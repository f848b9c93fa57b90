// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import bermwright.published.Published;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class MaterialPublishedTest {
    private static final String ICRU_37 = "ICRU Report 37 (1984), mean excitation energies of compounds";

    @Test
    @Published(work = ICRU_37, place = "silica", printedValue = 139.2, unit = "eV", tolerance = 3, remembered = true)
    void silicaByBraggsRule(PublishedValue printed) {
        printed.assertEqualTo(byRule("silica"));
    }

    @Test
    @Published(work = ICRU_37, place = "alumina", printedValue = 145.2, unit = "eV", tolerance = 3, remembered = true)
    void aluminaByBraggsRule(PublishedValue printed) {
        printed.assertEqualTo(byRule("alumina"));
    }

    @Test
    @Published(work = ICRU_37, place = "liquid water", printedValue = 75.0, unit = "eV", tolerance = 1.5,
            remembered = true)
    void waterByBraggsRule(PublishedValue printed) {
        printed.assertEqualTo(byRule("water"));
    }

    @Test
    @Published(work = "ICRU Report 37 (1984), electron densities", place = "water, Z/A", printedValue = 0.55508,
            unit = "mol/g", tolerance = 1e-4, remembered = true)
    void electronsOfWater(PublishedValue printed) {
        printed.assertEqualTo(Materials.named("water").electrons());
    }

    private static double byRule(String name) {
        Material m = Materials.named(name);
        return new Material(name, m.density(), m.kind(), m.parts(), java.util.OptionalDouble.empty(), m.source())
                .excitationEV();
    }
}
