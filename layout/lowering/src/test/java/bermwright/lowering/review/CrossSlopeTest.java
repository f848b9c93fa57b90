// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Vec3;
import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.review.CrossState.Held;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.Statics;
import bermwright.lowering.sequence.TiltState;
import bermwright.lowering.soil.Regolith;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CrossSlopeTest {
    private static final Regolith SOIL = Regolith.lunarMean(Regolith.Strength.ofDegrees(42, 500));
    /** Six equations solved together lose a few digits. */
    private static final double SOLVED = 1e-9 * ReferenceBody.WEIGHT;
    /** The hull also rolls a little and its base shifts along the ground; a twentieth of the swing. */
    private static final double PENDULUM = 0.05;
    private static final double W = ReferenceBody.WEIGHT;

    private static TippingBody body(Pivot pivot, double alongDeg, double acrossDeg, double friction) {
        return new TippingBody(ReferenceBody.body(20, 0), pivot, new Ground(ReferenceBody.GRAVITY,
                Math.toRadians(alongDeg), Math.toRadians(acrossDeg), friction));
    }

    private static Rig rig(PlanePoint head, double heads) {
        Rig full = ReferenceBody.fullRig(-14);
        Winch winch = new Winch(new PlanePoint(head.x(), -1), OptionalDouble.of(250_000), OptionalDouble.of(5e6),
                Optional.empty());
        return new Rig(new LoweringLines(2, new Lug(ReferenceBody.LUG, 0, 4.5), ReferenceBody.rope(), winch, 0, 1),
                Optional.of(new Poles(new PlanePoint(head.x(), 0), head, heads, Optional.empty(),
                        OptionalDouble.empty())), full.stays(), full.pullOver(), full.pivotHold(), full.factors());
    }

    private static CrossState at(TippingBody body, Rig rig, double tiltDeg) {
        LoweringCase what = new LoweringCase(body, rig, SOIL, Math.toRadians(0.5));
        TiltState s = new Statics(body, rig).at(Math.toRadians(tiltDeg)).orElseThrow();
        return new CrossBalance(what).at(s).orElseThrow();
    }

    /** Hand statics: the weight's part across, at its height over the shoes, moves load from one to the other. */
    @Test
    void shoesShareTheLoadByTheHeightOfTheCentreOfMass() {
        double b = Math.toRadians(3);
        TippingBody body = body(new Pivot.Shoes(4.5, 5, 1), 0, 3, 5);
        CrossState s = at(body, rig(ReferenceBody.HEAD, 4.5), 45);
        assertEquals(Held.PIVOT, s.held());
        PlanePoint c = body.centreOfMass(Math.PI / 4);
        PlanePoint lug = body.point(ReferenceBody.LUG, 0, Math.PI / 4);
        PlanePoint u = lug.directionTo(ReferenceBody.HEAD);
        double tension = W * Math.cos(b) * c.x() / lug.lever(u);
        assertEquals(tension / 2, s.lower(), SOLVED);
        assertEquals(tension / 2, s.upper(), SOLVED);
        double up = W * Math.cos(b) - tension * u.z();
        assertEquals(up, s.pivot().up(), SOLVED);
        assertEquals(W * Math.sin(b), s.pivot().side(), SOLVED);
        assertEquals(up / 2 + W * Math.sin(b) * c.z() / 10, s.pivot().lowerShoe(), SOLVED);
        assertEquals(up / 2 - W * Math.sin(b) * c.z() / 10, s.pivot().upperShoe(), SOLVED);
        assertEquals(0, s.sideLine());
    }

    /** Hand statics: shoes that slide round leave the turning about the upright to unequal lines. */
    @Test
    void unequalLinesTakeTheTurningThatFrictionDoesNot() {
        double b = Math.toRadians(2);
        TippingBody body = body(new Pivot.Shoes(4.5, 5, 1), 0, 2, 0.05);
        CrossState s = at(body, rig(ReferenceBody.HEAD, 4.5), 60);
        assertEquals(Held.LINES, s.held());
        PlanePoint c = body.centreOfMass(Math.PI / 3);
        PlanePoint u = body.point(ReferenceBody.LUG, 0, Math.PI / 3).directionTo(ReferenceBody.HEAD);
        assertEquals(W * Math.sin(b) * c.x() / (4.5 * -u.x()), s.upper() - s.lower(), SOLVED);
        assertTrue(s.upper() > s.lower(), "pulled back on the upper side the far end turns up the slope");
    }

    /** Hand statics on a point: what the lines' plane cannot turn, a side line does, by levers about the lines' way. */
    @Test
    void aRimNeedsASideLineByTheLeversAboutTheLines() {
        double b = Math.toRadians(2);
        TippingBody body = body(new Pivot.Rim(), 0, 2, 0.5);
        CrossState s = at(body, rig(ReferenceBody.HEAD, 4.5), 60);
        PlanePoint c = body.centreOfMass(Math.PI / 3);
        PlanePoint lug = body.point(ReferenceBody.LUG, 0, Math.PI / 3);
        PlanePoint u = lug.directionTo(ReferenceBody.HEAD);
        assertEquals(Held.SIDE_LINE, s.held());
        double side = W * Math.sin(b) * c.lever(u) / lug.lever(u);
        assertEquals(side, s.sideLine(), SOLVED);
        double left = W * Math.sin(b) * c.x() - side * lug.x();
        assertEquals(left / (4.5 * -u.x()), s.upper() - s.lower(), SOLVED);
        assertEquals(W * Math.sin(b) - side, s.pivot().side(), SOLVED);
        assertEquals(0, s.pivot().upperShoe(), SOLVED);
    }

    @Test
    void narrowShoesLiftAndOneCarriesAll() {
        TippingBody body = body(new Pivot.Shoes(4.5, 1, 1), 0, 8, 0.5);
        CrossState s = at(body, rig(ReferenceBody.HEAD, 8), 30);
        assertEquals(Held.SIDE_LINE, s.held());
        assertEquals(0, s.pivot().upperShoe(), SOLVED);
        assertEquals(s.pivot().up(), s.pivot().lowerShoe(), SOLVED);
        assertTrue(s.sideLine() > 0);
    }

    @Test
    void aSlopeToTheOtherSideIsTheMirrorImage() {
        for (Pivot pivot : List.of(new Pivot.Rim(), new Pivot.Shoes(4.5, 5, 1), new Pivot.Shoes(4.5, 1, 1))) {
            for (double friction : new double[] {0.05, 5}) {
                CrossState left = at(body(pivot, 2, 4, friction), rig(ReferenceBody.HEAD, 7), 50);
                CrossState right = at(body(pivot, 2, -4, friction), rig(ReferenceBody.HEAD, 7), 50);
                assertEquals(left.lower(), right.lower(), SOLVED);
                assertEquals(left.upper(), right.upper(), SOLVED);
                assertEquals(left.sideLine(), right.sideLine(), SOLVED);
                assertEquals(left.pivot().lowerShoe(), right.pivot().lowerShoe(), SOLVED);
                assertEquals(left.pivot().side(), right.pivot().side(), SOLVED);
                assertEquals(left.held(), right.held());
            }
        }
    }

    /** Forces and moments taken apart from the solver, about a point of no meaning, sum to nothing. */
    @Test
    void everyForceAndMomentSumsToNothing() {
        Vec3 about = new Vec3(3, -7, 11);
        for (double acrossDeg : new double[] {-6, -1, 2, 7}) {
            for (double tiltDeg : new double[] {20, 45, 80}) {
                TippingBody body = body(new Pivot.Rim(), -2, acrossDeg, 0.3);
                CrossState s = at(body, rig(ReferenceBody.HEAD, 8), tiltDeg);
                double tilt = Math.toRadians(tiltDeg);
                PlanePoint c = body.centreOfMass(tilt);
                PlanePoint lug = body.point(ReferenceBody.LUG, 0, tilt);
                double down = Math.signum(acrossDeg);
                Vec3 pivot = new Vec3(s.pivot().along(), -down * s.pivot().side(), s.pivot().up());
                Vec3 weight = body.ground().fall().times(W);
                Vec3 side = new Vec3(0, -down * s.sideLine(), 0);
                Vec3 lower = pull(lug, down, s.lower());
                Vec3 upper = pull(lug, -down, s.upper());
                assertEquals(0, pivot.plus(weight).plus(side).plus(lower).plus(upper).norm(), SOLVED);
                Vec3 moment = Vec3.ZERO.minus(about).cross(pivot)
                        .plus(new Vec3(c.x(), 0, c.z()).minus(about).cross(weight))
                        .plus(new Vec3(lug.x(), 0, lug.z()).minus(about).cross(side))
                        .plus(new Vec3(lug.x(), 4.5 * down, lug.z()).minus(about).cross(lower))
                        .plus(new Vec3(lug.x(), -4.5 * down, lug.z()).minus(about).cross(upper));
                assertEquals(0, moment.norm(), 50 * SOLVED);
            }
        }
    }

    private static Vec3 pull(PlanePoint lug, double side, double tension) {
        return new Vec3(ReferenceBody.HEAD.x() - lug.x(), side * (8 - 4.5), ReferenceBody.HEAD.z() - lug.z())
                .direction().times(tension);
    }

    /** A pendulum: lying on its rim under plumb lines of great length, the lug hangs plumb under the heads. */
    @Test
    void aLyingHullUnderPlumbLinesSwaysUntilTheyHangPlumb() {
        double length = 400;
        for (double acrossDeg : new double[] {0.25, 0.5, -0.5}) {
            TippingBody body = body(new Pivot.Rim(), 0, acrossDeg, 0.5);
            PlanePoint head = new PlanePoint(ReferenceBody.LUG, length + ReferenceBody.RADIUS);
            CrossState.Sway sway = at(body, rig(head, 4.5), 90).sway().orElseThrow();
            assertTrue(sway.finds());
            double aside = length * Math.tan(Math.toRadians(Math.abs(acrossDeg)));
            assertEquals(aside / ReferenceBody.LUG, sway.angle(), PENDULUM * sway.angle());
        }
    }

    @Test
    void aHullOnLevelGroundStaysInItsPlaneAndLeansMoreOnSteeperGround() {
        Rig rig = rig(ReferenceBody.HEAD, 8);
        assertEquals(0, at(body(new Pivot.Rim(), 0, 0, 0.5), rig, 60).sway().orElseThrow().angle(), 1e-9);
        double before = 0;
        for (double acrossDeg : new double[] {0.5, 1, 2}) {
            CrossState.Sway sway = at(body(new Pivot.Rim(), 0, acrossDeg, 0.5), rig, 60).sway().orElseThrow();
            assertTrue(sway.finds());
            assertTrue(sway.angle() > before && sway.farEnd() > 0);
            before = sway.angle();
        }
        assertFalse(at(body(new Pivot.Rim(), 0, 12, 0.5), rig, 15).sway().orElseThrow().finds());
    }

    @Test
    void withoutCrossSlopeItIsTheBalanceInThePlane() {
        TippingBody body = body(new Pivot.Shoes(4.5, 3, 1), 3, 0, 0.5);
        Rig rig = rig(ReferenceBody.HEAD, 8);
        LoweringCase what = new LoweringCase(body, rig, SOIL, Math.toRadians(0.5));
        LoweringResult result = Lowering.of(what).result().orElseThrow();
        CrossSlope cross = CrossSlope.of(what, result).orElseThrow();
        for (CrossState s : cross.states()) {
            TiltState plane = new Statics(body, rig).at(s.tilt()).orElseThrow();
            assertEquals(s.lowering() ? plane.lineEach() : plane.pullOver(), s.lower(), SOLVED);
            assertEquals(plane.pivotUp(), s.pivot().up(), SOLVED);
            assertEquals(plane.pivotAlong(), s.pivot().along(), SOLVED);
            assertEquals(plane.head().thrust(), s.pole(), SOLVED);
            assertEquals(plane.holdNeeded(), s.pivot().holdNeeded(), SOLVED);
            assertEquals(s.pivot().lowerShoe(), s.pivot().upperShoe(), SOLVED);
        }
        assertEquals(0, cross.sideForce());
        assertEquals(0, cross.mostSideLine().sideLine());
        assertTrue(cross.mostSway().isEmpty());
    }
}
