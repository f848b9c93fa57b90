// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.Vec3;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.review.CrossState.Held;
import bermwright.lowering.review.CrossState.PivotLoad;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import java.util.List;
import java.util.Optional;

/**
 * The balance of a hull on a cross slope in space: six equations, weight with its part across, lines at work, pivot.
 *
 * <p>Shoes and feet hold the hull against turning while friction lasts at each of them; then the lines pull alike.
 * Where one would slide, the two are taken to slide round until unequal lines hold it. A rim, and a shoe that would
 * lift, leave the turning to unequal lines and a side line at the lugs. Straight lines, a rigid hull that stays in its
 * plane, square to the ground; pole heads that stand plumb and so lean up the slope.
 */
final class CrossBalance {
    private static final Vec3 AHEAD = new Vec3(1, 0, 0);
    private static final Vec3 LEFT = new Vec3(0, 1, 0);
    private static final Wrench ALONG = new Wrench(AHEAD, Vec3.ZERO);
    private static final Wrench ACROSS = new Wrench(LEFT, Vec3.ZERO);
    private static final Wrench UP = new Wrench(Vec3.UP, Vec3.ZERO);
    private final LoweringCase setup;
    private final TippingBody tipping;
    private final Misalignment misalignment;
    private final double half;
    /** 1 where the ground falls to the left, -1 to the right. */
    private final int falls;

    CrossBalance(LoweringCase setup) {
        this(setup, Misalignment.NONE);
    }

    CrossBalance(LoweringCase setup, Misalignment misalignment) {
        this.setup = setup;
        this.misalignment = misalignment;
        this.tipping = setup.tipping();
        this.half = tipping.pivot().halfWidth();
        this.falls = tipping.ground().slopeAcross() < 0 ? -1 : 1;
    }

    /** The balance at a tilt; absent where no set of unknowns holds it. */
    Optional<CrossState> at(TiltState s) {
        boolean lowering = s.lineTotal() > 0;
        Optional<PullOver> over = setup.rig().pullOver();
        if (!lowering && over.isEmpty()) {
            return Optional.empty();
        }
        LineSet lines = (lowering ? LineSet.lowering(tipping, setup.rig(), s.tilt())
                : LineSet.pullOver(tipping, over.get(), s.tilt())).plumb(tipping.ground()).seen(misalignment);
        Wrench load = Wrench.at(LineSet.at(tipping.centreOfMass(s.tilt()), 0),
                tipping.ground().fall().times(tipping.weight()));
        return half > 0 ? onShoes(s, lines, load) : onPoint(s, lines, load, 0);
    }

    private Optional<CrossState> onShoes(TiltState s, LineSet lines, Wrench load) {
        double[] x = Wrench.balance(List.of(lines.common(), ALONG, ACROSS, UP, Wrench.couple(AHEAD),
                Wrench.couple(Vec3.UP)), load);
        if (Double.isNaN(x[0])) {
            return Optional.empty();
        }
        double roll = x[4] / (2 * half);
        if (x[3] / 2 - Math.abs(roll) <= 0) {
            return onPoint(s, lines, load, Math.signum(roll) * half);
        }
        if (staysPut(x[1], x[2], x[3], new double[] {roll, -x[5] / (2 * half)}) || !lines.isSpread()) {
            return Optional.of(state(s, lines, new Answer(x[0], 0, new Vec3(x[1], x[2], x[3]), roll, Held.PIVOT, 0)));
        }
        double[] y = Wrench.balance(List.of(lines.common(), lines.difference(), ALONG, ACROSS, UP,
                Wrench.couple(AHEAD)), load);
        double turned = y[5] / (2 * half);
        if (Double.isNaN(y[0]) || y[4] / 2 - Math.abs(turned) <= 0 || Math.abs(y[1]) > y[0]) {
            return onPoint(s, lines, load, Math.signum(Double.isNaN(turned) ? roll : turned) * half);
        }
        return Optional.of(state(s, lines, new Answer(y[0], y[1], new Vec3(y[2], y[3], y[4]), turned, Held.LINES, 0)));
    }

    /** Whether friction holds each shoe with its part of the turning; what an anchor holds is left out. */
    private boolean staysPut(double along, double across, double up, double[] more) {
        double mu = tipping.ground().friction();
        for (int side : new int[] {1, -1}) {
            double pull = Math.hypot(along / 2 + side * more[1], across / 2);
            if (!(pull <= mu * (up / 2 + side * more[0]))) {
                return false;
            }
        }
        return true;
    }

    /** On one point, a side line taking what unequal lines do not. */
    private Optional<CrossState> onPoint(TiltState s, LineSet lines, Wrench load, double foot) {
        Vec3 contact = new Vec3(0, foot, 0);
        Wrench along = Wrench.at(contact, AHEAD);
        Wrench across = Wrench.at(contact, LEFT);
        Wrench up = Wrench.at(contact, Vec3.UP);
        Vec3 pull = LEFT.times(-falls);
        double[] x;
        if (lines.isSpread()) {
            x = Wrench.balance(List.of(lines.common(), lines.difference(), along, across, up,
                    Wrench.at(lines.middle(), pull)), load);
        } else {
            Vec3 centre = LineSet.at(tipping.centreOfMass(s.tilt()), 0);
            Vec3 fast = centre.times(lines.middle().norm() / centre.norm());
            double[] y = Wrench.balance(List.of(lines.common(), Wrench.couple(centre.direction()), along, across, up,
                    Wrench.at(fast, pull)), load);
            x = new double[] {y[0], 0, y[2], y[3], y[4], y[5]};
        }
        if (Double.isNaN(x[0])) {
            return Optional.empty();
        }
        double roll = (foot == 0 ? falls : Math.signum(foot)) * x[4] / 2;
        return Optional.of(state(s, lines, new Answer(x[0], x[1], new Vec3(x[2], x[3], x[4]), roll,
                Held.SIDE_LINE, Math.abs(x[5]))));
    }

    /** What a balance came to; roll is half the difference between the left shoe's load and the right one's (N). */
    private record Answer(double common, double difference, Vec3 pivot, double roll, Held held, double sideLine) {
    }

    private CrossState state(TiltState s, LineSet lines, Answer a) {
        boolean lowering = s.lineTotal() > 0;
        double lower = a.common + falls * a.difference;
        double upper = a.common - falls * a.difference;
        double along = Math.hypot(a.pivot.x(), a.pivot.y());
        double hold = Math.max(0, setup.rig().factors().pivotHold() * along
                - tipping.ground().friction() * a.pivot.z());
        double pole = lowering ? s.head().thrust() * Math.max(lower, upper) / s.lineEach() : 0;
        PivotLoad pivot = new PivotLoad(a.pivot.z(), a.pivot.x(), -falls * a.pivot.y(),
                a.pivot.z() / 2 + falls * a.roll, a.pivot.z() / 2 - falls * a.roll, hold);
        boolean sways = lowering && half == 0 && Reviews.onStep(s.tilt()) && misalignment.equals(Misalignment.NONE);
        double across = Math.abs(lines.common().force().y() * a.common + lines.difference().force().y()
                * a.difference);
        return new CrossState(s.tilt(), lower, upper, lowering, across, pole, pivot, a.held, a.sideLine,
                sways ? Optional.of(new FreeSway(setup, s, lines).at()) : Optional.empty());
    }
}
