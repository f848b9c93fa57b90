// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The poles whose heads lead the lowering lines, standing evenly between the outermost ones.
 *
 * @param foot       where the feet stand in the lay-down plane
 * @param head       where the sheaves at the heads are
 * @param halfSpread half the distance between the outermost poles (m), zero or more
 * @param tube       what each is made of; absent where it was not given
 * @param footArea   area of each foot on the ground (m2), positive; absent where it was not given
 * @param count      number of poles (1), at least 1; a single one stands in the plane
 * @param headGear   what sits at each head
 */
public record Poles(PlanePoint foot, PlanePoint head, double halfSpread, Optional<Tube> tube,
        OptionalDouble footArea, int count, HeadGear headGear) {
    /** Refuses poles without height. */
    public Poles {
        Objects.requireNonNull(foot, "foot");
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(tube, "tube");
        Require.positive("pole height", head.z() - foot.z(), "m");
        Require.notNegative("half-spread of the poles", halfSpread, "m");
        Require.atLeast("number of poles", count, 1, "1");
        Objects.requireNonNull(headGear, "headGear");
        footArea.ifPresent(v -> Require.positive("foot area", v, "m2"));
    }

    /**
     * A pair of poles, or one in the plane where they have no spread, of whose heads nothing is known.
     *
     * @param foot       where the feet stand in the lay-down plane
     * @param head       where the sheaves at the heads are
     * @param halfSpread half the distance between them (m), zero or more
     * @param tube       what each is made of
     * @param footArea   area of each foot on the ground (m2)
     */
    public Poles(PlanePoint foot, PlanePoint head, double halfSpread, Optional<Tube> tube, OptionalDouble footArea) {
        this(foot, head, halfSpread, tube, footArea, Reeving.usualPoles(halfSpread), HeadGear.NOT_GIVEN);
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
