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
        boolean[] taut = left.clone();
        double[] levers = new double[paths.size()];
        double[] turns = new double[paths.size()];
        double[] springs = new double[paths.size()];
        for (int i = 0; i < paths.size(); i++) {
            Vec3 m = paths.get(i).lug().cross(paths.get(i).pull());
            levers[i] = -m.y();
            turns[i] = m.z();
            springs[i] = 1 / paths.get(i).length();
        }
        for (int round = 0; round <= paths.size(); round++) {
            double ll = sum(taut, springs, levers, levers);
            double lt = sum(taut, springs, levers, turns);
            double tt = sum(taut, springs, turns, turns);
            double both = ll * tt - lt * lt;
            boolean balanced = both > ALIKE * ll * tt;
            double tilt = balanced ? moment * tt / both : moment / ll;
            double turn = balanced ? -moment * lt / both : 0;
            double[] tensions = new double[paths.size()];
            double rest = 0;
            int hardestPush = -1;
            for (int i = 0; i < tensions.length; i++) {
                if (taut[i]) {
                    tensions[i] = springs[i] * (levers[i] * tilt + turns[i] * turn);
                    rest += tensions[i] * turns[i];
                    if (tensions[i] < 0 && (hardestPush < 0 || tensions[i] < tensions[hardestPush])) {
                        hardestPush = i;
                    }
                }
            }
            if (hardestPush < 0) {
                return new RemainingLines(tensions, rest);
            }
            taut[hardestPush] = false;
        }
        return new RemainingLines(new double[paths.size()], 0);
    }

    private static double sum(boolean[] taut, double[] springs, double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < taut.length; i++) {
            sum += taut[i] ? springs[i] * a[i] * b[i] : 0;
        }
        return sum;
    }
}
