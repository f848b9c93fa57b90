// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.Well19937c;

/**
 * Errors of the heights of an elevation file as a random field: what is off here is off much alike nearby.
 *
 * <p>The field is normal and even, with the covariance s^2 exp(-d / c) at a distance d. It is a sum of waves whose wave
 * vectors are drawn from the spectrum of that covariance in the plane, (1 + c^2 k^2)^(-3/2), so that a radius is
 * sqrt(1 / u^2 - 1) / c for even u. Errors in the mean over the beds of some hulls can be told: the field then goes
 * through them, by kriging what its own means lack. Valid for errors that have no direction and are alike all over
 * the file; of a sum of {@value #WAVES} waves, the covariance scatters by some percent from one field to another.
 *
 * @see "Shinozuka and Deodatis (1996), Applied Mechanics Reviews 49, 29; conditioning by kriging: Journel and
 *     Huijbregts (1978), Mining Geostatistics, chapter VII; both from memory"
 */
final class ElevationErrors {
    static final int WAVES = 400;
    /** Makes beds that lie on one another tellable apart, as a share of the variance. */
    private static final double NUGGET = 1e-6;
    /** Beyond so many lengths nothing goes together. */
    private static final double FAR = 7;
    private static final int ALONG = 5;
    private static final int ACROSS = 3;

    private final double spread;
    private final double correlation;
    private final double metre;
    private final List<List<Point>> beds;
    private final RealMatrix covariance;
    private final RealMatrix inverse;
    private final RealMatrix together;

    /**
     * Errors of a file.
     *
     * @param spread      one standard deviation at a place (m), above zero
     * @param correlation length over which errors go together (m), above zero
     * @param metre       true metres of a metre of the map (1)
     * @param beds        places spread evenly over the bed of each hull
     */
    ElevationErrors(double spread, double correlation, double metre, List<List<Point>> beds) {
        this.spread = spread;
        this.correlation = correlation;
        this.metre = metre;
        this.beds = beds.stream().map(List::copyOf).toList();
        int many = Math.max(1, beds.size());
        covariance = new Array2DRowRealMatrix(many, many);
        RealMatrix correlations = new Array2DRowRealMatrix(many, many);
        for (int i = 0; i < many; i++) {
            for (int j = 0; j < many; j++) {
                covariance.setEntry(i, j, beds.isEmpty() ? 1 : mean(this.beds.get(i), this.beds.get(j))
                        * (i == j ? 1 + NUGGET : 1));
            }
        }
        for (int i = 0; i < many; i++) {
            for (int j = 0; j < many; j++) {
                correlations.setEntry(i, j, covariance.getEntry(i, j)
                        / Math.sqrt(covariance.getEntry(i, i) * covariance.getEntry(j, j)));
            }
        }
        inverse = new LUDecomposition(covariance).getSolver().getInverse();
        together = new CholeskyDecomposition(correlations, 1e-9, 0).getL();
    }

    private double mean(List<Point> one, List<Point> other) {
        double sum = 0;
        for (Point a : one) {
            for (Point b : other) {
                sum += Math.exp(-a.distance(b) * metre / correlation);
            }
        }
        return spread * spread * sum / one.size() / other.size();
    }

    /**
     * Errors under the hulls from independent ones.
     *
     * @param independent standard normal numbers, one for each hull
     * @return errors in the mean over each bed, in standard deviations of such a mean
     */
    double[] together(double[] independent) {
        return together.operate(independent);
    }

    /**
     * The ground with errors on it.
     *
     * @param ground the ground
     * @param means  errors in the mean over each bed, in standard deviations of such a mean
     * @param seed   seed of all else
     * @return the ground, each height off by the field
     */
    ElevationGrid on(ElevationGrid ground, double[] means, long seed) {
        Waves waves = new Waves(new Well19937c(seed));
        double[] lacking = new double[beds.size()];
        for (int i = 0; i < lacking.length; i++) {
            double own = beds.get(i).stream().mapToDouble(p -> waves.at(p.east(), p.north())).average().orElse(0);
            lacking[i] = means[i] * Math.sqrt(covariance.getEntry(i, i)) - own;
        }
        double[] weights = beds.isEmpty() ? new double[0] : inverse.operate(lacking);
        GridFrame f = ground.frame();
        double[] heights = new double[f.rows() * f.columns()];
        for (int row = 0; row < f.rows(); row++) {
            double north = f.south() + row * f.spacing();
            double[] line = waves.line(f.west(), north, f.columns(), f.spacing());
            for (int column = 0; column < f.columns(); column++) {
                double east = f.west() + column * f.spacing();
                heights[row * f.columns() + column] = ground.height(east, north) + line[column]
                        + through(weights, new Point(east, north));
            }
        }
        return ground.withHeights(heights);
    }

    /** What makes the field go through the told means, at a place (m). */
    private double through(double[] weights, Point place) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double near = place.distance(beds.get(i).get(beds.get(i).size() / 2)) * metre;
            sum += near > FAR * correlation ? 0 : weights[i] * mean(List.of(place), beds.get(i));
        }
        return sum;
    }

    /** One field, without anything told. */
    private final class Waves {
        private final double[] east = new double[WAVES];
        private final double[] north = new double[WAVES];
        private final double[] phase = new double[WAVES];
        private final double height = spread * Math.sqrt(2.0 / WAVES);

        Waves(Well19937c random) {
            for (int i = 0; i < WAVES; i++) {
                double u = 1 - random.nextDouble();
                double k = Math.sqrt(1 / (u * u) - 1) / correlation * metre;
                double way = 2 * Math.PI * random.nextDouble();
                east[i] = k * Math.cos(way);
                north[i] = k * Math.sin(way);
                phase[i] = 2 * Math.PI * random.nextDouble();
            }
        }

        double at(double x, double y) {
            double sum = 0;
            for (int i = 0; i < WAVES; i++) {
                sum += Math.cos(east[i] * x + north[i] * y + phase[i]);
            }
            return height * sum;
        }

        /** Along a line to the east; each wave goes on by turning, which is far quicker than a cosine. */
        double[] line(double west, double y, int many, double spacing) {
            double[] line = new double[many];
            for (int i = 0; i < WAVES; i++) {
                double from = east[i] * west + north[i] * y + phase[i];
                double cosine = Math.cos(from);
                double sine = Math.sin(from);
                double c = Math.cos(east[i] * spacing);
                double s = Math.sin(east[i] * spacing);
                for (int column = 0; column < many; column++) {
                    line[column] += height * cosine;
                    double next = cosine * c - sine * s;
                    sine = sine * c + cosine * s;
                    cosine = next;
                }
            }
            return line;
        }
    }

    /** Places spread evenly over a rectangle about a place; lengths in metres of the map. */
    static List<Point> bed(Point middle, Azimuth along, double length, double width) {
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < ALONG; i++) {
            for (int j = 0; j < ACROSS; j++) {
                places.add(middle.moved(along, length * ((i + 0.5) / ALONG - 0.5),
                        width * ((j + 0.5) / ACROSS - 0.5)));
            }
        }
        return places;
    }
}
