// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

/**
 * A many-sided shape cut by straight lines; where a cut leaves several pieces they hang together by seams of no area.
 *
 * @see "Sutherland and Hodgman (1974), Reentrant polygon clipping, Communications of the ACM 17, 32-42"
 */
final class ClipShape {
    private final double[] x;
    private final double[] y;
    private final int count;

    ClipShape(double[] x, double[] y, int count) {
        this.x = x;
        this.y = y;
        this.count = count;
    }

    /** The part where c + a x + b y is not negative. */
    ClipShape clipped(double c, double a, double b) {
        double[] keptX = new double[2 * count + 2];
        double[] keptY = new double[2 * count + 2];
        int kept = 0;
        for (int i = 0, j = count - 1; i < count; j = i++) {
            double before = c + a * x[j] + b * y[j];
            double here = c + a * x[i] + b * y[i];
            if (before < 0 != here < 0) {
                double t = before / (before - here);
                keptX[kept] = x[j] + t * (x[i] - x[j]);
                keptY[kept++] = y[j] + t * (y[i] - y[j]);
            }
            if (here >= 0) {
                keptX[kept] = x[i];
                keptY[kept++] = y[i];
            }
        }
        return new ClipShape(keptX, keptY, kept);
    }

    /** This shape in coordinates that begin at another place. */
    ClipShape from(double originX, double originY) {
        double[] movedX = new double[count];
        double[] movedY = new double[count];
        for (int i = 0; i < count; i++) {
            movedX[i] = x[i] - originX;
            movedY[i] = y[i] - originY;
        }
        return new ClipShape(movedX, movedY, count);
    }

    boolean isEmpty() {
        return count < 3;
    }

    /** The area, positive for a shape that runs anticlockwise. */
    double area() {
        double twice = 0;
        for (int i = 0, j = count - 1; i < count; j = i++) {
            twice += x[j] * y[i] - x[i] * y[j];
        }
        return twice / 2;
    }

    /** The integral of c + a x + b y over the shape. */
    double integral(double c, double a, double b) {
        double twice = 0;
        double momentX = 0;
        double momentY = 0;
        for (int i = 0, j = count - 1; i < count; j = i++) {
            double cross = x[j] * y[i] - x[i] * y[j];
            twice += cross;
            momentX += (x[j] + x[i]) * cross;
            momentY += (y[j] + y[i]) * cross;
        }
        return c * twice / 2 + a * momentX / 6 + b * momentY / 6;
    }
}
