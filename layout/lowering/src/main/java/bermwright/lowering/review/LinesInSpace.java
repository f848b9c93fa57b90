// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.ThermalAction;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LineGeometry;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import bermwright.lowering.strength.Catenary;
import bermwright.lowering.strength.LineRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The lowering lines in space: sag, stretch, heat and cold, unequal pay-out. */
final class LinesInSpace {
    private static final double SAG_SHARE = 0.02;
    private final LoweringCase setup;
    private final LoweringResult result;
    private final LoweringLines lines;
    private final TiltState rest;
    private final TiltState handOver;

    LinesInSpace(LoweringCase setup, LoweringResult result) {
        this.setup = setup;
        this.result = result;
        this.lines = setup.rig().lines();
        this.rest = result.tilts().get(result.tilts().size() - 1);
        this.handOver = new Statics(setup.tipping(), setup.rig()).at(Math.min(result.handOverTilt(), rest.tilt()))
                .filter(s -> s.lineTotal() > 0).orElse(rest);
    }

    LineReview review() {
        double weight = lines.line().massPerLength() * setup.tipping().ground().gravity();
        double longest = LineGeometry.at(setup.tipping(), setup.rig(), rest.tilt()).toWinch();
        OptionalDouble ea = lines.line().stiffness();
        ThermalAction thermal = lines.line().thermal();
        double from = LineGeometry.at(setup.tipping(), setup.rig(), Math.max(0, result.balanceTilt())).length();
        double span = handOver.lineLength() * Math.cos(handOver.lineAngle());
        return new LineReview(Catenary.sag(weight, rest.lineLength(), rest.lineEach()),
                Catenary.sag(weight, handOver.lineLength(), handOver.lineEach()),
                Catenary.pretension(weight, handOver.lineLength(), SAG_SHARE),
                of(ea, e -> LineRules.stretch(rest.lineEach(), longest, e)),
                of(ea, e -> Catenary.stiffnessShare(weight, span, e, handOver.lineEach())),
                rest.lineLength() - from, longest, sheaveLoad(), Math.abs(rest.head().lateral()),
                thermal.swing(), of(ea, thermal::gain), thermal.shortening(longest), lightChanges(thermal.light()),
                lightUnknownFrom(thermal.light()), mismatch(longest));
    }

    /** Each place where one window ends and the other kind begins, at the set rate without stops. */
    private List<LineReview.LightChange> lightChanges(List<ThermalAction.Light> windows) {
        List<LineReview.LightChange> changes = new ArrayList<>();
        List<ThermalAction.Light> inOrder = inOrder(windows);
        for (int i = 1; i < inOrder.size(); i++) {
            ThermalAction.Light now = inOrder.get(i);
            double tilt = now.from() * setup.rate();
            if (now.inSun() == inOrder.get(i - 1).inSun() || !(tilt > 0 && tilt < rest.tilt())) {
                continue;
            }
            TiltState state = new Statics(setup.tipping(), setup.rig()).at(tilt).orElse(rest);
            ThermalAction thermal = lines.line().thermal();
            changes.add(new LineReview.LightChange(now.from(), tilt, !now.inSun(),
                    thermal.shortening(state.lineLength() + tail()), state.lineEach(),
                    of(lines.line().stiffness(), thermal::gain)));
        }
        return changes;
    }

    private OptionalDouble lightUnknownFrom(List<ThermalAction.Light> windows) {
        double known = 0;
        for (ThermalAction.Light window : inOrder(windows)) {
            if (window.from() <= known) {
                known = Math.max(known, window.to());
            }
        }
        double tilt = known * setup.rate();
        return windows.isEmpty() || tilt >= rest.tilt() ? OptionalDouble.empty() : OptionalDouble.of(tilt);
    }

    private static List<ThermalAction.Light> inOrder(List<ThermalAction.Light> windows) {
        return windows.stream().sorted(Comparator.comparingDouble(ThermalAction.Light::from)).toList();
    }

    private double tail() {
        Optional<Poles> poles = setup.rig().poles();
        return poles.map(p -> p.head().distance(lines.winch().at())).orElse(0.0);
    }

    private double sheaveLoad() {
        Optional<Poles> poles = setup.rig().poles();
        if (poles.isEmpty()) {
            return 0;
        }
        PlanePoint head = poles.get().head();
        PlanePoint lug = setup.tipping().point(lines.lug().along(), lines.lug().offAxis(), rest.tilt());
        PlanePoint a = head.directionTo(lug);
        PlanePoint b = head.directionTo(lines.winch().at());
        double between = Math.acos(Math.max(-1, Math.min(1, a.x() * b.x() + a.z() * b.z())));
        return LineRules.sheaveLoad(rest.lineEach(), between);
    }

    private LineReview.Mismatch mismatch(double longest) {
        double mismatch = lines.payOutMismatch();
        double half = lines.halfSpread();
        if (lines.count() < 2 || half == 0 || lines.line().stiffness().isEmpty() || mismatch == 0) {
            return new LineReview.Mismatch(mismatch, 0, rest.lineEach(), false, 0, 0, OptionalDouble.empty());
        }
        double spring = lines.line().stiffness().getAsDouble() / longest;
        double wanted = spring * mismatch;
        boolean slack = wanted >= 2 * rest.lineEach();
        double difference = Math.min(wanted, 2 * rest.lineEach());
        double sin = Math.sin(rest.lineAngle());
        double cos = Math.cos(rest.lineAngle());
        double yaw = half * difference * cos;
        double width = setup.tipping().pivot().halfWidth();
        return new LineReview.Mismatch(mismatch, difference, rest.lineEach() + difference / 2, slack, yaw,
                half * difference * Math.abs(sin),
                width > 0 ? OptionalDouble.of(yaw / (2 * width)) : OptionalDouble.empty());
    }

    private static OptionalDouble of(OptionalDouble value, java.util.function.DoubleUnaryOperator f) {
        return value.isPresent() ? OptionalDouble.of(f.applyAsDouble(value.getAsDouble())) : OptionalDouble.empty();
    }
}
