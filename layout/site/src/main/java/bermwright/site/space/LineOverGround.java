// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * How far a line hangs clear of the ground at every tilt.
 *
 * <p>Towards an end that is made fast at the ground, or at a lug, less air is wanted: half of how far the line has
 * risen over that end, half of how far it has come from the lug.
 */
public final class LineOverGround {
    private static final double TILT_STEP = Math.toRadians(5);
    private static final double ALONG_STEP = 1;
    private static final int LEAST_STEPS = 8;
    private static final int HALVINGS = 8;
    private static final double TAPER = 0.5;
    private static final double UNKNOWN_STEP = 0.05;
    private final LinePath line;
    private final GroundBelow ground;
    private final double air;
    private final double wander;

    /**
     * A line over ground.
     *
     * @param line   the line
     * @param ground the ground
     * @param air    distance wanted (m), above zero
     * @param wander how far the hull swings to either side (rad), zero or more
     */
    public LineOverGround(LinePath line, GroundBelow ground, double air, double wander) {
        this.line = line;
        this.ground = ground;
        this.air = air;
        this.wander = line.isMoving() ? wander : 0;
    }

    /**
     * A place of the line.
     *
     * @param place  the place
     * @param clear  how far it is clear of the ground (m), below zero inside it
     * @param wanted what is wanted there (m)
     * @param share  how far along the line from its moving or upper end (1)
     * @param tilt   at which tilt (rad)
     * @param swing  at which swing to the left (rad)
     */
    public record Spot(Vec3 place, double clear, double wanted, double share, double tilt, double swing) {
        /**
         * How much air is missing.
         *
         * @return distance (m), above zero where some is
         */
        public double shortBy() {
            return wanted - clear;
        }
    }

    /**
     * The place that is short of air by most.
     *
     * @param counts whether the surface counts at a place
     * @return the place; empty where the line has the air it wants all along
     */
    public Optional<Spot> worst(Predicate<Vec3> counts) {
        Spot worst = null;
        double[] tilts = line.isMoving() ? line.tilts(TILT_STEP) : new double[] {line.to()};
        for (double tilt : tilts) {
            for (double swing : wander > 0 ? new double[] {0, -wander, wander} : new double[] {0}) {
                int steps = Math.max(LEAST_STEPS, (int) Math.ceil(line.chord(tilt, swing) / ALONG_STEP));
                for (int i = 1; i < steps; i++) {
                    Spot spot = spot((double) i / steps, tilt, swing);
                    worst = spot.shortBy() > (worst == null ? 0 : worst.shortBy()) && counts.test(spot.place)
                            ? spot : worst;
                }
            }
        }
        return worst == null ? Optional.empty() : Optional.of(finer(worst, counts));
    }

    /**
     * A place over ground that is not known.
     *
     * @return the place; empty where all ground under the line is known
     */
    public Optional<Vec3> unknown() {
        for (double tilt : new double[] {line.from(), line.to()}) {
            for (double share = 0; share <= 1; share += UNKNOWN_STEP) {
                Vec3 place = line.point(share, tilt, 0);
                if (Double.isNaN(ground.height(place))) {
                    return Optional.of(place);
                }
            }
        }
        return Optional.empty();
    }

    private Spot spot(double share, double tilt, double swing) {
        Vec3 place = line.point(share, tilt, swing);
        double wanted = air;
        Vec3 moving = line.moving().at(tilt, swing);
        Vec3 fixed = line.fixed().at(tilt, swing);
        double rise = fixed.z() - moving.z();
        if (line.fixed().isGrounded()) {
            wanted = Math.min(wanted, TAPER * (1 - share) * Math.max(0, -rise));
        }
        if (line.isMoving()) {
            wanted = Math.min(wanted, TAPER * share * fixed.minus(moving).norm());
        }
        double over = place.z() - ground.notAbove(place, wanted);
        double clear = over > wanted ? over : ground.clear(place, wanted);
        return new Spot(place, Double.isNaN(clear) ? wanted : clear, wanted, share, tilt, swing);
    }

    private Spot finer(Spot from, Predicate<Vec3> counts) {
        Spot best = from;
        double tilt = Math.min(TILT_STEP, line.to() - line.from()) / 2;
        double share = ALONG_STEP / Math.max(ALONG_STEP, line.chord(from.tilt, from.swing)) / 2;
        for (int i = 0; i < HALVINGS; i++, tilt /= 2, share /= 2) {
            for (int k = 0; k < 4; k++) {
                double t = best.tilt + (k == 0 ? tilt : k == 1 ? -tilt : 0);
                double s = best.share + (k == 2 ? share : k == 3 ? -share : 0);
                Spot spot = spot(Math.max(0, Math.min(1, s)),
                        line.isMoving() ? Math.max(line.from(), Math.min(line.to(), t)) : best.tilt, best.swing);
                best = spot.shortBy() > best.shortBy() && counts.test(spot.place) ? spot : best;
            }
        }
        return best;
    }
}
