// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import bermwright.foundation.Require;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.TippingBody;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * A body that falls about its pivot with nothing to hold it: the bound of everything that can go wrong.
 *
 * <p>Rigid body, pivot that neither slides nor lifts; in truth the base slides past about 55 degrees, which changes
 * the speeds by some percent.
 */
public final class Topple {
    private Topple() {
    }

    /**
     * The tilting rate reached without any hold, from energy.
     *
     * @param tipping the body on its pivot
     * @param from    tilt at the start (rad), balance or beyond
     * @param rate    tilting rate at the start (rad/s), zero or more
     * @param to      tilt asked for (rad), at least {@code from}
     * @return the rate (rad/s)
     */
    public static double rate(TippingBody tipping, double from, double rate, double to) {
        double energy = tipping.weight() * tipping.fall(from, to);
        double squared = rate * rate + 2 * energy / tipping.inertiaAboutPivot();
        Require.that(squared >= 0, "the body does not get from tilt %s rad to %s rad at that rate.", from, to);
        return Math.sqrt(squared);
    }

    /**
     * The time of a fall from rest by elliptic integrals, [K(k) - F(asin(cos(f1/2)/k), k)]/p with f the angle past
     * balance, k = cos(f0/2), p = sqrt(W r / I).
     *
     * @param tipping the body on its pivot
     * @param from    tilt at the start (rad), beyond balance
     * @param to      tilt asked for (rad), more than {@code from}
     * @return the time (s)
     */
    public static double time(TippingBody tipping, double from, double to) {
        double f0 = from - tipping.balanceTilt();
        double f1 = to - tipping.balanceTilt();
        Require.that(f0 > 0 && f1 > f0, "tilts are %s rad and %s rad past balance; accepted: rising from above 0.",
                f0, f1);
        double k = Math.cos(f0 / 2);
        double p = Math.sqrt(tipping.weight() * tipping.centreRadius() / tipping.inertiaAboutPivot());
        double s = Math.cos(f1 / 2) / k;
        return (Elliptic.first(1, k) - Elliptic.first(s, k)) / p;
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
     * The distance of the outermost corner of the far end from the pivot line.
     *
     * @param tipping the body on its pivot
     * @return the distance (m)
     */
    public static double farRadius(TippingBody tipping) {
        Outline outline = tipping.body().outline();
        return Math.hypot(outline.length(), outline.radius() + tipping.pivotAhead());
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
}
