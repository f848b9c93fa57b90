// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.planted;

import bermwright.shielding.dose.Band;

/** Planted: the ground reaching up to radiation. */
final class LooksUp {
    private LooksUp() {
    }

    static Class<?> reached() {
        return Band.class;
    }
}
