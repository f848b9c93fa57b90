// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Liquid at rest in a round tank with flat ends, at any tilt: its surface is level, its centre moves as the tank tips.
 *
 * <p>At s along the axis the liquid fills the part of the circle with n at least (s cos t - c) / sin t, t the tilt of
 * the axis from plumb and c set so that the volume stays: a segment of closed form at each s, summed by Gauss.
 *
 * @param radius radius of the tank (m), positive
 * @param length length of the tank from the base plane (m), positive
 * @param volume volume of the liquid (m3), positive, less than the tank's
 */
public record FreeSurface(double radius, double length, double volume) {
    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(24, -1, 1);
    private static final double PLUMB = 1e-6;

    /** Refuses an empty or an overfull tank. */
    public FreeSurface {
        Require.positive("tank radius", radius, "m");
        Require.positive("tank length", length, "m");
        Require.positive("volume of liquid", volume, "m3");
        Require.that(volume < Math.PI * radius * radius * length, "%s m3 of liquid do not fit a tank %s m long of %s m"
                + " radius.", volume, length, radius);
    }

    /**
     * The centre of the liquid.
     *
     * @param along distance from the base plane along the axis (m)
     * @param off   distance off the axis to the side that is down (m), zero or more
     */
    public record Centre(double along, double off) {
    }

    /**
     * The depth of the liquid while the tank stands plumb.
     *
     * @return the depth (m)
     */
    public double depthStanding() {
        return volume / (Math.PI * radius * radius);
    }

    /**
     * Where the liquid's centre is.
     *
     * @param tilt tilt of the axis from plumb (rad), 0 standing, pi/2 lying level, to pi
     * @return the centre
     */
    public Centre centre(double tilt) {
        Require.within("tilt of the tank", tilt, 0, Math.PI, "rad");
        if (tilt < PLUMB) {
            return new Centre(depthStanding() / 2, 0);
        }
        double level = level(tilt);
        return new Centre(sum(tilt, level, Part.ALONG) / volume, sum(tilt, level, Part.OFF) / volume);
    }

    /**
     * Height of the surface over the lowest generator of a tank that lies level.
     *
     * @return the depth (m)
     */
    double depthLying() {
        return radius + level(Math.PI / 2);
    }

    /** The constant c of the surface s cos t - n sin t = c that keeps the volume. */
    private double level(double tilt) {
        double reach = length * Math.max(0, Math.cos(tilt)) + radius * Math.sin(tilt);
        double least = length * Math.min(0, Math.cos(tilt)) - radius * Math.sin(tilt);
        return new BrentSolver(1e-12 * radius, 1e-13 * radius).solve(200,
                c -> sum(tilt, c, Part.VOLUME) - volume, least, reach);
    }

    private enum Part {
        VOLUME, ALONG, OFF
    }

    private double sum(double tilt, double level, Part part) {
        double sin = Math.sin(tilt);
        double cos = Math.cos(tilt);
        if (Math.abs(cos) < PLUMB) {
            return piece(0, length, s -> at(s, -level / sin, part));
        }
        double one = clamped((level - radius * sin) / cos);
        double two = clamped((level + radius * sin) / cos);
        double from = Math.min(one, two);
        double to = Math.max(one, two);
        double crossing = piece(from, to, s -> at(s, (s * cos - level) / sin, part));
        // Beside the stretch the surface crosses, the tank is full on its lower end and empty on the other.
        double fullFrom = cos > 0 ? 0 : to;
        double fullTo = cos > 0 ? from : length;
        return crossing + (fullTo > fullFrom ? piece(fullFrom, fullTo, s -> at(s, -radius, part)) : 0);
    }

    private double clamped(double s) {
        return Math.max(0, Math.min(length, s));
    }

    /** What the liquid of one circle adds, filled where n is at least this. */
    private double at(double s, double least, Part part) {
        double n = Math.max(-radius, Math.min(radius, least));
        double half = Math.sqrt(Math.max(0, radius * radius - n * n));
        double area = radius * radius * Math.acos(n / radius) - n * half;
        return switch (part) {
            case VOLUME -> area;
            case ALONG -> area * s;
            case OFF -> 2.0 / 3 * half * half * half;
        };
    }

    private static double piece(double from, double to, DoubleUnaryOperator f) {
        double half = (to - from) / 2;
        return half <= 0 ? 0 : half * GAUSS.integrate(x -> f.applyAsDouble(from + half * (1 + x)));
    }
}
