// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.shielding.cover.DepthMap;

/**
 * What covers one hull.
 *
 * @param id                the hull
 * @param volume            soil placed for it, with half of what lies over each tunnel that ends at it (m3)
 * @param placedMass        mass of that soil (kg)
 * @param depth             depth over its skin, unrolled
 * @param least             the thinnest place among those to be covered: the one that lacks most of what is wanted
 *                          there, else the least deep; its depth is not a number where nothing is to be covered
 * @param leastArealDensity soil and skin crossed straight at that place (kg/m2)
 * @param shareBelowWanted  share of the skin to be covered that lies shallower than wanted (1)
 * @param uncertainty             how far depth and volume may be off for what the elevation file does not show
 */
public record HullCover(String id, double volume, double placedMass, DepthMap depth, DepthMap.Place least,
        double leastArealDensity, double shareBelowWanted, CoverUncertainty uncertainty) {
}
