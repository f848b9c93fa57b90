// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.terrain.grid.ElevationGrid;

/**
 * Ground drawn as a matt surface under a light, with slopes by Horn's weights; no shadow is cast.
 *
 * <p>At the edge the missing neighbours are taken from the edge itself, so that a picture has no frame.
 *
 * @see "Horn (1981), Hill shading and the reflectance map, Proceedings of the IEEE 69, 14-47"
 */
public final class Hillshade {
    /** The shade of a node whose height or neighbour is missing. */
    public static final byte UNKNOWN = 0;

    private Hillshade() {
    }

    /**
     * The shade of each node.
     *
     * @param grid         the ground
     * @param light        the light
     * @param exaggeration heights are stretched by this (1), positive; 1 for the true shape
     * @return shades, to be read as unsigned bytes: 0 where the ground is not known, else 1 (dark) to 255 (square to
     *     the light); rows x columns, row 0 southernmost
     */
    public static byte[] of(ElevationGrid grid, Light light, double exaggeration) {
        float[] steps = SurfaceStream.whole(grid, new HillshadeSurface(light, exaggeration));
        byte[] shades = new byte[steps.length];
        for (int i = 0; i < shades.length; i++) {
            shades[i] = (byte) (int) steps[i];
        }
        return shades;
    }
}
