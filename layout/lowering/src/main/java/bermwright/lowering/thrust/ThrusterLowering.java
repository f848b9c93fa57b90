// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.TippingBody;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Lays a body down by thrusters square to the hull at a constant rate: F = W r sin(t - t_b) / s.
 *
 * <p>The lever of a thrust square to the axis is its station, wherever it sits around the hull. Constant rate: inertia
 * counts at start and stop only; mass lost on the way is left out, a fraction of a percent.
 */
public final class ThrusterLowering {
    /** Thrust kept in hand, as a share (1); common practice, no source. */
    public static final double IN_HAND = 0.25;

    /** Speed of the far end at a soft contact (m/s); common practice, no source. */
    public static final double SOFT_CONTACT = 0.5;
    private static final int STEPS = 500;

    private ThrusterLowering() {
    }

    /**
     * Works a laying down by thrusters out.
     *
     * @param tipping   the body on its pivot
     * @param thrusters the thrusters
     * @param rate      tilting rate (rad/s), positive
     * @return the result
     */
    public static ThrusterResult of(TippingBody tipping, Thrusters thrusters, double rate) {
        Require.positive("tilting rate", rate, "rad/s");
        List<ThrustState> states = new ArrayList<>();
        double rest = tipping.restTilt();
        double push = 0;
        double brake = 0;
        double at = 0;
        double friction = 0;
        for (int i = 0; i <= 900; i++) {
            double tilt = i == 900 ? rest : rest * i / 900;
            ThrustState state = at(tipping, thrusters, tilt);
            push = Math.max(push, -state.thrust());
            if (state.thrust() > brake) {
                brake = state.thrust();
                at = tilt;
            }
            friction = Math.max(friction, state.pivotUp() > 0 ? Math.abs(state.pivotAlong()) / state.pivotUp()
                    : Double.POSITIVE_INFINITY);
        }
        for (int deg = 0; deg <= 90; deg++) {
            states.add(at(tipping, thrusters, Math.toRadians(deg)));
        }
        if (rest > Math.PI / 2 + 1e-12) {
            states.add(at(tipping, thrusters, rest));
        }
        double needed = Math.max(push, brake);
        double square = thrusters.thrustEach() * Math.cos(thrusters.cant());
        double impulse = impulse(tipping, thrusters, rate);
        double far = farRadius(tipping);
        int pairs = (int) Math.ceil((1 + IN_HAND) * needed / square / 2);
        return new ThrusterResult(tipping.balanceTilt(), states, push, brake, at, impulse,
                Rocket.propellant(impulse, thrusters.specificImpulse()), rest / rate, Math.max(2, 2 * pairs),
                thrusters.together() / needed, oneOut(thrusters, square) / needed,
                abortTilt(tipping, thrusters, rate), friction, rate * far,
                tipping.inertiaAboutPivot() * rate * rate / 2, far * freeFallRate(tipping),
                profiled(tipping, thrusters, RateProfile.usual(rate, SOFT_CONTACT / far)), note());
    }

    /**
     * Thrust and pivot forces at one tilt.
     *
     * @param tipping   the body on its pivot
     * @param thrusters the thrusters
     * @param tilt      tilt (rad), 0 up to the rest tilt
     * @return the state
     */
    public static ThrustState at(TippingBody tipping, Thrusters thrusters, double tilt) {
        double thrust = tipping.tippingMoment(tipping.checkedTilt(tilt)) / thrusters.along();
        double slope = tipping.ground().slopeAlong();
        double up = tipping.weight() * Math.cos(slope) - thrust * Math.sin(tilt);
        double along = thrust * Math.cos(tilt) - tipping.weight() * Math.sin(slope);
        return new ThrustState(tilt, thrust, up, along, Math.abs(thrust) / thrusters.together());
    }

    /**
     * A laying down with changing rates, F = (M - I t'') / s.
     *
     * @param tipping   the body on its pivot
     * @param thrusters the thrusters
     * @param profile   the rates
     * @return what it asks and brings
     */
    public static ThrusterResult.Profiled profiled(TippingBody tipping, Thrusters thrusters, RateProfile profile) {
        double push = 0;
        double brake = 0;
        double impulse = 0;
        double time = 0;
        double inertia = tipping.inertiaAboutPivot();
        for (RateProfile.Part part : profile.parts(tipping.restTilt())) {
            double step = part.time() / STEPS;
            for (int i = 0; i < STEPS; i++) {
                double t = (i + 0.5) * step;
                double tilt = part.from() + part.rateFrom() * t + part.change() * t * t / 2;
                double thrust = (tipping.tippingMoment(tilt) - inertia * part.change()) / thrusters.along();
                push = Math.max(push, -thrust);
                brake = Math.max(brake, thrust);
                impulse += Math.abs(thrust) * step / Math.cos(thrusters.cant());
            }
            time += part.time();
        }
        double contact = profile.contactRate();
        return new ThrusterResult.Profiled(profile, push, brake,
                Rocket.propellant(impulse, thrusters.specificImpulse()), time, contact * farRadius(tipping),
                inertia * contact * contact / 2);
    }

    /**
     * Thrust over time from standing to lying, W r ((1 - cos(rest - t_b)) + (1 - cos t_b)) / (s rate cos cant).
     *
     * @param tipping   the body on its pivot
     * @param thrusters the thrusters
     * @param rate      tilting rate (rad/s), positive
     * @return the impulse (N s)
     */
    public static double impulse(TippingBody tipping, Thrusters thrusters, double rate) {
        double balance = tipping.balanceTilt();
        double braking = 1 - Math.cos(tipping.restTilt() - balance);
        double pushing = balance > 0 ? 1 - Math.cos(balance) : 0;
        return tipping.weight() * tipping.centreRadius() * (braking + pushing)
                / (thrusters.along() * rate * Math.cos(thrusters.cant()));
    }

    private static double oneOut(Thrusters thrusters, double square) {
        return Math.max(0, thrusters.count() - 2) * square;
    }

    /**
     * The tilt beyond which the thrusters of one side can no longer arrest the hull once the other side is lost, from
     * energy: I w2/2 + W r (cos(t - t_b) - cos(e - t_b)) = B (e - t), with B the brake moment of half the thrusters and
     * e the tilt at which the weight outweighs it, sin(e - t_b) = B / (W r).
     *
     * <p>Full thrust at once, a rigid hull on a pivot that does not slide; a delay before the thrust comes takes its
     * rate times the delay off. Half the thrusters, all on one side, also turn the hull about its axis.
     *
     * @param tipping   the body on its pivot
     * @param thrusters the thrusters
     * @param rate      tilting rate (rad/s), zero or more; zero gives the tilt of the still hull
     * @return the tilt (rad), zero where the hull cannot even be arrested from standing; absent where the thrusters of
     *         one side outweigh the hull all the way
     */
    public static OptionalDouble abortTilt(TippingBody tipping, Thrusters thrusters, double rate) {
        Require.notNegative("tilting rate", rate, "rad/s");
        double square = thrusters.thrustEach() * Math.cos(thrusters.cant());
        double brake = (thrusters.count() / 2) * square * thrusters.along();
        double pull = tipping.weight() * tipping.centreRadius();
        double balance = tipping.balanceTilt();
        double end = balance + (brake >= pull ? Math.PI : Math.asin(brake / pull));
        if (end >= tipping.restTilt()) {
            return OptionalDouble.empty();
        }
        double motion = tipping.inertiaAboutPivot() * rate * rate / 2;
        UnivariateFunction left = t -> motion + tipping.weight() * tipping.fall(t, end) - brake * (end - t);
        if (left.value(0) >= 0) {
            return OptionalDouble.of(0);
        }
        return OptionalDouble.of(motion == 0 ? end : new BrentSolver(1e-14, 1e-13).solve(200, left, 0, end));
    }

    private static double freeFallRate(TippingBody tipping) {
        double fall = tipping.fall(tipping.balanceTilt(), tipping.restTilt());
        return Math.sqrt(2 * tipping.weight() * fall / tipping.inertiaAboutPivot());
    }

    private static double farRadius(TippingBody tipping) {
        Outline outline = tipping.body().outline();
        return Math.hypot(outline.length(), outline.radius() + tipping.pivotAhead());
    }

    private static ModelNote note() {
        return new ModelNote("side-thrusters", "thrust for a constant rate, square to the hull at one station",
                "rigid body, constant rate, propellant a small share of the mass",
                "thrust and mass as known; start, stop and plume on the ground come on top",
                ModelNote.Status.COMPUTED, "statics and Tsiolkovsky (1903)");
    }
}
