// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Vec3;
import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.EndShape;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.SweptProfile;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.DesignFactors;
import bermwright.lowering.rig.Ends;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.statics.LineGeometry;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of the balance, for random bodies, slopes and rigs; the seed is the test's argument. */
class StaticsLawTest {
    /** Rounding of some hundred operations on forces of up to a meganewton. */
    private static final double ROUNDING = 1e-9;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private record Drawn(TippingBody tipping, Rig rig) {
    }

    private static Drawn draw(long seed) {
        Random random = new Random(seed);
        double length = 20 + 40 * random.nextDouble();
        double radius = 1.5 + 4 * random.nextDouble();
        Body body = Body.uniform(new Outline(length, radius, EndShape.FLAT, EndShape.FLAT),
                20_000 + 150_000 * random.nextDouble(),
                new MassCentre(length * (0.3 + 0.3 * random.nextDouble()), 0.2 * random.nextGaussian(), 0));
        Pivot pivot = random.nextBoolean() ? new Pivot.Rim()
                : new Pivot.Shoes(radius * (1 + 0.4 * random.nextDouble()), radius, 1);
        Ground ground = new Ground(1 + 3 * random.nextDouble(), 0.04 * random.nextGaussian(), 0,
                0.3 + 0.4 * random.nextDouble());
        double lug = length * (0.65 + 0.3 * random.nextDouble());
        PlanePoint foot = new PlanePoint(-2.2 * radius - 15 * random.nextDouble(), random.nextGaussian());
        PlanePoint head = new PlanePoint(foot.x(), foot.z() + length * (0.4 + 0.5 * random.nextDouble()));
        LoweringLines lines = new LoweringLines(2, new Lug(lug, 0.3 * radius * random.nextGaussian(), radius),
                ReferenceBody.line(9e5, 5, 8e7, 0.036), new Winch(new PlanePoint(foot.x() - 25 * random.nextDouble(),
                        0),
                OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()), 0, 1, Ends.USUAL,
                LoweringLines.USUAL_SLACK);
        Poles poles = new Poles(foot, head, radius * (1 + random.nextDouble()), Optional.empty(),
                OptionalDouble.empty());
        Stay stay = new Stay(new PlanePoint(foot.x() - 20 - 20 * random.nextDouble(), 0), radius,
                OptionalDouble.empty(), Optional.empty());
        PullOver over = new PullOver(new Lug(lug, 0, 0), new PlanePoint(length + 20 * random.nextDouble(), 0),
                OptionalDouble.empty(), Optional.empty());
        return new Drawn(new TippingBody(body, pivot, ground), new Rig(lines, Optional.of(poles), List.of(stay),
                Optional.of(over), Optional.empty(), DesignFactors.COMMON_PRACTICE));
    }

    /** Forces in space about the centre of mass, not the pivot, from the figures handed out alone. */
    @ParameterizedTest
    @MethodSource("seeds")
    void forcesAndMomentsSumToNothingAtEveryTilt(long seed) {
        Drawn drawn = draw(seed);
        TippingBody tipping = drawn.tipping;
        Statics statics = new Statics(tipping, drawn.rig);
        double slope = tipping.ground().slopeAlong();
        double weight = tipping.weight();
        for (int deg = 0; deg <= 90; deg += 3) {
            double tilt = Math.toRadians(deg);
            Optional<TiltState> found = statics.at(tilt);
            if (found.isEmpty()) {
                continue;
            }
            TiltState s = found.get();
            PlanePoint c = tipping.centreOfMass(tilt);
            Vec3 centre = new Vec3(c.x(), 0, c.z());
            Vec3 pivot = new Vec3(s.pivotAlong(), 0, s.pivotUp());
            Vec3 force = pivot.plus(new Vec3(weight * Math.sin(slope), 0, -weight * Math.cos(slope)));
            Vec3 moment = Vec3.ZERO.minus(centre).cross(pivot);
            for (int side = -1; side <= 1; side += 2) {
                Vec3 lug = space(tipping, drawn.rig.lines().lug(), tilt, side * drawn.rig.lines().lug().halfSpread());
                Poles poles = drawn.rig.poles().orElseThrow();
                Vec3 head = new Vec3(poles.head().x(), side * poles.halfSpread(), poles.head().z());
                Vec3 pull = head.minus(lug).direction().times(s.lineEach());
                force = force.plus(pull);
                moment = moment.plus(lug.minus(centre).cross(pull));
            }
            PullOver over = drawn.rig.pullOver().orElseThrow();
            Vec3 lug = space(tipping, over.lug(), tilt, 0);
            Vec3 pull = new Vec3(over.anchorAt().x(), 0, over.anchorAt().z()).minus(lug).direction()
                    .times(s.pullOver());
            force = force.plus(pull);
            moment = moment.plus(lug.minus(centre).cross(pull));
            assertEquals(0, force.norm(), ROUNDING * weight, () -> "force, seed " + seed);
            assertEquals(0, moment.norm(), ROUNDING * weight * 50, () -> "moment, seed " + seed);
        }
    }

    private static Vec3 space(TippingBody tipping, Lug lug, double tilt, double left) {
        PlanePoint p = tipping.point(lug.along(), lug.offAxis(), tilt);
        return new Vec3(p.x(), left, p.z());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void forcesGrowWithGravityAndMassAlike(long seed) {
        Drawn drawn = draw(seed);
        Ground g = drawn.tipping.ground();
        TippingBody heavy = new TippingBody(drawn.tipping.body(), drawn.tipping.pivot(),
                new Ground(g.gravity() * 6, g.slopeAlong(), g.slopeAcross(), g.friction()));
        TippingBody massive = drawn.tipping.with(drawn.tipping.body().withMass(6 * drawn.tipping.body().mass()));
        for (int deg = 0; deg <= 90; deg += 10) {
            double tilt = Math.toRadians(deg);
            Optional<TiltState> a = new Statics(drawn.tipping, drawn.rig).at(tilt);
            for (TippingBody other : List.of(heavy, massive)) {
                Optional<TiltState> b = new Statics(other, drawn.rig).at(tilt);
                assertEquals(a.isPresent(), b.isPresent());
                if (a.isPresent()) {
                    double scale = drawn.tipping.weight();
                    assertEquals(6 * a.get().lineEach(), b.get().lineEach(), ROUNDING * scale);
                    assertEquals(6 * a.get().pivotAlong(), b.get().pivotAlong(), ROUNDING * scale);
                    assertEquals(6 * a.get().poleEach(), b.get().poleEach(), ROUNDING * scale);
                    assertEquals(a.get().lever(), b.get().lever(), ROUNDING);
                }
            }
        }
    }

    /** At a tilt tension falls as the head rises until the line is square to pivot and lug, and rises beyond. */
    @ParameterizedTest
    @MethodSource("seeds")
    void tensionFallsWithTheHeadUntilTheLineIsSquareToPivotAndLug(long seed) {
        Drawn drawn = draw(seed);
        Poles poles = drawn.rig.poles().orElseThrow();
        double tilt = Math.toRadians(75);
        PlanePoint lug = drawn.tipping.point(drawn.rig.lines().lug().along(), drawn.rig.lines().lug().offAxis(), tilt);
        // Square: (head - lug) . lug = 0, solved for the head's height at the pole's place.
        double square = lug.z() + lug.x() * (lug.x() - poles.head().x()) / lug.z();
        double before = Double.POSITIVE_INFINITY;
        for (double share = 0.1; share <= 0.99; share += 0.1) {
            double now = tension(drawn, poles, tilt, share * square);
            if (now > 0) {
                assertTrue(now < before, "seed " + seed + " at " + share);
                before = now;
            }
        }
        double least = tension(drawn, poles, tilt, square);
        assertTrue(least <= tension(drawn, poles, tilt, square * 0.97) && least < tension(drawn, poles, tilt,
                square * 1.2), "seed " + seed);
        assertEquals(drawn.tipping.tippingMoment(tilt) / lug.norm(), least, ROUNDING * drawn.tipping.weight());
    }

    private static double tension(Drawn drawn, Poles poles, double tilt, double height) {
        Poles moved = new Poles(new PlanePoint(poles.foot().x(), height - 10),
                new PlanePoint(poles.head().x(), height), poles.halfSpread(), Optional.empty(),
                OptionalDouble.empty());
        return new Statics(drawn.tipping, withPoles(drawn.rig, moved)).at(tilt).map(TiltState::lineTotal).orElse(-1.0);
    }

    /** Rope paid out per radian is the lever. */
    @ParameterizedTest
    @MethodSource("seeds")
    void lineIsPaidOutAsTheLeverSays(long seed) {
        Drawn drawn = draw(seed);
        Poles inPlane = new Poles(drawn.rig.poles().orElseThrow().foot(), drawn.rig.poles().orElseThrow().head(),
                drawn.rig.lines().lug().halfSpread(), Optional.empty(), OptionalDouble.empty());
        Rig rig = withPoles(drawn.rig, inPlane);
        double step = 1e-5;
        for (int deg = 20; deg < 90; deg += 10) {
            double tilt = Math.toRadians(deg);
            double more = LineGeometry.at(drawn.tipping, rig, tilt + step).length();
            double less = LineGeometry.at(drawn.tipping, rig, tilt - step).length();
            assertEquals(LineGeometry.at(drawn.tipping, rig, tilt).lever(), (more - less) / (2 * step), 1e-6,
                    () -> "seed " + seed);
        }
    }

    /** A sheave with friction takes the same or less over the head while lowering, never more. */
    @ParameterizedTest
    @MethodSource("seeds")
    void frictionNeverInventsEnergy(long seed) {
        Drawn drawn = draw(seed);
        double balance = Math.max(0, drawn.tipping.balanceTilt());
        Statics statics = new Statics(drawn.tipping, drawn.rig);
        double rest = drawn.tipping.restTilt();
        double atWinch = 0;
        double efficiency = 0.9;
        int steps = 2000;
        for (int i = 0; i < steps; i++) {
            double tilt = balance + (rest - balance) * (i + 0.5) / steps;
            Optional<TiltState> s = statics.at(tilt);
            if (s.isEmpty()) {
                return;
            }
            atWinch += efficiency * s.get().lineTotal() * s.get().lever() * (rest - balance) / steps;
        }
        double fallen = drawn.tipping.weight() * drawn.tipping.fall(balance, rest);
        assertTrue(atWinch <= fallen, "seed " + seed);
        assertEquals(efficiency * fallen, atWinch, 1e-5 * fallen);
    }

    /** The pole's head is in balance: two lines, the stay and the pole's thrust. */
    @ParameterizedTest
    @MethodSource("seeds")
    void thePoleHeadIsInBalance(long seed) {
        Drawn drawn = draw(seed);
        Poles poles = drawn.rig.poles().orElseThrow();
        Statics statics = new Statics(drawn.tipping, drawn.rig);
        for (int deg = 30; deg <= 90; deg += 15) {
            Optional<TiltState> found = statics.at(Math.toRadians(deg));
            if (found.isEmpty()) {
                continue;
            }
            TiltState s = found.get();
            PlanePoint lug = drawn.tipping.point(drawn.rig.lines().lug().along(), drawn.rig.lines().lug().offAxis(),
                    s.tilt());
            Vec3 head = new Vec3(poles.head().x(), poles.halfSpread(), poles.head().z());
            Vec3 line = new Vec3(lug.x(), drawn.rig.lines().lug().halfSpread(), lug.z()).minus(head).direction()
                    .times(s.lineEach());
            PlanePoint winch = poles.head().directionTo(drawn.rig.lines().winch().at());
            PlanePoint anchor = drawn.rig.stays().get(0).anchorAt();
            Vec3 stay = new Vec3(anchor.x(), drawn.rig.stays().get(0).halfSpread(), anchor.z()).minus(head).direction();
            PlanePoint up = poles.foot().directionTo(poles.head());
            double x = line.x() + s.lineEach() * winch.x() + s.head().stay() * stay.x() + s.poleEach() * up.x();
            double z = line.z() + s.lineEach() * winch.z() + s.head().stay() * stay.z() + s.poleEach() * up.z();
            assertEquals(Math.abs(s.head().leftOver()), Math.hypot(x, z), ROUNDING * drawn.tipping.weight(),
                    () -> "seed " + seed);
            assertTrue(s.head().stay() == 0 || s.head().leftOver() == 0);
            assertEquals(line.y() + s.head().stay() * stay.y(), s.head().lateral(), ROUNDING * drawn.tipping.weight());
        }
    }

    /** What the hull passes over holds every corner at every tilt, and nothing is passed behind its back. */
    @ParameterizedTest
    @MethodSource("seeds")
    void everyCornerStaysInsideTheSweptProfile(long seed) {
        Drawn drawn = draw(seed);
        TippingBody tipping = drawn.tipping;
        SweptProfile sweep = SweptProfile.of(tipping);
        for (int deg = 0; deg <= 90; deg++) {
            for (double[] corner : tipping.body().outline().section()) {
                PlanePoint p = tipping.point(corner[0], corner[1], Math.toRadians(deg));
                if (p.z() > 0.2) {
                    PlanePoint inwards = new PlanePoint(p.x() * 0.999, p.z() * 0.999);
                    assertTrue(sweep.covers(inwards), () -> "seed " + seed + " " + p);
                }
            }
        }
    }

    private static Rig withPoles(Rig rig, Poles changed) {
        return new Rig(rig.lines(), Optional.of(changed), rig.stays(), rig.pullOver(), rig.pivotHold(),
                rig.factors());
    }
}
