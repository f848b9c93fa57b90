// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Azimuth;
import java.util.Optional;
import java.util.function.Function;

/**
 * A sheet to be drawn.
 *
 * @param name  file-safe name
 * @param title what it shows
 * @param draw  draws it
 */
record Draft(String name, String title, Function<Sheet, Drawn> draw) {
    /**
     * What was drawn.
     *
     * @param scale its scale (1)
     * @param right the azimuth that runs to the right; empty for what is not a plan
     */
    record Drawn(int scale, Optional<Azimuth> right) {
    }
}
