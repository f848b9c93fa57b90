// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import bermwright.foundation.Require;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Loads that come of stiffness and inertia: a slack line coming taut, a winch stopping, starting and stopping slowly.
 *
 * <p>Rigid body, springs without damping, winch that does not give: the upper bound. Never from a table, for tables are
 * made where weight is six times larger against the same inertia.
 */
public final class Shock {
    private static final int TRIES = 200;

    private Shock() {
    }

    /**
     * A slack line coming taut.
     *
     * @param takeUpTilt  tilt at which it comes taut (rad)
     * @param takeUpRate  tilting rate there (rad/s)
     * @param lineSpeed   speed at which it comes taut (m/s)
     * @param still       tension that would hold there (N)
     * @param oneMass     greatest tension by one mass on a spring (N)
     * @param energy      greatest tension by energy, with the line's true geometry (N)
     */
    public record Snatch(double takeUpTilt, double takeUpRate, double lineSpeed, double still, double oneMass,
            double energy) {
    }

    /**
     * What comes of slack in the lines with the body let go at a tilt beyond balance.
     *
     * @param held  the body and its lines
     * @param tilt  tilt at which it is let go (rad), beyond balance
     * @param rate  tilting rate there (rad/s), zero or more
     * @param slack slack (m), positive
     * @return the snatch
     */
    public static Snatch slack(HeldBody held, double tilt, double rate, double slack) {
        Require.positive("slack", slack, "m");
        double rest = held.tipping().restTilt();
        double taut = held.length(tilt) + slack;
        Require.that(held.length(rest) >= taut, "slack of %s m is not taken up before the hull lies.", slack);
        double takeUp = root(t -> held.length(t) - taut, tilt, rest);
        double speedUp = Topple.rate(held.tipping(), tilt, rate, takeUp);
        double lineSpeed = held.lever(takeUp) * speedUp;
        double still = held.stillTension(takeUp);
        double spring = held.stiffness() / (held.length(tilt) + held.fall());
        double oneMass = still + Math.sqrt(still * still
                + spring * held.feltMass(takeUp) * lineSpeed * lineSpeed);
        double motion = held.tipping().inertiaAboutPivot() * speedUp * speedUp / 2;
        UnivariateFunction left = t -> motion + held.tipping().weight() * held.tipping().fall(takeUp, t)
                - spring * Math.pow(held.length(t) - taut, 2) / 2;
        double far = Math.min(rest, takeUp + 0.5);
        double energy = left.value(far) >= 0 ? spring * (held.length(far) - taut)
                : spring * (held.length(root(left, takeUp + 1e-9, far)) - taut);
        return new Snatch(takeUp, speedUp, lineSpeed, still, oneMass, energy);
    }

    /**
     * The winch stops dead while paying out.
     *
     * @param lineSpeed speed of the line (m/s)
     * @param extra     tension that comes on top, v sqrt(k m) (N)
     * @param factor    greatest over still tension (1)
     * @param period    period of the swing (s)
     */
    public record Stop(double lineSpeed, double extra, double factor, double period) {
    }

    /**
     * An emergency stop at a tilt.
     *
     * @param held the body and its lines
     * @param tilt tilt (rad), beyond balance
     * @param rate tilting rate (rad/s), zero or more
     * @return the stop
     */
    public static Stop emergencyStop(HeldBody held, double tilt, double rate) {
        double speed = held.lever(tilt) * Require.notNegative("tilting rate", rate, "rad/s");
        double spring = held.spring(tilt);
        double mass = held.feltMass(tilt);
        double extra = speed * Math.sqrt(spring * mass);
        return new Stop(speed, extra, 1 + extra / held.stillTension(tilt), 2 * Math.PI * Math.sqrt(mass / spring));
    }

    private static double root(UnivariateFunction f, double from, double to) {
        return new BrentSolver(1e-14, 1e-13).solve(TRIES, f, from, to);
    }
}
