// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import java.util.List;
import java.util.Objects;

/**
 * What stands between the sky and people: a soil of any depth over a hull's skin.
 *
 * @param soil the soil
 * @param skin layers of the skin from outside to inside; may be empty
 */
public record Shield(Material soil, List<Layer> skin) {
    /** Copies the layers. */
    public Shield {
        Objects.requireNonNull(soil, "soil");
        skin = List.copyOf(skin);
    }

    /**
     * Soil of a named composition over a skin.
     *
     * @param composition {@code highland} or {@code mare}, or any other name that {@link Materials} knows
     * @param skin        layers of the skin from outside to inside; may be empty
     * @return the shield
     * @throws IllegalArgumentException if the composition is unknown
     */
    public static Shield of(String composition, List<Layer> skin) {
        return new Shield(Materials.named(composition), skin);
    }

    /**
     * Mass per area of the whole skin, crossed straight.
     *
     * @return areal density (kg/m2), zero or more
     */
    public double skinArealDensity() {
        return skin.stream().mapToDouble(Layer::arealDensity).sum();
    }
}
