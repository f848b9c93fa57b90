// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import java.util.List;

/**
 * Several landforms, one on another: their heights add up.
 *
 * @param parts the landforms
 */
public record Landforms(List<Landform> parts) implements Landform {
    /** Copies the parts. */
    public Landforms {
        parts = List.copyOf(parts);
    }

    @Override
    public double height(double east, double north) {
        double height = 0;
        for (Landform part : parts) {
            height += part.height(east, north);
        }
        return height;
    }
}
