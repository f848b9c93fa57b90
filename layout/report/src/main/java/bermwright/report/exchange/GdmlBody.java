// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.util.List;

/**
 * A body of a scene for particle transport: what it is made of, what is taken out of it, and what stands inside it.
 *
 * @param name     its name: letters, digits and _, a letter first
 * @param mesh     its form, in metres from the scene's origin
 * @param without  names of bodies given to the file for being taken out of it
 * @param material name of its material
 * @param inside   bodies that stand wholly inside it
 */
public record GdmlBody(String name, Mesh mesh, List<String> without, String material, List<GdmlBody> inside) {
    /** Copies the lists. */
    public GdmlBody {
        without = List.copyOf(without);
        inside = List.copyOf(inside);
    }
}
