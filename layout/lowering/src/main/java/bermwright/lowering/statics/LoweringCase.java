// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.motion.HeldBody;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Tube;
import bermwright.regolith.Regolith;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One lowering by lines to be worked out.
 *
 * @param tipping the body on its pivot and ground
 * @param rig     the rig
 * @param soil    the soil under anchors and feet
 * @param rate    tilting rate (rad/s), positive
 * @param shell   the hull's bare shell as a tube; absent where it was not given
 */
public record LoweringCase(TippingBody tipping, Rig rig, Regolith soil, double rate, Optional<Tube> shell) {
    /** Refuses missing parts and standing still. */
    public LoweringCase {
        Objects.requireNonNull(tipping, "tipping");
        Objects.requireNonNull(rig, "rig");
        Objects.requireNonNull(soil, "soil");
        Require.positive("tilting rate", rate, "rad/s");
        Objects.requireNonNull(shell, "shell");
    }

    /**
     * A lowering of a hull whose shell is not known.
     *
     * @param tipping the body on its pivot and ground
     * @param rig     the rig
     * @param soil    the soil under anchors and feet
     * @param rate    tilting rate (rad/s), positive
     */
    public LoweringCase(TippingBody tipping, Rig rig, Regolith soil, double rate) {
        this(tipping, rig, soil, rate, Optional.empty());
    }

    /**
     * This case in another rig.
     *
     * @param changed the rig
     * @return the changed case
     */
    public LoweringCase with(Rig changed) {
        return new LoweringCase(tipping, changed, soil, rate, shell);
    }

    /**
     * This case with another body.
     *
     * @param changed the body on its pivot
     * @return the changed case
     */
    public LoweringCase with(TippingBody changed) {
        return new LoweringCase(changed, rig, soil, rate, shell);
    }

    /**
     * The body on all its lowering lines as one spring.
     *
     * @return the body on its lines; absent where the lines have no stiffness given
     */
    public Optional<HeldBody> held() {
        OptionalDouble stiffness = rig.lines().line().stiffness();
        if (stiffness.isEmpty()) {
            return Optional.empty();
        }
        PlanePoint lead = LineGeometry.leadPoint(rig);
        return Optional.of(new HeldBody(tipping, rig.lines().lug(), lead,
                stiffness.getAsDouble() * rig.lines().count(), lead.distance(rig.lines().winch().at())));
    }
}
