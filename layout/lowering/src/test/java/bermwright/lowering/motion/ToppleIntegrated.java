// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import bermwright.foundation.Require;
import bermwright.lowering.body.TippingBody;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/** The fall of a body on its pivot by a second route: stepping through time. */
public final class ToppleIntegrated {
    private ToppleIntegrated() {
    }

    /**
     * The time and rate of a fall by integrating the equation of motion.
     *
     * @param tipping the body on its pivot
     * @param from    tilt at the start (rad), beyond balance, or with a rate
     * @param rate    tilting rate at the start (rad/s), zero or more
     * @param to      tilt asked for (rad), more than {@code from}
     * @return time (s) and rate (rad/s)
     */
    public static Arrival integrate(TippingBody tipping, double from, double rate, double to) {
        Require.that(from > tipping.balanceTilt() || rate > 0, "a body at rest before balance does not fall.");
        double[] state = {from, rate};
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 5, 1e-13, 1e-13);
        integrator.addEventHandler(new Reached(to), 0.5, 1e-11, 200);
        double time = integrator.integrate(new Falling(tipping), 0, state, 1e5, state);
        return new Arrival(time, state[1]);
    }

    /**
     * Forces on the pivot of a body that falls freely from rest at balance, level ground.
     *
     * @param tipping the body on its pivot
     * @param past    angle past balance f (rad), zero or more
     * @return the forces
     */
    public static PivotForce pivotForce(TippingBody tipping, double past) {
        double w = tipping.weight();
        double r = tipping.centreRadius();
        double inertia = tipping.inertiaAboutPivot();
        double squared = 2 * w * r * (1 - Math.cos(past)) / inertia;
        double speeding = w * r * Math.sin(past) / inertia;
        double mr = tipping.body().mass() * r;
        return new PivotForce(mr * (speeding * Math.cos(past) - squared * Math.sin(past)),
                w - mr * (speeding * Math.sin(past) + squared * Math.cos(past)));
    }

    /**
     * When and how fast a body arrives.
     *
     * @param time time (s)
     * @param rate tilting rate (rad/s)
     */
    public record Arrival(double time, double rate) {
    }

    /**
     * Forces of the ground on the pivot during a fall.
     *
     * @param along along the ground in the lay-down azimuth (N)
     * @param up    along the ground's normal (N)
     */
    public record PivotForce(double along, double up) {
    }

    private record Falling(TippingBody tipping) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 2;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] change) {
            change[0] = y[1];
            change[1] = tipping.tippingMoment(y[0]) / tipping.inertiaAboutPivot();
        }
    }

    private record Reached(double tilt) implements EventHandler {
        @Override
        public void init(double t0, double[] y0, double t) {
        }

        @Override
        public double g(double t, double[] y) {
            return y[0] - tilt;
        }

        @Override
        public Action eventOccurred(double t, double[] y, boolean increasing) {
            return Action.STOP;
        }

        @Override
        public void resetState(double t, double[] y) {
        }
    }

    /**
     * Where a blow leaves the pivot of a hanging body unmoved.
     *
     * @param tipping the body on its pivot
     * @return its distance from the pivot line (m)
     */
    public static double centreOfPercussion(TippingBody tipping) {
        return tipping.inertiaAboutPivot() / (tipping.body().mass() * tipping.centreRadius());
    }
}
