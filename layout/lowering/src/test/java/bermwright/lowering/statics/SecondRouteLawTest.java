// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.RandomRigs;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A second route to the forces: every point turned in space by a matrix, the hull and each pole head cut free, and the
 * equations of their balance solved by elimination, moments about the centre of mass. Only input records are shared
 * with the program.
 */
class SecondRouteLawTest {
    /** Forces on the hull, of the greater of weight and tension; the worst of all cases needs 4.1e-15. */
    private static final double CLOSE = 1e-14;
    /** Forces on a pole head, of the same; the worst of all cases needs 7.9e-16. */
    private static final double HEAD_CLOSE = 2.3e-15;
    /** Of weight times distance; the worst of all cases needs 1.2e-11. */
    private static final double WORK_CLOSE = 3.5e-11;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 150);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theHullAndEveryHeadAreInBalance(long seed) {
        LoweringCase drawn = RandomRigs.of(seed);
        TippingBody tipping = drawn.tipping();
        Statics statics = new Statics(tipping, drawn.rig());
        double weight = tipping.body().mass() * tipping.ground().gravity();
        for (int i = 1; i <= 12; i++) {
            double tilt = tipping.restTilt() * i / 12;
            Optional<TiltState> found = statics.at(tilt);
            if (found.isEmpty() || !(found.get().lineEach() > 0)) {
                continue;
            }
            TiltState s = found.get();
            double[][] lugs = lugs(drawn, tilt);
            double[] hull = hull(drawn, lugs, tilt);
            double size = Math.max(weight, Math.abs(hull[0]));
            assertEquals(hull[0], s.lineEach(), CLOSE * size, () -> "seed " + seed);
            assertEquals(hull[1], s.pivotAlong(), CLOSE * size, () -> "seed " + seed);
            assertEquals(hull[2], s.pivotUp(), CLOSE * size, () -> "seed " + seed);
            if (drawn.rig().poles().isPresent()) {
                head(drawn, lugs, s, size, seed);
            }
        }
    }

    /** A third route: the lines' work from balance to rest is the fall of the centre of mass. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theLinesWorkIsTheFall(long seed) {
        LoweringCase drawn = RandomRigs.of(seed);
        TippingBody tipping = drawn.tipping();
        Statics statics = new Statics(tipping, drawn.rig());
        double from = Math.max(0, tipping.balanceTilt());
        double rest = tipping.restTilt();
        double work = 0;
        int steps = 200;
        for (int i = 0; i < steps; i++) {
            double a = from + (rest - from) * i / steps;
            double step = (rest - from) / steps;
            for (double g : new double[] {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)}) {
                Optional<TiltState> s = statics.at(a + g * step);
                if (s.isEmpty()) {
                    return;
                }
                double[][] lugs = lugs(drawn, a + g * step - 1e-5);
                double[][] later = lugs(drawn, a + g * step + 1e-5);
                double paid = 0;
                for (int k = 0; k < lugs.length; k++) {
                    paid += (distance(later[k], lead(drawn, k)) - distance(lugs[k], lead(drawn, k))) / 2e-5;
                }
                work += s.get().lineEach() * paid * step * (g == 0.5 ? 8 : 5) / 18;
            }
        }
        double fall = tipping.weight() * tipping.fall(from, rest);
        assertEquals(fall, work, WORK_CLOSE * tipping.weight() * tipping.centreRadius(), () -> "seed " + seed);
    }

    /** The lugs, from right to left: the hull's axes turned about the pivot line by a matrix. */
    private static double[][] lugs(LoweringCase drawn, double tilt) {
        LoweringLines lines = drawn.rig().lines();
        double[][] turn = {{Math.cos(tilt), 0, Math.sin(tilt)}, {0, 1, 0}, {-Math.sin(tilt), 0, Math.cos(tilt)}};
        double ahead = drawn.tipping().pivot().ahead(drawn.tipping().body().outline().radius());
        double[][] lugs = new double[lines.count()][];
        for (int i = 0; i < lugs.length; i++) {
            double left = lugs.length == 1 ? 0 : lines.lug().halfSpread() * (2.0 * i / (lugs.length - 1) - 1);
            lugs[i] = times(turn, new double[] {lines.lug().offAxis() - ahead, left, lines.lug().along()});
        }
        return lugs;
    }

    private static double[] lead(LoweringCase drawn, int line) {
        Rig rig = drawn.rig();
        int lines = rig.lines().count();
        if (rig.poles().isEmpty()) {
            double left = lines == 1 ? 0 : rig.lines().lug().halfSpread() * (2.0 * line / (lines - 1) - 1);
            return new double[] {rig.lines().winch().at().x(), left, rig.lines().winch().at().z()};
        }
        Poles poles = rig.poles().get();
        return new double[] {poles.head().x(), poleLeft(poles, line * poles.count() / lines), poles.head().z()};
    }

    private static double poleLeft(Poles poles, int pole) {
        return poles.count() == 1 ? 0 : poles.halfSpread() * (2.0 * pole / (poles.count() - 1) - 1);
    }

    /** One line's tension, the pivot's force along and up: from forces and the moment about the centre of mass. */
    private static double[] hull(LoweringCase drawn, double[][] lugs, double tilt) {
        TippingBody tipping = drawn.tipping();
        double slope = tipping.ground().slopeAlong();
        double weight = tipping.body().mass() * tipping.ground().gravity();
        double[][] turn = {{Math.cos(tilt), 0, Math.sin(tilt)}, {0, 1, 0}, {-Math.sin(tilt), 0, Math.cos(tilt)}};
        double[] centre = times(turn, new double[] {tipping.body().centre().offAxis()
                - tipping.pivot().ahead(tipping.body().outline().radius()), 0, tipping.body().centre().along()});
        double[][] equations = new double[3][4];
        for (int i = 0; i < lugs.length; i++) {
            double[] u = unit(lugs[i], lead(drawn, i));
            equations[0][0] += u[0];
            equations[1][0] += u[2];
            equations[2][0] += (lugs[i][2] - centre[2]) * u[0] - (lugs[i][0] - centre[0]) * u[2];
        }
        equations[0][1] = 1;
        equations[1][2] = 1;
        equations[2][1] = -centre[2];
        equations[2][2] = centre[0];
        equations[0][3] = -weight * Math.sin(slope);
        equations[1][3] = weight * Math.cos(slope);
        return solved(equations);
    }

    /** The outermost head on the left: thrust, stays' tension and pull across from three equations. */
    private static void head(LoweringCase drawn, double[][] lugs, TiltState s, double size, long seed) {
        Rig rig = drawn.rig();
        Poles poles = rig.poles().orElseThrow();
        int last = poles.count() - 1;
        double[] head = {poles.head().x(), poleLeft(poles, last), poles.head().z()};
        double[] foot = {poles.foot().x(), head[1], poles.foot().z()};
        double[] pull = new double[3];
        int lines = rig.lines().count();
        int each = lines / poles.count();
        double gap = rig.lines().winch().spacing();
        if (poles.count() > 1) {
            gap = Math.min(gap, 2 * poles.halfSpread() / (poles.count() - 1) / each);
        }
        for (int i = last * each; i < lines; i++) {
            add(pull, unit(head, lugs[i]), s.lineEach());
            double[] winch = {rig.lines().winch().at().x(), head[1] + (i - last * each - (each - 1) / 2.0) * gap,
                    rig.lines().winch().at().z()};
            add(pull, unit(head, winch), s.lineEach());
        }
        double[] stays = new double[3];
        for (double[] anchor : anchors(rig, last)) {
            add(stays, unit(head, anchor), 1);
        }
        double[] up = unit(foot, head);
        double[][] equations = new double[3][];
        for (int k = 0; k < 3; k++) {
            equations[k] = new double[] {up[k], stays[k], k == 1 ? -1 : 0, -pull[k]};
        }
        double[] found = rig.stays().isEmpty() ? new double[] {0, -1, 0} : solved(equations);
        if (found[1] >= 0) {
            assertEquals(found[1], s.head().stay(), HEAD_CLOSE * size, () -> "seed " + seed);
            assertEquals(found[0], s.head().thrust(), HEAD_CLOSE * size, () -> "seed " + seed);
            assertEquals(found[2], s.head().lateral(), HEAD_CLOSE * size, () -> "seed " + seed);
        } else {
            assertEquals(0, s.head().stay());
            assertEquals(-pull[0] * up[0] - pull[2] * up[2], s.head().thrust(), HEAD_CLOSE * size,
                    () -> "seed " + seed);
            assertTrue(rig.stays().isEmpty() || s.head().leftOver() <= CLOSE * size, () -> "seed " + seed);
        }
    }

    private static List<double[]> anchors(Rig rig, int pole) {
        List<double[]> anchors = new ArrayList<>();
        int poles = rig.poles().orElseThrow().count();
        for (Stay stay : rig.stays()) {
            double half = stay.halfSpread();
            double[] lefts = poles > 1 ? new double[] {half * (2.0 * pole / (poles - 1) - 1)}
                    : half > 0 ? new double[] {-half, half} : new double[] {0};
            for (double left : lefts) {
                anchors.add(new double[] {stay.anchorAt().x(), left, stay.anchorAt().z()});
            }
        }
        return anchors;
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1]) + (b[2] - a[2]) * (b[2] - a[2]));
    }

    private static double[] unit(double[] from, double[] to) {
        double d = distance(from, to);
        return new double[] {(to[0] - from[0]) / d, (to[1] - from[1]) / d, (to[2] - from[2]) / d};
    }

    private static void add(double[] sum, double[] direction, double factor) {
        for (int k = 0; k < 3; k++) {
            sum[k] += factor * direction[k];
        }
    }

    private static double[] times(double[][] m, double[] v) {
        double[] result = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                result[i] += m[i][k] * v[k];
            }
        }
        return result;
    }

    /** Elimination with the greatest pivot; three rows, the right side in the fourth column. */
    private static double[] solved(double[][] rows) {
        for (int c = 0; c < 3; c++) {
            int best = c;
            for (int i = c + 1; i < 3; i++) {
                best = Math.abs(rows[i][c]) > Math.abs(rows[best][c]) ? i : best;
            }
            double[] swap = rows[c];
            rows[c] = rows[best];
            rows[best] = swap;
            for (int i = 0; i < 3; i++) {
                double factor = i == c ? 0 : rows[i][c] / rows[c][c];
                for (int k = c; k < 4; k++) {
                    rows[i][k] -= factor * rows[c][k];
                }
            }
        }
        return new double[] {rows[0][3] / rows[0][0], rows[1][3] / rows[1][1], rows[2][3] / rows[2][2]};
    }
}
