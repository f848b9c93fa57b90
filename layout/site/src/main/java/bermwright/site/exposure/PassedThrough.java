// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.site.plan.PassThrough;

/**
 * How something that passes through a cover fares under it.
 *
 * @param hull           the hull
 * @param thing          what it is and where
 * @param deepest        deepest soil straight over it; on the lower half, beside the hull above it (m), zero or more;
 *                       zero for what is open
 * @param shareUnderSoil share of it that lies under soil (1)
 * @param openWay        length of the open way through the soil (m); zero for what is closed or stands free
 * @param displaced      placed soil that the open way takes up (m3), zero or more
 */
public record PassedThrough(String hull, PassThrough thing, double deepest, double shareUnderSoil, double openWay,
        double displaced) {
    /**
     * What state it is in.
     *
     * @return {@code open through the soil}, {@code free of soil}, {@code under soil} or {@code spoilt by soil}
     */
    public String state() {
        if (openWay > 0) {
            return "open through the soil";
        }
        return !(shareUnderSoil > 0) ? "free of soil" : thing.kind().isSpoiltBySoil() ? "spoilt by soil" : "under soil";
    }
}
