// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.List;

/**
 * A tunnel between two hatches.
 *
 * @param id       its id
 * @param from     hatch it leaves, as {@code hull/hatch}
 * @param to       hatch it reaches, as {@code hull/hatch}
 * @param diameter diameter (m), above zero
 * @param skin     layers of its skin from outside inwards
 * @param annotations     note, own keys and the keys given
 */
public record Tunnel(String id, String from, String to, double diameter, List<Hull.SkinLayer> skin,
        Annotations annotations) {
    /** Copies the skin. */
    public Tunnel {
        skin = List.copyOf(skin);
    }
}
