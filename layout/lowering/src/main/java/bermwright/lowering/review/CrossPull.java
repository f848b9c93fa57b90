// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.TiltState;
import java.util.Comparator;
import java.util.Optional;

/**
 * What a cross slope does at the tilt at which it asks most of the lines.
 *
 * <p>The weight's part across the plane, W sin b at the centre of mass, turns the hull about the pivot. Lines side by
 * side take the part of that moment square to them by unequal tension; the part about their own direction is left to
 * the pivot's width or to side lines.
 *
 * <p>The body stays in its plane; what the lines give back once it swings is left out, so side lines are an upper
 * bound. The forces in the plane are worked out with the whole weight, which is {@code overstated} too much.
 *
 * @param tilt       tilt (rad)
 * @param sideForce  weight across the plane, W sin b (N)
 * @param overstated how much too great the weight in the plane is taken, 1 / cos b - 1 (1)
 * @param unequal    what the outermost line gains on the lower side and the other loses (N); zero where the lugs have
 *                   no spread
 * @param hardest    tension of the harder line then (N)
 * @param slack      whether the other outermost line hangs slack
 * @param left       moment that the lines do not take (N m)
 * @param byPivot    moment that the pivot takes by its half-width and friction (N m), zero for a rim
 * @param sideLine   pull of a level side line at the lugs that takes the rest (N)
 */
public record CrossPull(double tilt, double sideForce, double overstated, double unequal, double hardest,
        boolean slack, double left, double byPivot, double sideLine) {
    /**
     * The worst tilt of a lowering on a cross slope.
     *
     * @param what   the case
     * @param result what came of working it out
     * @return the worst of all tilts at which the lowering lines hold; absent where they hold at none
     */
    static Optional<CrossPull> worst(LoweringCase what, LoweringResult result) {
        return result.tilts().stream().filter(s -> s.lineTotal() > 0 && s.tilt() >= result.handOverTilt())
                .map(s -> at(what, s)).max(Comparator.comparingDouble(c -> Math.max(c.hardest, c.sideLine)));
    }

    private static CrossPull at(LoweringCase what, TiltState s) {
        TippingBody tipping = what.tipping();
        LoweringLines lines = what.rig().lines();
        double across = Math.abs(tipping.ground().slopeAcross());
        double side = tipping.weight() * Math.sin(across);
        PlanePoint centre = tipping.centreOfMass(s.tilt());
        double ux = -Math.cos(s.lineAngle());
        double uz = Math.sin(s.lineAngle());
        double along = Math.abs(centre.x() * ux + centre.z() * uz);
        double about = Math.abs(centre.z() * ux - centre.x() * uz);
        double half = lines.halfSpread();
        double unequal = half > 0 ? side * along * half / squares(lines.count(), half) : 0;
        double left = half > 0 ? side * about : side * Math.hypot(along, about);
        double width = tipping.pivot().halfWidth() * Math.max(0, s.pivotUp());
        double byPivot = width * Math.max(Math.abs(ux), tipping.ground().friction() * Math.abs(uz));
        return new CrossPull(s.tilt(), side, 1 / Math.cos(across) - 1, unequal, s.lineEach() + unequal,
                unequal >= s.lineEach(), left, byPivot, Math.max(0, left - byPivot) / s.lever());
    }

    /** Sum of the squared distances of evenly spread lugs from the plane (m2). */
    private static double squares(int count, double half) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double y = half * (2.0 * i / (count - 1) - 1);
            sum += y * y;
        }
        return sum;
    }
}
