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
import bermwright.lowering.rig.Ends;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Regolith;
import bermwright.regolith.Soils;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CrossSlopeTest {
    private static final Regolith SOIL = LunarProfile.with(Soils.strength(42, 500));
    /** Six equations solved together lose a few digits. */
    private static final double SOLVED = 1e-9 * ReferenceBody.WEIGHT;
    /** The hull also rolls a little and its base shifts along the ground; a twentieth of the swing. */
    private static final double PENDULUM = 0.05;
    private static final PlanePoint WINCH = new PlanePoint(-60, 0);
    private static final double W = ReferenceBody.WEIGHT;

    private static TippingBody body(Pivot pivot, double alongDeg, double acrossDeg, double friction) {
        return new TippingBody(ReferenceBody.body(20, 0), pivot, new Ground(ReferenceBody.GRAVITY,
                Math.toRadians(alongDeg), Math.toRadians(acrossDeg), friction));
    }

    private static Rig rig(PlanePoint head, double heads) {
        Rig full = ReferenceBody.fullRig(-14);
        Winch winch = new Winch(new PlanePoint(head.x(), -1), OptionalDouble.of(250_000), OptionalDouble.of(5e6),
                Optional.empty());
        return new Rig(new LoweringLines(2, new Lug(ReferenceBody.LUG, 0, 4.5), ReferenceBody.rope(), winch, 0, 1,
                Ends.USUAL, LoweringLines.USUAL_SLACK),
                Optional.of(new Poles(new PlanePoint(head.x(), -1), head, heads, Optional.empty(),
                        OptionalDouble.empty())), full.stays(), full.pullOver(), full.pivotHold(), full.factors());
    }

    /** Winches on the ground far behind, no poles: nothing of the gear leans with the slope. */
    private static Rig winches() {
        Rig poles = rig(WINCH, 4.5);
        LoweringLines lines = poles.lines();
        return new Rig(new LoweringLines(2, lines.lug(), lines.line(), new Winch(WINCH, OptionalDouble.empty(),
                OptionalDouble.empty(), Optional.empty()), 0, 1, lines.ends(), lines.slack()), Optional.empty(),
                List.of(),
                poles.pullOver(),
                Optional.empty(), poles.factors());
    }

    private static CrossState at(TippingBody body, Rig rig, double tiltDeg) {
        LoweringCase setup = new LoweringCase(body, rig, SOIL, Math.toRadians(0.5));
        TiltState s = new Statics(body, rig).at(Math.toRadians(tiltDeg)).orElseThrow();
        return new CrossBalance(setup).at(s).orElseThrow();
    }

    /** Hand statics: the weight's part across, at its height over the shoes, moves load from one to the other. */
    @Test
    void shoesShareTheLoadByTheHeightOfTheCentreOfMass() {
        double b = Math.toRadians(3);
        TippingBody body = body(new Pivot.Shoes(4.5, 5, 1), 0, 3, 5);
        CrossState s = at(body, winches(), 45);
        assertEquals(Held.PIVOT, s.held());
        PlanePoint c = body.centreOfMass(Math.PI / 4);
        PlanePoint lug = body.point(ReferenceBody.LUG, 0, Math.PI / 4);
        PlanePoint u = lug.directionTo(WINCH);
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
        CrossState s = at(body, winches(), 60);
        assertEquals(Held.LINES, s.held());
        PlanePoint c = body.centreOfMass(Math.PI / 3);
        PlanePoint u = body.point(ReferenceBody.LUG, 0, Math.PI / 3).directionTo(WINCH);
        assertEquals(W * Math.sin(b) * c.x() / (4.5 * -u.x()), s.upper() - s.lower(), SOLVED);
        assertTrue(s.upper() > s.lower(), "pulled back on the upper side the far end turns up the slope");
    }

    /** Hand statics on a point: what the lines' plane cannot turn, a side line does, by levers about the lines' way. */
    @Test
    void aRimNeedsASideLineByTheLeversAboutTheLines() {
        double b = Math.toRadians(2);
        TippingBody body = body(new Pivot.Rim(), 0, 2, 0.5);
        CrossState s = at(body, winches(), 60);
        PlanePoint c = body.centreOfMass(Math.PI / 3);
        PlanePoint lug = body.point(ReferenceBody.LUG, 0, Math.PI / 3);
        PlanePoint u = lug.directionTo(WINCH);
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
                double lean = -30 * Math.tan(Math.toRadians(acrossDeg)) * Math.cos(Math.toRadians(-2));
                Vec3 lower = pull(lug, down, lean, s.lower());
                Vec3 upper = pull(lug, -down, lean, s.upper());
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

    /** Heads 30 m up and plumb stand aside of their place square to the ground by what it falls across. */
    private static Vec3 pull(PlanePoint lug, double side, double lean, double tension) {
        return new Vec3(ReferenceBody.HEAD.x() - lug.x(), side * (8 - 4.5) + lean, ReferenceBody.HEAD.z() - lug.z())
                .direction().times(tension);
    }

    /** A pendulum: lying on its rim under plumb lines of great length, the lug comes to hang under the heads. */
    @Test
    void aLyingHullUnderPlumbLinesSwaysUntilTheyHangPlumb() {
        double length = 400;
        PlanePoint head = new PlanePoint(ReferenceBody.LUG, length + ReferenceBody.RADIUS);
        TippingBody level = body(new Pivot.Rim(), 0, 0, 0.5);
        Rig rig = rig(head, 4.5);
        TiltState lying = new Statics(level, rig).at(Math.PI / 2).orElseThrow();
        LineSet plain = LineSet.lowering(level, rig, Math.PI / 2);
        for (double left : new double[] {-1, 1.5, 3}) {
            CrossState.Sway sway = new FreeSway(new LoweringCase(level, rig, SOIL, Math.toRadians(0.5)), lying,
                    plain.seen(new Misalignment(left, 0))).at();
            assertTrue(sway.finds());
            assertEquals(Math.asin(Math.abs(left) / ReferenceBody.LUG), sway.angle(), PENDULUM * sway.angle());
        }
        CrossState.Sway plumb = at(body(new Pivot.Rim(), 0, 0.5, 0.5), rig, 90).sway().orElseThrow();
        assertTrue(plumb.finds());
        assertTrue(plumb.angle() * ReferenceBody.LUG < 2 * ReferenceBody.RADIUS * Math.tan(Math.toRadians(0.5)),
                "heads that stand plumb hold the hull in its plane");
    }

    /** Hand statics: a line set far aside pulls a hull on wide shoes with its part across, T d / l. */
    @Test
    void aHullLandedAsideIsPulledTowardsItsGear() {
        TippingBody body = body(new Pivot.Shoes(4.5, 5, 1), 0, 0, 5);
        Rig rig = winches();
        LoweringCase setup = new LoweringCase(body, rig, SOIL, Math.toRadians(0.5));
        List<CrossState> planned = CrossSlope.misaligned(setup, Misalignment.NONE);
        List<CrossState> beside = CrossSlope.misaligned(setup, new Misalignment(3, 0));
        assertEquals(planned.size(), beside.size());
        for (int i = 0; i < planned.size(); i++) {
            CrossState before = planned.get(i);
            CrossState now = beside.get(i);
            assertEquals(0, before.linesAcross(), SOLVED);
            if (now.lowering()) {
                PlanePoint lug = body.point(ReferenceBody.LUG, 0, now.tilt());
                double length = new Vec3(lug.x() - WINCH.x(), 3, lug.z()).norm();
                assertEquals((now.lower() + now.upper()) * 3 / length, now.linesAcross(), SOLVED);
                assertEquals(now.linesAcross(), Math.abs(now.pivot().side()), SOLVED);
                assertTrue(now.hardest() > before.hardest());
            }
        }
        List<CrossState> mirrored = CrossSlope.misaligned(setup, new Misalignment(-3, Math.toRadians(2)));
        List<CrossState> turned = CrossSlope.misaligned(setup, new Misalignment(3, Math.toRadians(-2)));
        for (int i = 0; i < turned.size(); i++) {
            assertEquals(mirrored.get(i).lower(), turned.get(i).upper(), SOLVED);
            assertEquals(mirrored.get(i).pivot().lowerShoe(), turned.get(i).pivot().upperShoe(), SOLVED);
        }
    }

    @Test
    void aHullOnLevelGroundStaysInItsPlaneAndLeansMoreOnSteeperGround() {
        Rig rig = rig(ReferenceBody.HEAD, 8);
        assertEquals(0, at(body(new Pivot.Rim(), 0, 0, 0.5), rig, 60).sway().orElseThrow().angle(), 1e-9);
        double before = 0;
        for (double acrossDeg : new double[] {0.5, 1, 2}) {
            CrossState.Sway sway = at(body(new Pivot.Rim(), 0, acrossDeg, 0.5), rig, 60).sway().orElseThrow();
            assertTrue(sway.finds(), "" + acrossDeg);
            assertTrue(sway.angle() > before && sway.farEnd() > 0, acrossDeg + " " + sway);
            before = sway.angle();
        }
        assertFalse(at(body(new Pivot.Rim(), 0, 12, 0.5), rig, 15).sway().orElseThrow().finds());
    }

    @Test
    void withoutCrossSlopeItIsTheBalanceInThePlane() {
        TippingBody body = body(new Pivot.Shoes(4.5, 3, 1), 3, 0, 0.5);
        Rig rig = rig(ReferenceBody.HEAD, 8);
        LoweringCase setup = new LoweringCase(body, rig, SOIL, Math.toRadians(0.5));
        LoweringResult result = Lowering.of(setup).result().orElseThrow();
        CrossSlope cross = CrossSlope.of(setup, result).orElseThrow();
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
