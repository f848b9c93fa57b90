// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.terrain.grid.ElevationGrid;

/**
 * The plane under a hull by least squares over some places of its bed, enough to search by.
 *
 * @param along  fall ahead, as height over length (1)
 * @param across fall to the left, as height over length (1)
 * @param middle height of the plane under the middle of the bed (m)
 */
record SampledBed(double along, double across, double middle) {
    private static final int AHEAD = 13;
    private static final int LEFT = 5;

    /**
     * Size of a bed.
     *
     * @param from   where it begins ahead of the base centre (m)
     * @param length its length (m)
     * @param width  its width (m)
     */
    record Size(double from, double length, double width) {
    }

    static SampledBed of(ElevationGrid ground, Pose pose, Size size) {
        double scale = ground.metreScale();
        double alongSum = 0;
        double alongSquares = 0;
        double leftSum = 0;
        double leftSquares = 0;
        double sum = 0;
        for (int i = 0; i < AHEAD; i++) {
            double u = size.length * ((i + 0.5) / AHEAD - 0.5);
            for (int j = 0; j < LEFT; j++) {
                double v = size.width * ((j + 0.5) / LEFT - 0.5);
                double ahead = (size.from + size.length / 2 + u) / scale;
                double left = v / scale;
                double h = ground.height(pose.east() + ahead * pose.sine() - left * pose.cosine(),
                        pose.north() + ahead * pose.cosine() + left * pose.sine());
                sum += h;
                alongSum += u * h;
                alongSquares += u * u;
                leftSum += v * h;
                leftSquares += v * v;
            }
        }
        return new SampledBed(alongSum / alongSquares, leftSum / leftSquares, sum / (AHEAD * LEFT));
    }

    boolean isKnown() {
        return Double.isFinite(along) && Double.isFinite(across);
    }
}
