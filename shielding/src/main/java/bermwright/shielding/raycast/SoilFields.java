// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Optional;

/**
 * The soil around a station.
 *
 * @param near the soil it stands in: a finer patch where there is one
 * @param far  the soil beyond the patch; empty where the near one is all there is
 */
record SoilFields(SoilField near, Optional<SoilField> far) {
    /** A single one. */
    static SoilFields of(SoilField only) {
        return new SoilFields(only, Optional.empty());
    }
}
