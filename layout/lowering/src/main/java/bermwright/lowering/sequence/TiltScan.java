// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.statics.LineGeometry;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/** All tilts from standing to lying in small equal steps, and the tilts at which nothing holds. */
final class TiltScan {
    /** Steps of the scan to a degree. */
    static final int STEPS_A_DEGREE = 10;

    private final TippingBody tipping;
    private final Rig rig;
    private final Statics statics;
    private final List<TiltState> states = new ArrayList<>();
    private final List<DeadPoint> deadPoints = new ArrayList<>();

    TiltScan(TippingBody tipping, Rig rig) {
        this.tipping = tipping;
        this.rig = rig;
        this.statics = new Statics(tipping, rig);
        int steps = 90 * STEPS_A_DEGREE;
        for (int i = 0; i <= steps; i++) {
            statics.at(tiltOf(i)).ifPresent(states::add);
        }
        if (tipping.restTilt() > tiltOf(steps)) {
            statics.at(tipping.restTilt()).ifPresent(states::add);
        }
        findDeadPoints();
    }

    private static double tiltOf(int step) {
        return Math.toRadians((double) step / STEPS_A_DEGREE);
    }

    Statics statics() {
        return statics;
    }

    List<TiltState> states() {
        return states;
    }

    List<DeadPoint> deadPoints() {
        return deadPoints;
    }

    /** Every whole multiple of a step, and the tilt at rest. */
    List<TiltState> every(double stepDeg) {
        int each = Math.max(1, (int) Math.round(stepDeg * STEPS_A_DEGREE));
        double rest = tipping.restTilt();
        return states.stream().filter(s -> s.tilt() >= rest - 1e-9
                || Math.round(Math.toDegrees(s.tilt()) * STEPS_A_DEGREE) % each == 0).toList();
    }

    Optional<TiltState> greatest(ToDoubleFunction<TiltState> figure) {
        return states.stream().max(Comparator.comparingDouble(figure));
    }

    private void findDeadPoints() {
        double balance = tipping.balanceTilt();
        range(balance, tipping.restTilt(), new Watched(statics::holdingLever, statics.leastHoldingLever(),
                DeadPoint.Kind.LOWERING_LINES_HOLD_NOTHING, DeadPoint.Kind.LOWERING_LINES_PASS_CLOSE));
        if (rig.pullOver().isPresent() && balance > 0) {
            PlanePoint over = tipping.point(rig.pullOver().get().lug().along(), 0, 0);
            range(0, balance, new Watched(t -> statics.pullOverLever(t).orElse(0),
                    Statics.LEAST_LEVER_SHARE * over.norm(),
                    DeadPoint.Kind.PULL_OVER_TIPS_NOTHING, DeadPoint.Kind.PULL_OVER_PASSES_CLOSE));
        }
    }

    /** A lever by tilt, the least accepted, and what it is called where there is none or too little. */
    private record Watched(DoubleUnaryOperator lever, double least, DeadPoint.Kind nothing, DeadPoint.Kind close) {
    }

    /** Splits a range of tilts where the lever is nothing or too small; edges to a tenth of a degree. */
    private void range(double from, double to, Watched watched) {
        double least = watched.least;
        int steps = 900;
        DeadPoint.Kind running = null;
        double start = from;
        double worst = least;
        for (int i = 0; i <= steps + 1; i++) {
            double tilt = Math.min(to, from + (to - from) * i / steps);
            double now = i > steps ? Double.POSITIVE_INFINITY : watched.lever.applyAsDouble(tilt);
            DeadPoint.Kind kind = now <= 0 ? watched.nothing : now < least ? watched.close : null;
            if (kind != running) {
                if (running != null) {
                    deadPoints.add(new DeadPoint(running, start, tilt, worst, least));
                }
                running = kind;
                start = tilt;
                worst = now;
            }
            worst = Math.min(worst, now);
        }
    }

    /** The angle of the lowering lines to the ground at rest (rad). */
    double angleAtRest() {
        return LineGeometry.at(tipping, rig, GearPoints.of(rig), tipping.restTilt()).angle();
    }

    OptionalDouble handAtRest() {
        return statics.handBalance(tipping.restTilt());
    }
}
