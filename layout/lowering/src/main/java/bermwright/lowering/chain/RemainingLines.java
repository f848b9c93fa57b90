// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.foundation.Vec3;
import bermwright.lowering.rig.GearPoints;
import java.util.List;

/**
 * What is left of the lowering lines once some are gone: a stiff hull that may tilt about its pivot line and turn in
 * plan about the middle of it, held by the springs that are left; a line that would have to push hangs slack.
 *
 * @param tensions tension of each line (N), zero where it is gone or slack
 * @param turning  moment about the ground's normal that nothing in the lines balances (N m)
 */
record RemainingLines(double[] tensions, double turning) {
    private static final double ALIKE = 1e-9;

    /**
     * The lines that are left.
     *
     * @param paths  every line at the tilt
     * @param left   whether it is left
     * @param moment moment of the weight about the pivot line (N m), positive
     */
    static RemainingLines of(List<GearPoints.LinePath> paths, boolean[] left, double moment) {
        Springs springs = Springs.of(paths);
        boolean[] taut = left.clone();
        for (int round = 0; round < paths.size(); round++) {
            RemainingLines shared = springs.shared(taut, moment, true);
            int push = 0;
            for (int i = 1; i < taut.length; i++) {
                push = shared.tensions[i] < shared.tensions[push] ? i : push;
            }
            if (!(shared.tensions[push] < 0)) {
                // What the lines cannot balance between them the pivot has to, and then all of them pull.
                return Math.abs(shared.turning) > ALIKE * moment ? springs.shared(left, moment, false) : shared;
            }
            taut[push] = false;
        }
        return springs.shared(left, moment, false);
    }

    /** The lines as springs: lever about the pivot line and about the normal (m), stiffness over length (1/m). */
    private record Springs(double[] levers, double[] turns, double[] stiff) {
        static Springs of(List<GearPoints.LinePath> paths) {
            Springs springs = new Springs(new double[paths.size()], new double[paths.size()],
                    new double[paths.size()]);
            for (int i = 0; i < paths.size(); i++) {
                Vec3 m = paths.get(i).lug().cross(paths.get(i).pull());
                springs.levers[i] = -m.y();
                springs.turns[i] = m.z();
                springs.stiff[i] = 1 / paths.get(i).length();
            }
            return springs;
        }

        /** Tensions that balance a tipping moment (N m), and, where asked and possible, leave no moment in plan. */
        RemainingLines shared(boolean[] taut, double moment, boolean turns) {
            double ll = sum(taut, stiff, levers, levers);
            double lt = sum(taut, stiff, levers, this.turns);
            double tt = sum(taut, stiff, this.turns, this.turns);
            double both = ll * tt - lt * lt;
            boolean balanced = turns && both > ALIKE * ll * tt;
            double tilt = balanced ? moment * tt / both : moment / ll;
            double turn = balanced ? -moment * lt / both : 0;
            double[] tensions = new double[taut.length];
            double rest = 0;
            for (int i = 0; i < tensions.length; i++) {
                if (taut[i]) {
                    tensions[i] = stiff[i] * (levers[i] * tilt + this.turns[i] * turn);
                    rest += tensions[i] * this.turns[i];
                }
            }
            return new RemainingLines(tensions, rest);
        }
    }

    private static double sum(boolean[] taut, double[] springs, double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < taut.length; i++) {
            sum += taut[i] ? springs[i] * a[i] * b[i] : 0;
        }
        return sum;
    }
}
