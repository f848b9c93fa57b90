// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.terrain.grid.ElevationGrid;
import java.util.stream.IntStream;

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
    /** The number of steps from the darkest shade, 1, to the brightest, 255. */
    private static final double STEPS = 254;

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
        int rows = grid.frame().rows();
        int columns = grid.frame().columns();
        byte[] shades = new byte[grid.frame().size()];
        double up = Math.sin(light.elevation());
        double east = Math.cos(light.elevation()) * light.from().east();
        double north = Math.cos(light.elevation()) * light.from().north();
        IntStream.range(0, rows).parallel().forEach(row -> {
            NodeWindow window = new NodeWindow(grid, row, exaggeration);
            for (int column = 0; column < columns; column++) {
                window.moveTo(column);
                double gradientEast = window.gradientEast();
                double gradientNorth = window.gradientNorth();
                double lit = (up - gradientEast * east - gradientNorth * north)
                        / Math.sqrt(1 + gradientEast * gradientEast + gradientNorth * gradientNorth);
                shades[row * columns + column] = Double.isNaN(lit) ? UNKNOWN
                        : (byte) (1 + (int) (STEPS * Math.max(0, lit) + 0.5));
            }
        });
        return shades;
    }
}
