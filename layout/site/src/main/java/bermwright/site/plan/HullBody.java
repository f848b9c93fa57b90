// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.List;
import java.util.Optional;

/**
 * What a hull is built as: its size, its ends, its skin and its shell.
 *
 * @param length        length with both ends (m), above zero
 * @param diameter      diameter (m), above zero
 * @param baseEnd       shape of the end it stands on
 * @param farEnd        shape of the other end
 * @param skin          layers of the skin from outside inwards
 * @param stowage       what stands against the wall inside over parts of it
 * @param shell         the load-bearing shell; empty where not stated
 * @param innerPressure pressure inside (Pa), zero or more
 */
public record HullBody(double length, double diameter, Hull.End baseEnd, Hull.End farEnd, List<Hull.SkinLayer> skin,
        List<Stowage> stowage, Optional<Hull.Shell> shell, double innerPressure) {
    /** Copies the list. */
    public HullBody {
        skin = List.copyOf(skin);
        stowage = List.copyOf(stowage);
    }
}
