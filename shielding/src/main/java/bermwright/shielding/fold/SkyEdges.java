// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.WallSolid;
import java.util.Arrays;
import java.util.TreeSet;

/**
 * Azimuths between which a station's sky is to be halved: an even turn, and close on both sides of every edge that
 * the scene tells of, which are the ends of hulls, tunnels and walls.
 */
final class SkyEdges {
    /** Azimuths of the even turn; with the middles between them a way of 1 m is met out to 28 m. */
    private static final int EVEN = 90;
    /** Where the first azimuth looks (rad); any value that is no even share of a turn. */
    private static final double FIRST_LOOK = 0.1234;
    /** How far beside an edge is looked (rad). */
    private static final double BESIDE = 1e-4;
    /** Edges further off than this are left to the halving (m). */
    private static final double FAR = 60;

    private SkyEdges() {
    }

    /** Azimuths from 0 to below a whole turn, rising. */
    static double[] azimuths(Scene scene, Vec3 station) {
        TreeSet<Double> all = new TreeSet<>();
        for (int i = 0; i < EVEN; i++) {
            all.add(turned(FIRST_LOOK + 2 * Math.PI * i / EVEN));
        }
        for (HullSolid hull : scene.hulls()) {
            HullShape shape = hull.shape();
            double r = shape.radius();
            for (double along : new double[] {0, shape.barrelStart(), shape.barrelEnd(), shape.length()}) {
                boolean tip = hull.shape().radiusAt(along) < r;
                for (double across : tip ? new double[] {0} : new double[] {-r, r}) {
                    edge(station, hull.pose().point(along, across, 0), all);
                }
            }
        }
        for (WallSolid wall : scene.walls()) {
            edge(station, new Vec3(wall.from().east(), wall.from().north(), wall.foot()), all);
            edge(station, new Vec3(wall.to().east(), wall.to().north(), wall.foot()), all);
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void edge(Vec3 station, Vec3 at, TreeSet<Double> into) {
        double east = at.x() - station.x();
        double north = at.y() - station.y();
        double away = Math.hypot(east, north);
        if (away > BESIDE && away < FAR) {
            double azimuth = Math.atan2(east, north);
            for (double beside : Arrays.asList(-BESIDE, BESIDE)) {
                double wanted = turned(azimuth + beside);
                Double below = into.floor(wanted);
                Double above = into.ceiling(wanted);
                if ((below == null || wanted - below > BESIDE / 2) && (above == null || above - wanted > BESIDE / 2)) {
                    into.add(wanted);
                }
            }
        }
    }

    private static double turned(double azimuth) {
        double turn = azimuth % (2 * Math.PI);
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }
}
