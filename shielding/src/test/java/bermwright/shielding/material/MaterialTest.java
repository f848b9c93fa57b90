// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

class MaterialTest {
    /** Shares were written down with four digits. */
    private static final double SHARES = 0.002;

    @Test
    void highlandSoilFromItsOxidesHoldsTheElementsWorkedOutElsewhere() {
        Map<String, Double> elsewhere = Map.of("O", 0.4504, "Si", 0.2111, "Al", 0.1410, "Ca", 0.1095, "Fe", 0.0416,
                "Mg", 0.0380, "Ti", 0.0034, "Na", 0.0034);
        Material soil = Materials.named("highland");
        soil.parts().stream().filter(p -> elsewhere.containsKey(p.element().symbol())).forEach(p ->
                assertEquals(elsewhere.get(p.element().symbol()), p.share(), SHARES, p.element().symbol()));
        assertEquals(0.4951, soil.electrons(), 0.0005);
        assertEquals(21.65, soil.meanAtomicWeight(), 0.05);
    }

    @Test
    void unknownElementsAndMaterialsAreRefusedByName() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Element.of("Xx")).getMessage()
                .startsWith("element Xx is unknown; accepted: H, He, Li"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Materials.named("cheese")).getMessage()
                .startsWith("material cheese is unknown; accepted: highland, mare, aluminium"));
    }

    @Test
    void aMixtureLiesBetweenItsParts() {
        Material half = Material.mixture("half", Materials.named("water"), Materials.named("aluminium"), 0.5);
        assertEquals(1, half.parts().stream().mapToDouble(Material.Part::share).sum(), 1e-12);
        double water = Materials.named("water").electrons();
        assertEquals((water + Materials.named("aluminium").electrons()) / 2, half.electrons(), 1e-9);
        assertTrue(half.density() > 1000 && half.density() < 2700);
    }

    @Test
    void negativeSharesAndDepthsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Material.of("bad", 1000, Material.Kind.COMPOUND,
                Map.of("O", 1.2, "H", -0.2), "none"));
        assertEquals("areal density of water is -1 kg/m2; accepted: 0 or more kg/m2",
                assertThrows(IllegalArgumentException.class, () -> new Layer(Materials.named("water"), -1))
                        .getMessage());
    }
}
