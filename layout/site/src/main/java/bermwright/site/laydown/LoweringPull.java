// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.statics.HandOver;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.site.space.RigInSpace;
import bermwright.terrain.grid.ElevationGrid;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the lines of a hull pull at each tilt, for how far they sag. */
public final class LoweringPull implements RigInSpace.Pull {
    private static final double STEP = Math.toRadians(0.5);
    private final double[] tensions;
    private final OptionalDouble handOver;
    private final double rest;

    private LoweringPull(Optional<LoweringCase> setup) {
        this.handOver = setup.map(c -> OptionalDouble.of(Math.max(0, HandOver.of(c.tipping()).to())))
                .orElse(OptionalDouble.empty());
        this.rest = setup.map(c -> c.tipping().restTilt()).orElse(0.0);
        this.tensions = setup.map(this::tensions).orElse(new double[0]);
    }

    /**
     * The pull of a hull's lines.
     *
     * @param plan   the plan, for its ground and rules
     * @param hull   the hull
     * @param ground the ground; without it nothing is known of the pull
     * @return the pull; empty answers where mechanics can make nothing of the gear
     */
    public static LoweringPull of(Plan plan, Hull hull, Optional<ElevationGrid> ground) {
        return new LoweringPull(ground.flatMap(g -> LyingPose.of(hull, g).flatMap(pose -> {
            try {
                return HullCase.of(plan, hull, pose, g).byLines(plan, hull, g);
            } catch (IllegalArgumentException unusable) {
                return Optional.empty();
            }
        })));
    }

    private double[] tensions(LoweringCase setup) {
        Statics statics = new Statics(setup.tipping(), setup.rig());
        double[] all = new double[(int) Math.ceil(rest / STEP) + 1];
        for (int i = 0; i < all.length; i++) {
            all[i] = statics.at(Math.min(rest, i * STEP)).map(TiltState::lineEach).orElse(0.0);
        }
        return all;
    }

    @Override
    public OptionalDouble each(double tilt) {
        double at = tilt / STEP;
        int lower = (int) Math.floor(at);
        if (!(tilt >= 0) || lower >= tensions.length) {
            return OptionalDouble.empty();
        }
        double next = tensions[Math.min(lower + 1, tensions.length - 1)];
        double tension = tensions[lower] + (at - lower) * (next - tensions[lower]);
        return tension > 0 ? OptionalDouble.of(tension) : OptionalDouble.empty();
    }

    @Override
    public OptionalDouble handOver() {
        return handOver;
    }
}
