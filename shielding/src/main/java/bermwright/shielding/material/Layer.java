// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * A layer of one material that particles cross.
 *
 * @param material     the material
 * @param arealDensity mass per area (kg/m2), zero or more; 1 g/cm2 is 10 kg/m2
 */
public record Layer(Material material, double arealDensity) {
    /** Refuses a negative areal density. */
    public Layer {
        Objects.requireNonNull(material, "material");
        Require.notNegative("areal density of " + material.name(), arealDensity, "kg/m2");
    }
}
