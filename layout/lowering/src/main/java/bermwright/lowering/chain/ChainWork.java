// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.foundation.Vec3;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.motion.HeldBody;
import bermwright.lowering.motion.Shock;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Tube;
import bermwright.lowering.statics.HandOver;
import bermwright.lowering.statics.LineGeometry;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.strength.HullBeam;
import bermwright.lowering.strength.ThinTube;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/** Asks the chain of one body for every load case at equal steps of tilt between its own balance and its rest. */
final class ChainWork {
    private static final int STEPS = 90;
    private static final int SNATCH_STEPS = 8;
    private static final int GROUND_EACH = 5;
    /** Time in which the rate is reached or lost while paying out (s); common practice, no source. */
    private static final double CHANGE_TIME = 2;

    private final LoweringCase setup;
    private final Rig rig;
    private final TippingBody tipping;
    private final GearPoints points;
    private final PartCapacities bears;
    private final Asked asked;
    private final double shift;

    private ChainWork(LoweringCase setup, PartCapacities bears, double shift, Asked asked) {
        this.setup = setup;
        this.rig = setup.rig();
        this.tipping = setup.tipping();
        this.points = bears.points;
        this.bears = bears;
        this.shift = shift;
        this.asked = asked;
    }

    /** The chain of a body whose centre of mass is so far nearer the far end than stated (m). */
    static ChainWork shifted(LoweringCase setup, PartCapacities bears, double shift, Asked asked) {
        Body body = setup.tipping().body();
        MassCentre c = body.centre();
        return new ChainWork(shift == 0 ? setup : setup.with(setup.tipping().with(body.withCentre(
                new MassCentre(c.along() + shift, c.offAxis(), c.spread())))), bears, shift, asked);
    }

    /** Two standard deviations of the centre of mass, as far as it stays inside the hull (m). */
    static double spread(TippingBody tipping) {
        MassCentre c = tipping.body().centre();
        double room = Math.min(c.along(), Math.max(0, tipping.body().outline().length() - c.along()));
        return Math.min(2 * c.spread(), 0.9 * room);
    }

    void all() {
        double rest = tipping.restTilt();
        double from = Math.max(0, tipping.balanceTilt());
        for (int i = 0; i <= STEPS; i++) {
            double tilt = i == STEPS ? rest : from + (rest - from) * i / STEPS;
            LineGeometry lines = LineGeometry.at(tipping, rig, points, tilt);
            if (lines.lever() > 0) {
                boolean ground = i % GROUND_EACH == 0;
                still(tilt, lines, ground);
                stop(tilt, lines, ground);
                for (LoadCase lost : LoadCase.values()) {
                    if (lost.kind() == LoadCase.Kind.LOSS) {
                        lost(lost, tilt, lines, ground);
                    }
                }
            }
        }
        snatch();
        pullOver();
        loads(LoadCase.HELD).heat(rest, tipping.weight() * tipping.fall(from, rest) / rig.lines().count());
        hull();
    }

    private ChainLoads loads(LoadCase load) {
        return new ChainLoads(setup, bears, load, shift, asked);
    }

    private double still(LineGeometry lines, double tilt) {
        return Math.max(0, tipping.tippingMoment(tilt)) / lines.lever();
    }

    private double[] alike(double each) {
        double[] tensions = new double[rig.lines().count()];
        Arrays.fill(tensions, each);
        return tensions;
    }

    private static Vec3 force(LineGeometry lines, double total) {
        return new Vec3(lines.direction().x() * total, 0, lines.direction().z() * total);
    }

    private void still(double tilt, LineGeometry lines, boolean ground) {
        double efficiency = rig.lines().sheaveEfficiency();
        double total = still(lines, tilt);
        double[] each = alike(lines.each(total));
        ask(LoadCase.HELD, new ChainLoads.Pull(tilt, lines.paths(), each, each, 1), lines, total, ground);
        double slowing = total + tipping.inertiaAboutPivot() * setup.rate() / (CHANGE_TIME * lines.lever());
        double[] paid = alike(lines.each(slowing));
        ask(LoadCase.PAYING_OUT, new ChainLoads.Pull(tilt, lines.paths(), paid, paid, efficiency), lines, slowing,
                ground);
        ask(LoadCase.HAULING_BACK, new ChainLoads.Pull(tilt, lines.paths(), each, each, 1 / efficiency), lines, total,
                ground);
    }

    private void ask(LoadCase load, ChainLoads.Pull pull, LineGeometry lines, double total, boolean ground) {
        ChainLoads loads = loads(load);
        loads.lines(pull, points);
        double turn = (Math.max(0, tipping.tippingMoment(pull.tilt())) - total * lines.lever())
                / tipping.inertiaAboutPivot();
        loads.pivot(pull.tilt(), force(lines, total), turn, ground);
    }

    private void stop(double tilt, LineGeometry lines, boolean ground) {
        Optional<HeldBody> held = setup.held();
        if (held.isEmpty()) {
            loads(LoadCase.STOP).unknown(Part.LOWERING_LINE, tilt, "stiffness of the lowering lines is not given");
            return;
        }
        double total = still(lines, tilt) + Shock.emergencyStop(held.get(), tilt, setup.rate()).extra();
        double[] each = alike(lines.each(total));
        ask(LoadCase.STOP, new ChainLoads.Pull(tilt, lines.paths(), each, each, 1), lines, total, ground);
    }

    /** Slack taken up anywhere in the band of hand-over, in which the lines may hang slack. */
    private void snatch() {
        Optional<HeldBody> held = setup.held();
        double slack = rig.lines().slack();
        if (held.isEmpty() || !(slack > 0)) {
            if (held.isEmpty()) {
                loads(LoadCase.SNATCH).unknown(Part.LOWERING_LINE, tipping.restTilt(),
                        "stiffness of the lowering lines is not given");
            }
            return;
        }
        double from = Math.max(0, tipping.balanceTilt());
        double to = Math.min(tipping.restTilt(), Math.max(from, HandOver.of(tipping).to() - shiftOfBalance()));
        for (int i = 0; i <= SNATCH_STEPS; i++) {
            double tilt = from + (to - from) * i / SNATCH_STEPS;
            double lever = held.get().lever(tilt);
            if (lever > 0 && held.get().length(tipping.restTilt()) > held.get().length(tilt) + slack * (1 + 1e-9)) {
                Shock.Snatch snatch = Shock.slack(held.get(), tilt, setup.rate(), slack);
                LineGeometry lines = LineGeometry.at(tipping, rig, points, snatch.takeUpTilt());
                if (lines.lever() > 0) {
                    double[] each = alike(lines.each(snatch.energy()));
                    ask(LoadCase.SNATCH, new ChainLoads.Pull(snatch.takeUpTilt(), lines.paths(), each, each, 1),
                            lines, snatch.energy(), true);
                }
            }
        }
    }

    /** The band of hand-over is that of the stated centre of mass: how much earlier this body balances (rad). */
    private double shiftOfBalance() {
        Body body = tipping.body();
        MassCentre c = body.centre();
        return tipping.balanceTilt() - tipping.with(body.withCentre(
                new MassCentre(c.along() - shift, c.offAxis(), c.spread()))).balanceTilt();
    }

    private void pullOver() {
        double balance = tipping.balanceTilt();
        Optional<PullOver> over = rig.pullOver();
        if (over.isEmpty() || !(balance > 0)) {
            return;
        }
        for (int i = 0; i <= STEPS / 3; i++) {
            double tilt = balance * i / (STEPS / 3.0);
            GearPoints.LinePath line = GearPoints.pullOver(tipping, over.get(), tilt);
            Vec3 u = line.pull();
            double lever = line.lug().z() * u.x() - line.lug().x() * u.z();
            if (lever > 0) {
                double tension = Math.max(0, -tipping.tippingMoment(tilt)) / lever;
                ChainLoads loads = loads(LoadCase.HELD);
                loads.pullOver(over.get(), tilt, tension, line.lug().minus(line.winch()));
                loads.pivot(tilt, u.times(tension), 0, i % GROUND_EACH == 0);
            }
        }
    }

    private void hull() {
        double rest = tipping.restTilt();
        LineGeometry lines = LineGeometry.at(tipping, rig, points, rest);
        Body body = tipping.body();
        double length = body.outline().length();
        double lug = rig.lines().lug().along();
        Optional<Tube> shell = setup.shell();
        if (shell.isEmpty() || lug > length || !(lines.lever() > 0)
                || !HullBeam.Load.fits(length, body.centre().along())) {
            loads(LoadCase.HELD).hull(rest, OptionalDouble.empty(), OptionalDouble.empty(), shell.isEmpty()
                    ? "shell is not given, so not judged" : "centre of mass beyond the middle third, so not judged");
            return;
        }
        Tube tube = shell.get();
        double stress = HullBeam.of(new HullBeam.Load(tipping.weight(), length, body.centre().along()), lug)
                .stress(tube);
        double ratio = (tube.diameter() - tube.wall()) / 2 / tube.wall();
        double bears = Math.min(tube.yield(), ThinTube.knockDown(ratio) * ThinTube.perfect(tube));
        String source = "bare shell, NASA SP-8007, from memory; factor 1.5, common practice, no source";
        loads(LoadCase.HELD).hull(rest, OptionalDouble.of(stress), OptionalDouble.of(bears), source);
        setup.held().ifPresent(held -> loads(LoadCase.STOP).hull(rest, OptionalDouble.of(stress
                * Shock.emergencyStop(held, rest, setup.rate()).factor()), OptionalDouble.of(bears), source));
    }

    /** All winches stop dead at a tilt. */
    void stopped(double tilt) {
        LineGeometry lines = LineGeometry.at(tipping, rig, points, tilt);
        if (lines.lever() > 0) {
            stop(tilt, lines, true);
        }
    }

    /** One thing lost at a tilt; nothing where the plan has no such thing, or it carries nothing there. */
    void lost(LoadCase lost, double tilt) {
        LineGeometry lines = LineGeometry.at(tipping, rig, points, tilt);
        if (lines.lever() > 0) {
            lost(lost, tilt, lines, true);
        }
    }

    private void lost(LoadCase lost, double tilt, LineGeometry lines, boolean ground) {
        double total = still(lines, tilt);
        double[] each = alike(lines.each(total));
        int count = rig.lines().count();
        switch (lost) {
            case LINE_LOST -> {
                for (int i = 0; i < (count + 1) / 2; i++) {
                    boolean[] left = new boolean[count];
                    Arrays.fill(left, true);
                    left[i] = false;
                    linesLost(lost, tilt, lines, left);
                }
            }
            case POLE_LOST -> {
                for (int p = 0; p < (points.poles().size() + 1) / 2; p++) {
                    poleLost(lost, p, tilt, lines);
                }
            }
            case STAY_LOST -> stayLost(tilt, lines, each, total);
            case PIVOT_HOLD_LOST -> rig.pivotHold().ifPresent(h -> loads(lost).pivot(tilt, force(lines, total), 0,
                    false));
            default -> throw new AssertionError(lost);
        }
    }

    private void poleLost(LoadCase lost, int pole, double tilt, LineGeometry lines) {
        boolean[] left = new boolean[rig.lines().count()];
        for (int i = 0; i < left.length; i++) {
            left[i] = points.reeving().poleOf(i) != pole;
        }
        linesLost(lost, tilt, lines, left);
    }

    private void linesLost(LoadCase lost, double tilt, LineGeometry lines, boolean[] left) {
        ChainLoads loads = loads(lost);
        double before = lines.each(still(lines, tilt));
        boolean any = false;
        for (boolean l : left) {
            any |= l;
        }
        if (!any) {
            loads.nothingLeft(tilt, still(lines, tilt));
            return;
        }
        RemainingLines after = RemainingLines.of(lines.paths(), left, Math.max(0, tipping.tippingMoment(tilt)));
        double[] peak = after.tensions().clone();
        Vec3 settled = Vec3.ZERO;
        Vec3 jolted = Vec3.ZERO;
        double moment = 0;
        for (int i = 0; i < peak.length; i++) {
            peak[i] += Math.max(0, peak[i] - before);
            Vec3 u = lines.paths().get(i).pull();
            settled = settled.plus(u.times(after.tensions()[i]));
            jolted = jolted.plus(u.times(peak[i]));
            moment -= lines.paths().get(i).lug().cross(u.times(peak[i])).y();
        }
        loads.lines(new ChainLoads.Pull(tilt, lines.paths(), after.tensions(), peak, 1), points);
        loads.pivot(tilt, jolted, (Math.max(0, tipping.tippingMoment(tilt)) - moment) / tipping.inertiaAboutPivot(),
                false);
        loads.turning(tilt, after.turning(), settled);
    }

    /** The only stay of a pole takes the pole with it; of several the others take its share. */
    private void stayLost(double tilt, LineGeometry lines, double[] each, double total) {
        for (int p = 0; p < (points.poles().size() + 1) / 2; p++) {
            int pole = p;
            var stays = points.staysOf(pole);
            if (stays.size() == 1) {
                poleLost(LoadCase.STAY_LOST, pole, tilt, lines);
            }
            for (GearPoints.StayPoints gone : stays.size() > 1 ? stays : java.util.List.<GearPoints.StayPoints>of()) {
                GearPoints left = new GearPoints(points.reeving(), points.poles(), points.winches(),
                        points.stays().stream().filter(s -> s != gone).toList());
                loads(LoadCase.STAY_LOST).lines(new ChainLoads.Pull(tilt, lines.paths(), each, each, 1), left);
            }
        }
    }
}
