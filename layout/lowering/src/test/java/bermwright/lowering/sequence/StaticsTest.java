// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Vec3;
import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reference body worked by hand, each figure to the digits worked. */
class StaticsTest {
    /** The figures were worked to a thousandth of a newton. */
    private static final double MILLI = 6e-4;
    private static final double SIXTH_DECIMAL = 6e-7;
    private static final double CUT_AT_SIXTH_DECIMAL = 1e-6;

    private static Statics statics(TippingBody body, Rig rig) {
        return new Statics(body, rig);
    }

    @ParameterizedTest
    @CsvSource({"15, 16.6992", "18, 14.0362", "20, 12.680383", "22, 11.5601", "25, 10.2040"})
    void balanceComesLaterTheLowerTheCentreOfMass(double centre, double deg) {
        assertEquals(deg, Math.toDegrees(ReferenceBody.onRim(centre).balanceTilt()), 6e-5);
    }

    @Test
    void standingAndLyingMomentsAndTheRiseToBalance() {
        TippingBody body = ReferenceBody.onRim();
        assertEquals(-874_800, body.tippingMoment(0), 1e-6);
        assertEquals(3_888_000, body.tippingMoment(Math.PI / 2), 1e-6);
        assertEquals(0.5, -body.fall(0, body.balanceTilt()), 1e-12);
        assertEquals(97_200, -body.weight() * body.fall(0, body.balanceTilt()), 1e-7);
        assertEquals(7.843e7, body.inertiaAboutPivot(), 1e-3);
    }

    @ParameterizedTest
    @CsvSource({"0, -4.5, 44, 33.812131, 25872.3711, -21372.9545, 208980.0000",
        "4, -1.419753, 44.206722, 35.050189, 17159.8463, -13927.4710, 204424.2644",
        "8, 1.667410, 44.198074, 36.234960, 8974.2471, -7152.9054, 199819.6915",
        "12, 4.746450, 43.974097, 37.363075, 1266.5678, -991.0215, 195188.7145"})
    void pullOver(double deg, double x, double z, double arm, double tension, double along, double up) {
        double tilt = Math.toRadians(deg);
        TippingBody body = ReferenceBody.onRim();
        PlanePoint lug = body.point(ReferenceBody.LUG, 0, tilt);
        assertEquals(x, lug.x(), SIXTH_DECIMAL);
        assertEquals(z, lug.z(), SIXTH_DECIMAL);
        TiltState state = statics(body, ReferenceBody.plainRig(ReferenceBody.HEAD, 0)).at(tilt).orElseThrow();
        assertEquals(arm, state.lever(), SIXTH_DECIMAL);
        assertEquals(tension, state.pullOver(), 6e-5);
        assertEquals(along, state.pivotAlong(), 6e-5);
        assertEquals(up, state.pivotUp(), 6e-5);
    }

    @ParameterizedTest
    @CsvSource({"15, 25.089502, 32.784911, 4919.841, 4126.036, 197079.675, 0.020936",
        "20, 27.965757, 33.076380, 15350.266, 13623.723, 201472.823, 0.067621",
        "30, 33.731643, 32.849222, 36116.563, 34372.648, 205487.253, 0.167274",
        "45, 42.150081, 31.270332, 68136.602, 67781.995, 201342.450, 0.336650",
        "60, 50.023659, 28.750659, 101900.510, 101557.184, 186042.232, 0.545882",
        "75, 57.145229, 25.555369, 138096.413, 133724.376, 159926.673, 0.836161",
        "90, 63.358109, 21.828303, 178117.374, 163054.230, 122712.364, 1.328751"})
    void lowering(double deg, double length, double arm, double tension, double along, double up, double mu) {
        TiltState state = statics(ReferenceBody.onRim(), ReferenceBody.plainRig(ReferenceBody.HEAD, 0))
                .at(Math.toRadians(deg)).orElseThrow();
        assertEquals(length, state.lineLength(), SIXTH_DECIMAL);
        assertEquals(arm, state.lever(), SIXTH_DECIMAL);
        assertEquals(tension, state.lineTotal(), MILLI);
        assertEquals(along, state.pivotAlong(), MILLI);
        assertEquals(up, state.pivotUp(), MILLI);
        assertEquals(mu, Math.abs(state.pivotAlong()) / state.pivotUp(), SIXTH_DECIMAL);
    }

    @Test
    void closedFormsLying() {
        TiltState state = statics(ReferenceBody.onRim(), ReferenceBody.plainRig(ReferenceBody.HEAD, 0))
                .at(Math.PI / 2).orElseThrow();
        assertEquals(3.888e6 * 58 / 1383, state.pivotAlong(), 1e-6);
        assertEquals(194_400 - 3.888e6 * 25.5 / 1383, state.pivotUp(), 1e-6);
    }

    /** What the anchor at the pivot must take lying, one and a half times the pull along less friction. */
    @ParameterizedTest
    @CsvSource({"0.3, 207767.64", "0.5, 183225.16"})
    void theHoldThatIsNeededLying(double friction, double hold) {
        TippingBody body = new TippingBody(ReferenceBody.body(20, 0), new Pivot.Rim(),
                new Ground(ReferenceBody.GRAVITY, 0, 0, friction));
        assertEquals(hold, statics(body, ReferenceBody.plainRig(ReferenceBody.HEAD, 0)).at(Math.PI / 2).orElseThrow()
                .holdNeeded(), 0.005);
    }

    @ParameterizedTest
    @CsvSource({"20, 30, 39.529560", "10, 30, 24.274441", "0, 30, 5.839492"})
    void aHeadAheadOrOverHoldsOnlyFromATilt(double x, double z, double deg) {
        Statics statics = statics(ReferenceBody.onRim(), ReferenceBody.plainRig(new PlanePoint(x, z), 0));
        assertEquals(0, statics.holdingLever(Math.toRadians(deg)), 1e-6);
        assertTrue(statics.holdingLever(Math.toRadians(deg + 0.1)) > 0);
        assertTrue(statics.holdingLever(Math.toRadians(deg - 0.1)) < 0);
    }

    @Test
    void aHeadAheadLyingAndAtForty() {
        Statics ahead = statics(ReferenceBody.onRim(), ReferenceBody.plainRig(new PlanePoint(20, 30), 0));
        assertEquals(110_690.578, ahead.at(Math.PI / 2).orElseThrow().lineTotal(), MILLI);
        assertEquals(35.124941, ahead.holdingLever(Math.PI / 2), SIXTH_DECIMAL);
        TiltState forty = ahead.at(Math.toRadians(40)).orElseThrow();
        assertEquals(1.600578, forty.lever(), SIXTH_DECIMAL);
        assertEquals(1_142_726.3, forty.lineTotal(), 0.06);
        assertTrue(ahead.at(Math.toRadians(30)).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"30, 0.221582", "60, 0.963028", "90, 7.710912"})
    void aGroundAnchorWithoutPolesAsksForManyTimesTheWeight(double deg, double share) {
        TiltState state = statics(ReferenceBody.onRim(), ReferenceBody.groundRig(60, 0))
                .at(Math.toRadians(deg)).orElseThrow();
        assertEquals(share, state.lineTotal() / ReferenceBody.WEIGHT, CUT_AT_SIXTH_DECIMAL);
    }

    @Test
    void aGroundAnchorToTheLayDownSideHasNoLeverAtAll() {
        Statics statics = statics(ReferenceBody.onRim(), ReferenceBody.groundRig(60, ReferenceBody.RADIUS));
        assertEquals(0, statics.holdingLever(Math.PI / 2), 1e-12);
    }

    /** Off-axis is positive to the lay-down side: the lug on top of the lying hull stands at minus the radius. */
    @ParameterizedTest
    @CsvSource({"4.5, 20.214608, 192336.152", "0, 21.828303, 178117.374", "-4.5, 23.441800, 165857.568"})
    void theHigherTheLugTheLessTension(double offAxis, double arm, double tension) {
        TiltState state = statics(ReferenceBody.onRim(), ReferenceBody.plainRig(ReferenceBody.HEAD, offAxis))
                .at(Math.PI / 2).orElseThrow();
        assertEquals(arm, state.lever(), SIXTH_DECIMAL);
        assertEquals(tension, state.lineTotal(), MILLI);
    }

    @Test
    void aGroundAnchorToTheTopLug() {
        TiltState state = statics(ReferenceBody.onRim(), ReferenceBody.groundRig(60, -ReferenceBody.RADIUS))
                .at(Math.PI / 2).orElseThrow();
        assertEquals(5.172974, state.lever(), SIXTH_DECIMAL);
        assertEquals(751_598.616, state.lineTotal(), MILLI);
    }

    @Test
    void poleAndStayWithTheWinchAtTheFoot() {
        TiltState state = statics(ReferenceBody.onRim(), ReferenceBody.fullRig(-14)).at(Math.PI / 2).orElseThrow();
        double lateral = Math.toRadians(3.161894);
        double share = 1 / Math.cos(lateral);
        assertEquals(63.454708, state.lineLength(), SIXTH_DECIMAL);
        assertEquals(89_194.4706, state.lineEach(), 6e-5);
        assertEquals(4_919.7397, -state.head().lateral(), 6e-5);
        assertEquals(238_970.9345, 2 * state.head().stay(), 1e-3);
        assertEquals(163_054.2299, 2 * state.head().stay() * Math.cos(Math.toRadians(46.974934)), 2e-2);
        assertEquals(174_700.9606, 2 * state.head().stay() * Math.sin(Math.toRadians(46.974934)), 2e-2);
        double winchLine = 2 * state.head().winchLine();
        assertEquals(178_117.374 * share, winchLine, 1e-2);
        // Worked for lines in the plane: the lateral spread adds only to the fall line.
        assertEquals(424_505.9704, 2 * state.poleEach() - (winchLine - 178_117.374), 1e-2);
    }

    @Test
    void theWinchBehindCarriesMostOfThePullItself() {
        Rig inPlane = ReferenceBody.plainRig(ReferenceBody.HEAD, 0);
        Rig full = ReferenceBody.fullRig(-56);
        var lines = inPlane.lines();
        Rig rig = new Rig(new bermwright.lowering.rig.LoweringLines(1, lines.lug(), lines.line(),
                ReferenceBody.winchAt(-56), 0, 1, lines.ends(), lines.slack()), inPlane.poles(),
                full.stays().stream().map(s -> new bermwright.lowering.rig.Stay(s.anchorAt(), 0, s.breakingLoad(),
                        s.anchor())).toList(), full.pullOver(), full.pivotHold(),
                full.factors());
        TiltState state = statics(ReferenceBody.onRim(), rig).at(Math.PI / 2).orElseThrow();
        assertEquals(26_547.9646, state.head().stay(), 1e-3);
        assertEquals(194_624.2858, state.poleEach(), 1e-3);
        double down = Math.toRadians(35.537678);
        assertEquals(144_940.0692, state.head().winchLine() * Math.cos(down), 2e-2);
        assertEquals(103_528.6209, state.head().winchLine() * Math.sin(down), 2e-2);
    }

    @Test
    void twoLinesInSpaceBalanceTheWeightAboutThePivot() {
        TiltState state = statics(ReferenceBody.onRim(), ReferenceBody.fullRig(-14)).at(Math.PI / 2).orElseThrow();
        Vec3 moment = new Vec3(20, 0, 4.5).cross(new Vec3(0, 0, -ReferenceBody.WEIGHT));
        for (int side = -1; side <= 1; side += 2) {
            Vec3 lug = new Vec3(44, side * 4.5, 4.5);
            Vec3 head = new Vec3(-14, side * 8, 30);
            moment = moment.plus(lug.cross(head.minus(lug).direction().times(state.lineEach())));
        }
        assertEquals(0, moment.norm(), 1e-5);
    }

    @Test
    void theWorkOfTheLinesIsTheFallOfTheCentreOfMass() {
        TippingBody body = ReferenceBody.onRim();
        Statics statics = statics(body, ReferenceBody.plainRig(ReferenceBody.HEAD, 0));
        int steps = 20_000;
        double from = body.balanceTilt();
        double work = 0;
        double length = statics.at(from).orElseThrow().lineLength();
        double tension = 0;
        assertEquals(23.767292, length, SIXTH_DECIMAL);
        for (int i = 1; i <= steps; i++) {
            TiltState next = statics.at(from + (Math.PI / 2 - from) * i / steps).orElseThrow();
            work += (next.lineTotal() + tension) / 2 * (next.lineLength() - length);
            length = next.lineLength();
            tension = next.lineTotal();
        }
        assertEquals(63.358109, length, SIXTH_DECIMAL);
        assertEquals(3_110_400, work, 1e-2);
        assertEquals(3_110_400, body.weight() * body.fall(from, Math.PI / 2), 1e-6);
    }

    @Test
    void aPlumbLineTakesItsShareByLevers() {
        Statics statics = statics(ReferenceBody.onRim(),
                ReferenceBody.plainRig(new PlanePoint(ReferenceBody.LUG, 1e7), 0));
        TiltState state = statics.at(Math.PI / 2).orElseThrow();
        assertEquals(88_363.636, state.lineTotal(), MILLI);
        assertEquals(106_036.364, state.pivotUp(), MILLI);
        assertEquals(0, state.pivotAlong(), 1e-9);
    }

    @Test
    void aFarLugLeavesTheHeadsHeightAsLever() {
        Statics statics = new Statics(ReferenceBody.onRim(), ReferenceBody.plainRig(ReferenceBody.HEAD, 0));
        double far = 1e9;
        PlanePoint lug = new PlanePoint(far, 4.5);
        double lever = lug.lever(lug.directionTo(ReferenceBody.HEAD));
        assertEquals(129_600, ReferenceBody.onRim().tippingMoment(Math.PI / 2) / lever, 1e-2);
        assertTrue(statics.holdingLever(Math.PI / 2) < lever);
    }

    @Test
    void tensionIsNothingAtBalanceFromBothSides() {
        TippingBody body = ReferenceBody.onRim();
        Statics statics = statics(body, ReferenceBody.plainRig(ReferenceBody.HEAD, 0));
        assertEquals(0, statics.at(body.balanceTilt()).orElseThrow().lineTotal(), 1e-6);
        assertEquals(0, statics.at(body.balanceTilt() - 1e-12).orElseThrow().pullOver(), 1e-6);
    }

    @Test
    void balanceWithoutOffsetIsStanding() {
        TippingBody body = new TippingBody(ReferenceBody.body(20, ReferenceBody.RADIUS - 1e-15),
                new bermwright.lowering.body.Pivot.Rim(), new bermwright.lowering.body.Ground(1.62, 0, 0, 0.5));
        assertEquals(0, body.balanceTilt(), 1e-12);
    }
}
