// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The poles whose heads lead the lowering lines; one pole where the half-spread is nothing, else one at each side.
 *
 * @param foot       where the feet stand in the lay-down plane
 * @param head       where the sheaves at the heads are
 * @param halfSpread half the distance between the outermost poles (m), zero or more
 * @param tube       what each is made of; absent where it was not given
 * @param footArea   area of each foot on the ground (m2), positive; absent where it was not given
 */
public record Poles(PlanePoint foot, PlanePoint head, double halfSpread, Optional<Tube> tube,
        OptionalDouble footArea) {
    /** Refuses poles without height. */
    public Poles {
        Objects.requireNonNull(foot, "foot");
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(tube, "tube");
        Require.positive("pole height", head.z() - foot.z(), "m");
        Require.notNegative("half-spread of the poles", halfSpread, "m");
        footArea.ifPresent(v -> Require.positive("foot area", v, "m2"));
    }

    /**
     * Poles square to flat ground.
     *
     * @param height      height of the heads (m), positive
     * @param behindPivot distance of the feet behind the pivot line (m)
     * @param halfSpread  half the distance between them (m), zero or more
     * @return the poles, without tube and foot
     */
    public static Poles plain(double height, double behindPivot, double halfSpread) {
        return new Poles(new PlanePoint(-behindPivot, 0), new PlanePoint(-behindPivot, height), halfSpread,
                Optional.empty(), OptionalDouble.empty());
    }

    /**
     * How many poles there are for a number of lines.
     *
     * @param lines number of lowering lines (1), at least 1
     * @return the number of poles (1)
     */
    public int count(int lines) {
        return halfSpread == 0 ? 1 : Math.max(2, lines);
    }

    /**
     * The length of a pole.
     *
     * @return the length (m), positive
     */
    public double length() {
        return head.distance(foot);
    }
}
