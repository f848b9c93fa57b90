// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;
import bermwright.numeric.Bracket;

/**
 * A circle along which a slope may slide.
 *
 * @param along  where its centre stands along the section (m)
 * @param height height of its centre (m)
 * @param radius radius (m), positive
 */
public record SlipCircle(double along, double height, double radius) {
    private static final int SLICES = 80;
    private static final int SCAN = 400;
    private static final int ITERATIONS = 200;
    private static final double CLOSE = 1e-9;

    /** Refuses circles without size. */
    public SlipCircle {
        Require.finite("centre along", along, "m");
        Require.finite("height of the centre", height, "m");
        Require.positive("radius of a slip circle", radius, "m");
    }

    /** The circle through two points that bulges down from their chord by a share of its length. */
    static SlipCircle through(double x0, double z0, double x1, double z1, double bulge) {
        double chord = Math.hypot(x1 - x0, z1 - z0);
        double sagitta = bulge * chord;
        double radius = (chord * chord / 4 + sagitta * sagitta) / (2 * sagitta);
        double away = radius - sagitta;
        return new SlipCircle((x0 + x1) / 2 - away * (z1 - z0) / chord, (z0 + z1) / 2 + away * (x1 - x0) / chord,
                radius);
    }

    /**
     * The factor of safety by Bishop's simplified method: sum of (c b + W tan f) / (cos a (1 + tan a tan f / F)) over
     * sum of W sin a, F on both sides.
     *
     * @param profile the slope, rising to the right
     * @param soil    its soil, dry
     * @return the factor of safety (1); endless where the circle cuts nothing, or nothing that slides
     * @see "Bishop (1955), Geotechnique 5, 7-17"
     */
    double bishop(SlopeProfile profile, SlopeStability.Soil soil) {
        return bishop(slices(profile), soil, 0);
    }

    /**
     * The same for the arc between two places on the surface, which may not cut deeper outside them, while a share of
     * the weight pushes outwards in the middle of each slice (pseudo-static).
     */
    double bishop(SlopeProfile profile, SlopeStability.Soil soil, double[] ends, double push) {
        return bishop(slices(profile, ends[0], ends[1]), soil, push);
    }

    private double bishop(double[][] slices, SlopeStability.Soil soil, double push) {
        double driving = 0;
        for (double[] s : slices) {
            driving += soil.density() * soil.gravity() * s[0] * s[1]
                    * (s[2] + push * (s[3] - s[1] / (2 * radius)));
        }
        if (!(driving > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double tan = Math.tan(soil.frictionAngle());
        double factor = ordinary(slices, soil);
        for (int i = 0; i < ITERATIONS; i++) {
            double resisting = 0;
            for (double[] s : slices) {
                double m = s[3] + s[2] * tan / factor;
                if (!(m > 0.05)) {
                    return Double.POSITIVE_INFINITY;
                }
                resisting += (soil.cohesion() * s[0] + soil.density() * soil.gravity() * s[0] * s[1] * tan) / m;
            }
            double next = resisting / driving;
            if (Math.abs(next - factor) < CLOSE * factor) {
                return next;
            }
            factor = next;
        }
        return factor;
    }

    /**
     * The factor of safety by the ordinary method of slices: sum of c l + W cos a tan f over sum of W sin a.
     *
     * @param profile the slope, rising to the right
     * @param soil    its soil, dry
     * @return the factor of safety (1); endless where the circle cuts nothing, or nothing that slides
     * @see "Fellenius (1936), second congress on large dams, Washington"
     */
    double ordinary(SlopeProfile profile, SlopeStability.Soil soil) {
        return ordinary(slices(profile), soil);
    }

    private static double ordinary(double[][] slices, SlopeStability.Soil soil) {
        double driving = 0;
        double resisting = 0;
        for (double[] s : slices) {
            double weight = soil.density() * soil.gravity() * s[0] * s[1];
            driving += weight * s[2];
            resisting += soil.cohesion() * s[0] / s[3]
                    + weight * s[3] * Math.tan(soil.frictionAngle());
        }
        return driving > 0 ? resisting / driving : Double.POSITIVE_INFINITY;
    }

    /** Width, height, sine and cosine of the base of each slice the circle cuts out; positive where it slides down. */
    private double[][] slices(SlopeProfile profile) {
        double from = Double.NaN;
        double to = Double.NaN;
        double left = along - radius;
        double step = 2 * radius / (SCAN);
        for (int i = 1; i < SCAN; i++) {
            double x = left + i * step;
            if (depth(profile, x) > 0) {
                from = Double.isNaN(from) ? edge(profile, x - step, x) : from;
                to = x;
            } else if (!Double.isNaN(from)) {
                break;
            }
        }
        if (Double.isNaN(from)) {
            return new double[0][];
        }
        double end = Math.min(along + radius, to + step);
        to = depth(profile, end) > 0 ? end : edge(profile, end, to);
        return slices(profile, from, to);
    }

    private double[][] slices(SlopeProfile profile, double from, double to) {
        double width = (to - from) / SLICES;
        double[][] slices = new double[SLICES][];
        for (int i = 0; i < SLICES; i++) {
            double x = from + (i + 0.5) * width;
            double sine = (x - along) / radius;
            slices[i] = new double[] {width, Math.max(0, depth(profile, x)), sine, Math.sqrt(1 - sine * sine)};
        }
        return slices;
    }

    /** Soil over the lower half of the circle at a place; below zero where the circle is in the air. */
    private double depth(SlopeProfile profile, double x) {
        double under = radius * radius - (x - along) * (x - along);
        return under < 0 ? -1 : profile.height(x) - (height - Math.sqrt(under));
    }

    private double edge(SlopeProfile profile, double outside, double inside) {
        return Bracket.halved(outside, inside, 60, x -> !(depth(profile, x) > 0)).high();
    }
}
