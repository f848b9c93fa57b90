// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * The motion of a body on springy lines paid out so that unstretched lines would let it tilt evenly: the check of the
 * held-still curve, which it nears as the rate goes to nothing.
 */
public final class PaidOut {
    private PaidOut() {
    }

    /**
     * Tilt and tension at a time.
     *
     * @param tilt    tilt (rad)
     * @param tension tension of all lines together (N)
     */
    public record Moment(double tilt, double tension) {
    }

    /**
     * Integrates the motion.
     *
     * @param held the body and its lines
     * @param from tilt at the start (rad), beyond balance, at the rate, the lines carrying it
     * @param rate tilting rate paid out (rad/s), positive
     * @param to   tilt at the end (rad), more than {@code from}
     * @return moments at a hundred equal steps of time
     */
    public static List<Moment> integrate(HeldBody held, double from, double rate, double to) {
        Require.positive("tilting rate", rate, "rad/s");
        double stretched = held.stillTension(from) / held.spring(from);
        Paying paying = new Paying(held, from, rate, stretched);
        double end = (to - from) / rate;
        double[] state = {from, rate};
        List<Moment> moments = new ArrayList<>();
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-8, 1, 1e-11, 1e-11);
        int steps = 100;
        for (int i = 0; i < steps; i++) {
            double next = end * (i + 1) / steps;
            integrator.integrate(paying, end * i / steps, state, next, state);
            moments.add(new Moment(state[0], paying.tension(next, state[0])));
        }
        return moments;
    }

    private record Paying(HeldBody held, double from, double rate, double stretched)
            implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 2;
        }

        double tension(double time, double tilt) {
            double wanted = from + rate * time;
            double loose = held.length(wanted) - stretched;
            return Math.max(0, held.spring(tilt) * (held.length(tilt) - loose));
        }

        @Override
        public void computeDerivatives(double time, double[] y, double[] change) {
            change[0] = y[1];
            change[1] = (held.tipping().tippingMoment(y[0]) - tension(time, y[0]) * held.lever(y[0]))
                    / held.tipping().inertiaAboutPivot();
        }
    }
}
